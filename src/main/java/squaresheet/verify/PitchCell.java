package squaresheet.verify;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.tape.DateSystem;
import squaresheet.tape.TapeReader;
import squaresheet.tape.TapeUnit;
import squaresheet.tape.Written;
import squaresheet.units.Pitch;

/**
 * A typed cell in a column of pitches that formulas compute with.
 *
 * @param cell the cell
 */
record PitchCell(TypedCell cell) {

  static Optional<PitchCell> of(TypedCell cell) {
    boolean pitch =
        isInTable(cell) && Words.isPitch(cell.heading()) && !Words.isDate(cell.heading());
    boolean value = cell.cell().stored() instanceof Content.Numeric;
    return pitch && value && cell.book().links().isRead(cell.at())
        ? Optional.of(new PitchCell(cell))
        : Optional.empty();
  }

  private static boolean isInTable(TypedCell cell) {
    return cell.tab().tables().stream().anyMatch(table -> {
      int along = table.axis().along(cell.ref());
      return along >= table.first() && along <= table.last();
    });
  }

  Read<Pitch> read() {
    double value = ((Content.Numeric) cell.cell().stored()).value();
    DateSystem dates =
        cell.book().workbook().date1904() ? DateSystem.SINCE_1904 : DateSystem.SINCE_1900;
    return TapeReader.of(TapeUnit.FEET, Locale.US)
        .withDates(dates)
        .pitch(Written.of(value, cell.cell().format()), cell.where());
  }

  /** What the reader of pitches says under that card, unless the whole column is written that way. */
  Stream<Finding> findings(CheckInfo info) {
    return isAlone(info) || info.id().startsWith("pitch-became")
        ? said(info)
            .map(finding -> new Finding(
                info, finding.where(), finding.found(), finding.expected(), finding.says(), ""))
        : Stream.empty();
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
        PitchCell near = new PitchCell(new TypedCell(cell.tab(), ref, cell.tab().cell(ref)));
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
