package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.job.Company;
import squaresheet.job.JobInput;
import squaresheet.job.Unread;
import squaresheet.roof.RoofNotes;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.tape.Written;

/**
 * A filled field sheet as it was understood.
 *
 * @param roof the planes, openings and taped edges
 * @param unit the unit of bare numbers
 * @param labels what stands beside the labels of the job, by property, such as {@code eave_overhang}
 * @param wording the lengths and pitches as the person wrote them, by item ({@code plane A}), then by property
 * @param unread the rows that could not be read
 * @param remarks everything else that stands on the sheet
 */
public record FieldNotes(
    RoofNotes roof,
    TapeUnit unit,
    Map<String, Label> labels,
    Map<String, Map<String, String>> wording,
    List<Unread> unread,
    List<Remark> remarks) {

  public FieldNotes {
    labels = Map.copyOf(labels);
    wording = Map.copyOf(wording);
    unread = List.copyOf(unread);
    remarks = List.copyOf(remarks);
  }

  /**
   * A value beside a label of the job.
   *
   * @param text as shown
   * @param written as written
   * @param tape what reads it: in the unit of the label or else of the sheet, with the sheet's decimal mark
   * @param where its place
   */
  public record Label(String text, Written written, TapeReader tape, Where where) {}

  /**
   * Something that stands on the sheet and is used for nothing, kept for people.
   *
   * @param where its place
   * @param about what it stands beside, such as {@code plane Front, Remarks} or the label before it
   * @param text as written
   */
  public record Remark(Where where, String about, String text) {}

  /** The text beside a label, if it is there. */
  public Optional<String> text(String property) {
    return Optional.ofNullable(labels.get(property)).map(Label::text);
  }

  /** What a person wrote for a property of an item; empty where that is not known. */
  public String wording(String item, String property) {
    return wording.getOrDefault(item, Map.of()).getOrDefault(property, "");
  }

  /**
   * The job that this sheet and the company make. Labels of settings are read by the rulebook, lengths in tape notation; what
   * cannot be read is said and is as usual.
   */
  public Read<JobInput> job(Company company) {
    return new FieldJob(this).of(company);
  }
}
