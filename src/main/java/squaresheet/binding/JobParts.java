package squaresheet.binding;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import squaresheet.courses.RoofLayout;
import squaresheet.formula.Value;
import squaresheet.job.Company;
import squaresheet.job.JobCard;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.job.Unread;
import squaresheet.product.Catalogue;
import squaresheet.product.Selection;
import squaresheet.roof.Plane;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.Roof;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Side;
import squaresheet.takeoff.Rulebook;
import squaresheet.tape.TapeUnit;

/**
 * What goes into a job workbook.
 *
 * @param unit what the roof was measured in
 * @param labels what is said about the job, by defined name
 * @param notes the roof as written
 * @param roof the roof, resolved
 * @param field the field sheet it came from, if it came from one
 * @param catalogue the products
 * @param selection those chosen
 * @param rulebook the rules
 * @param layout the courses laid out, if a shingle was chosen
 * @param given values for the job that come from elsewhere: settings typed, waste simulated
 * @param pricing prices, rates and terms
 * @param unread what the tape sheet has beside that and could not be read
 */
record JobParts(
    TapeUnit unit,
    Map<String, String> labels,
    RoofNotes notes,
    Roof roof,
    Optional<FieldNotes> field,
    Catalogue catalogue,
    Selection selection,
    Rulebook rulebook,
    Optional<RoofLayout> layout,
    Map<String, Value> given,
    Pricing pricing,
    List<Unread> unread) {

  static JobParts of(JobInput input, JobResult result, Optional<FieldNotes> field) {
    Map<String, Value> given = new LinkedHashMap<>(result.input().settings());
    result
        .layout()
        .map(layout -> layout.simulatedWaste().toDouble())
        .ifPresent(waste -> given.put("simulated_waste", Value.of(waste)));
    given.put(
        SettingsSheet.TOLERANCE.name(), Value.of(input.roof().tapeTolerance().toInches()));
    Company company = input.company();
    return new JobParts(
        input.card().unit(),
        labels(input.card()),
        input.roof(),
        result.roof(),
        field,
        company.catalogue(),
        input.selection(),
        company.rulebook(),
        result.layout(),
        given,
        new Pricing(company.prices(), company.rates(), company.terms()),
        result.input().unread());
  }

  private static Map<String, String> labels(JobCard card) {
    return Map.of(
        "job_name", card.name(),
        "job_number", card.number(),
        "job_measured_by", card.measuredBy(),
        "job_date", card.date(),
        "job_unit", card.unit().word(),
        "job_customer", card.customer().name(),
        "job_address", card.customer().address(),
        "job_phone", card.customer().phone());
  }

  /** Whether the roof was measured, and is typed and laid, in metres or millimetres. */
  boolean isMetric() {
    return unit == TapeUnit.METRES || unit == TapeUnit.MILLIMETRES;
  }

  /** The planes as written that made planes; of two with one name only the first. */
  List<PlaneNotes> planes() {
    Set<String> seen = new HashSet<>();
    return notes.planes().stream()
        .filter(plane -> roof.plane(plane.id()).filter(it -> seen.add(it.id())).isPresent())
        .toList();
  }

  /** The planes that could not be read, and those that made none. */
  List<RoofNotes.Lost> lost() {
    return Stream.concat(
            notes.lost().stream(),
            notes.planes().stream()
                .filter(plane -> roof.plane(plane.id()).isEmpty())
                .map(plane -> new RoofNotes.Lost(plane.id(), plane.openings())))
        .toList();
  }

  Plane resolved(PlaneNotes plane) {
    return roof.plane(plane.id()).orElseThrow();
  }

  /** What was said of the plane that a side meets, where it meets none that is known; empty where nothing was. */
  String meets(Side side) {
    return planes().stream()
        .filter(plane -> plane.id().equals(side.plane()))
        .map(plane -> plane.meets(side.name()).written())
        .findFirst()
        .orElse("");
  }

  /** What the person wrote of an item, in one line; empty where that is not known. */
  String wording(String item, List<String> properties) {
    return properties.stream()
        .map(property -> Map.entry(
            property, field.map(notes -> notes.wording(item, property)).orElse("")))
        .filter(entry -> !entry.getValue().isEmpty())
        .map(entry -> entry.getKey().replace('_', ' ') + " " + entry.getValue())
        .reduce((one, other) -> one + "; " + other)
        .orElse("");
  }
}
