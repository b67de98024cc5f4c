package squaresheet.verify;

import java.util.Optional;
import java.util.regex.Pattern;
import squaresheet.formula.Node;
import squaresheet.sheet.Address;

/** Which cells are rates and which are taxes, by what they are called. */
final class RateWords {

  private static final Pattern TAX = words("tax|vat|gst|mwst|iva|tva");
  private static final Pattern RATE = words(
      "tax(?! (amount|paid|due|total|base))|vat|gst|mark-?up|overhead|profit|o ?& ?p|contingency");
  private static final Pattern NO_TAX = words(
      "with|incl|including|after|before|without|plus|and|total|subtotal|sum|excl|excluding|net|gross|base|taxable");
  private static final Pattern LABOR = words("labou?r|wages|crew|work");
  private static final Pattern MATERIAL = words("materials?|goods|products?");

  private RateWords() {}

  private static Pattern words(String any) {
    return Pattern.compile("(?<!\\p{L})(" + any + ")(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  }

  /** Whether a cell called so is an amount of tax, and not a total that holds one. */
  static boolean isTax(String label) {
    return TAX.matcher(label).find() && !NO_TAX.matcher(label).find();
  }

  static boolean saysTax(String label) {
    return TAX.matcher(label).find();
  }

  static boolean saysRate(String label) {
    return RATE.matcher(label).find();
  }

  static boolean saysLaborOnly(String label) {
    return LABOR.matcher(label).find() && !MATERIAL.matcher(label).find();
  }

  static boolean saysMaterial(String label) {
    return MATERIAL.matcher(label).find();
  }

  /** The single cell that a part of a formula is. */
  static Optional<Address> cell(FormulaCell formula, Node part) {
    return formula.cells(part).filter(Cells::isOne).map(Cells::first);
  }

  static String label(Book book, Address at) {
    return book.tab(at.sheet()).label(at.ref());
  }

  /** The typed rate, by its label and size, that a part of a formula is. */
  static Optional<Address> rate(FormulaCell formula, Node part) {
    return cell(formula, part).filter(at -> isRate(formula.book(), at));
  }

  static boolean isRate(Book book, Address at) {
    double value = book.number(at).orElse(0);
    return !book.cell(at).isFormula() && value > 0 && value < 1 && saysRate(label(book, at));
  }
}
