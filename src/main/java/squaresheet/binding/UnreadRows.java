package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.formula.Value;
import squaresheet.job.Unread;
import squaresheet.roof.PlaneNotes;
import squaresheet.roof.RoofNotes;
import squaresheet.roof.Shape;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.Rulebook;

/** Reads the rows of the tape sheet that could not be read, with their answers, and holds each answer to the workbook. */
final class UnreadRows {

  private record Row(Unread unread, String answer, Where where) {}

  private final List<Row> rows = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  UnreadRows(Workbook book, String file, NamedCells names, NamedRows cells) {
    if (names.cell(NotReadSheet.KIND).isPresent()) {
      cells
          .rows(NotReadSheet.KIND, "the rows that could not be read")
          .forEach(row -> rows.add(row(cells, row)));
    }
    int written = count(book.properties().getOrDefault(NotReadSheet.COUNT, ""));
    if (rows.size() < written) {
      findings.add(Complaint.UNREAD_GONE.at(
          new Where.InFile(file),
          "the sheet '" + NotReadSheet.NAME + "' must keep the " + written
              + " rows of the tape sheet that could not be read, each with its answer, but has "
              + rows.size()));
    }
  }

  private static int count(String text) {
    return text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
  }

  private static Row row(NamedRows cells, int row) {
    String answer = cells.text(row, NotReadSheet.ANSWER);
    Unread unread = new Unread(
        cells.text(row, NotReadSheet.WHERE),
        Unread.Kind.from(cells.text(row, NotReadSheet.KIND)).orElse(Unread.Kind.ROW),
        cells.text(row, NotReadSheet.CALLED),
        List.of(cells.text(row, NotReadSheet.WRITTEN)),
        cells.text(row, NotReadSheet.UNDERSTOOD),
        cells.text(row, NotReadSheet.WHY),
        Unread.Answer.from(answer).orElse(Unread.Answer.NONE),
        cells.text(row, NotReadSheet.REASON));
    return new Row(unread, answer, cells.where(row, NotReadSheet.ANSWER));
  }

  List<Unread> unread() {
    return rows.stream().map(Row::unread).toList();
  }

  /** The planes among them, by name. */
  List<String> planes() {
    return unread().stream()
        .filter(one -> one.kind() == Unread.Kind.PLANE && !one.name().isEmpty())
        .map(Unread::name)
        .toList();
  }

  /** What there is to say of the answers, now that all else is read. */
  List<Finding> judge(RoofNotes roof, Rulebook rulebook, Map<String, Value> settings) {
    Held held = new Held(roof, rulebook, settings);
    rows.forEach(row -> judge(row, held));
    return findings;
  }

  private void judge(Row row, Held held) {
    Unread unread = row.unread;
    if (unread.isOpen()) {
      findings.add(Complaint.UNREAD_OPEN.at(
          row.where,
          row.answer,
          "",
          unread.subject()
              + " could not be read off the tape sheet and must be typed in and answered '"
              + Unread.Answer.TYPED + "', or answered '" + Unread.Answer.LEFT_OUT
              + "' with the reason beside it, but is " + answered(row)));
    } else if (unread.answer() == Unread.Answer.LEFT_OUT) {
      findings.add(Complaint.UNREAD_LEFT_OUT.at(
          row.where, unread.subject() + " is left out on purpose: " + unread.reason()));
    } else {
      held.fault(unread)
          .ifPresent(fault -> findings.add(Complaint.ANSWER_NOT_HELD.at(
              row.where,
              row.answer,
              "",
              unread.subject() + " is answered '" + Unread.Answer.TYPED + "', but " + fault)));
    }
  }

  private static String answered(Row row) {
    return row.answer.isEmpty()
        ? "not answered"
        : row.unread.answer() == Unread.Answer.LEFT_OUT
            ? "left out without a reason"
            : "answered '" + row.answer + "'";
  }

  /** What the workbook has, for answers that say that something was typed. */
  private record Held(RoofNotes roof, Rulebook rulebook, Map<String, Value> settings) {

    /** Why that is not so; nothing where it is. */
    Optional<String> fault(Unread unread) {
      return switch (unread.kind()) {
        case PLANE -> named(unread, "plane", plane -> true, false);
        case OPENING -> named(unread, "opening", plane -> false, true);
        case ROW -> named(unread, "plane or opening", plane -> true, true);
        case CORNER ->
          named(unread, "polygon", plane -> plane.shape() instanceof Shape.Polygon, false);
        case EDGE -> taped(unread);
        case SETTING -> setting(unread);
      };
    }

    private Optional<String> named(
        Unread unread, String what, Predicate<PlaneNotes> isOne, boolean openings) {
      List<String> names = Stream.concat(
              roof.planes().stream().filter(isOne).map(PlaneNotes::id),
              roof.planes().stream()
                  .filter(plane -> openings)
                  .flatMap(plane -> plane.openings().stream())
                  .map(PlaneNotes.OpeningNotes::id))
          .map(TapedEdge::key)
          .toList();
      boolean there = Stream.of(unread.name(), unread.reason())
          .map(TapedEdge::key)
          .anyMatch(name -> !name.isEmpty() && names.contains(name));
      return there
          ? Optional.empty()
          : Optional.of("no " + what
              + " of this workbook is called so; type it in, or write beside the answer under"
              + " which name it was typed");
    }

    private Optional<String> taped(Unread unread) {
      List<String> parts =
          Stream.of(unread.name().split(",")).map(TapedEdge::key).toList();
      boolean there = roof.planes().stream()
          .filter(plane -> parts.contains(TapedEdge.key(plane.id())))
          .flatMap(plane -> plane.sides().stream())
          .anyMatch(side -> side.taped().isPresent());
      return there
          ? Optional.empty()
          : Optional.of("no edge of its plane has a taped length on the sheet of edges");
    }

    private Optional<String> setting(Unread unread) {
      Optional<Rule> rule = rulebook.settings().stream()
          .filter(one -> one.label().equalsIgnoreCase(unread.name()))
          .findFirst();
      if (rule.isEmpty()) {
        return Optional.of(
            "rows were read by it already; mend the tape sheet and import it again, or answer that"
                + " what was taken instead is right");
      }
      Value usual = rule.get().usual();
      boolean isUsual = settings.getOrDefault(rule.get().name(), usual).equals(usual);
      return isUsual
          ? Optional.of("still is the usual " + rule.get().formula()
              + "; type it on the sheet of settings, or answer that the usual is right")
          : Optional.empty();
    }
  }
}
