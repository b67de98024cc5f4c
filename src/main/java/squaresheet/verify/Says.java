package squaresheet.verify;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Fix;
import squaresheet.formula.Value;
import squaresheet.sheet.Address;

/** Makes findings about cells. */
final class Says {

  private Says() {}

  /** About a cell that holds something else than it should; a number that it should hold puts it right. */
  static Finding about(CheckInfo info, Book book, Address at, Value expected, String says) {
    Finding finding = about(info, book, at, Shown.of(expected), says);
    return expected instanceof Value.Number number
        ? finding.with(Fix.number(at, number.value()))
        : finding;
  }

  /** About a cell; what it should hold is put in words, or empty where it is not known. */
  static Finding about(CheckInfo info, Book book, Address at, String expected, String says) {
    return new Finding(info, book.where(at), Shown.of(book.value(at)), expected, says, "");
  }

  /** About a cell whose right value is not known. */
  static Finding about(CheckInfo info, Book book, Address at, String says) {
    return about(info, book, at, "", says);
  }

  /** One thing or several: {@code 1 row}, {@code 3 rows}. */
  static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
