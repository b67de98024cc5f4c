package squaresheet.verify;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.finding.Read;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.tape.DateSystem;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.tape.Written;
import squaresheet.units.Pitch;

/**
 * A typed number that formulas compute with as a pitch.
 *
 * @param cell the cell
 * @param inTable whether it stands among other pitches of a table, which say how pitches are written here
 */
record PitchCell(TypedCell cell, boolean inTable) {

  /** What is said of a pitch that a spreadsheet program changed, which is more exact than that it is out of range. */
  static final Set<String> BECAME = Set.of("pitch-became-date", "pitch-became-time");

  static Optional<PitchCell> of(TypedCell cell) {
    if (!(cell.cell().stored() instanceof Content.Numeric)
        || !cell.book().links().isRead(cell.at())) {
      return Optional.empty();
    }
    if (isInTable(cell) && isPitch(cell.heading())) {
      return Optional.of(new PitchCell(cell, true));
    }
    PitchCell alone = new PitchCell(cell, false);
    return alone.isDated() && alone.isTakenForPitch() ? Optional.of(alone) : Optional.empty();
  }

  private static boolean isInTable(TypedCell cell) {
    return cell.tab().tables().stream().anyMatch(table -> {
      int along = table.axis().along(cell.ref());
      return along >= table.first() && along <= table.last();
    });
  }

  private static boolean isPitch(String words) {
    return Words.isPitch(words) && !Words.isDate(words);
  }

  /** Whether the words beside or above a cell call it a pitch. */
  static boolean isCalledPitch(Tab tab, Ref ref) {
    return isPitch(tab.label(ref)) || isPitch(tab.headings(ref));
  }

  /** Whether it reads as a day or a time of day where a pitch is wanted. */
  private boolean isDated() {
    return read().findings().stream()
        .anyMatch(finding -> BECAME.contains(finding.info().id()));
  }

  private boolean isTakenForPitch() {
    boolean called = isCalledPitch(cell.tab(), cell.ref())
        && !(isGeneral() && PitchUse.asRatio(cell.book(), cell.at()));
    return called || PitchUse.asRise(cell.book(), cell.at());
  }

  private boolean isGeneral() {
    return cell.cell().format().equals("General");
  }

  Read<Pitch> read() {
    double value = ((Content.Numeric) cell.cell().stored()).value();
    DateSystem dates =
        cell.book().workbook().date1904() ? DateSystem.SINCE_1904 : DateSystem.SINCE_1900;
    return TapeReader.of(TapeUnit.FEET, Locale.US)
        .withDates(dates)
        .pitch(Written.of(value, cell.cell().format()), cell.where());
  }

  /** What the reader of pitches says under that card, unless the whole column is written that way or is one of angles. */
  Stream<Finding> findings(CheckInfo info) {
    boolean asRise = inTable && !PitchFactor.isInDegrees(cell.heading());
    return BECAME.contains(info.id()) || (asRise && isAlone(info))
        ? said(info)
            .map(finding -> new Finding(
                info,
                finding.where(),
                finding.found(),
                finding.expected(),
                finding.says(),
                "",
                finding.expected().isEmpty() ? Fix.NONE : fix()))
        : Stream.empty();
  }

  /** The pitch as the reader takes it, as a number that does not look like a date. */
  private Fix fix() {
    return read()
        .value()
        .map(it -> it.rise().doubleValue())
        .map(rise ->
            cell.cell().isDate() ? Fix.numberForDay(cell.at(), rise) : Fix.number(cell.at(), rise))
        .orElse(Fix.NONE);
  }

  private Stream<Finding> said(CheckInfo info) {
    return read().findings().stream().filter(finding -> finding.info().id().equals(info.id()));
  }

  /** Whether most other pitches of the column are read without that remark. */
  private boolean isAlone(CheckInfo info) {
    int row = cell.ref().row();
    long like = 0;
    long other = 0;
    for (int at : IntStream.rangeClosed(Math.max(0, row - 30), row + 30).toArray()) {
      Ref ref = new Ref(at, cell.ref().column());
      if (at != row && cell.tab().isTypedNumber(ref)) {
        PitchCell near = new PitchCell(new TypedCell(cell.tab(), ref, cell.tab().cell(ref)), true);
        if (near.said(info).findAny().isPresent()) {
          like++;
        } else {
          other++;
        }
      }
    }
    return other > like;
  }
}
