package squaresheet.estimate;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a line is for, in the order of the estimate. Text form: {@code labour}. */
public enum Category {
  /** What is bought to stay on the roof. */
  MATERIAL,
  /** The company's own hours. */
  LABOUR,
  /** What is hired to do the work. */
  EQUIPMENT,
  /** Taking torn-off material away. */
  DISPOSAL,
  /** Work done by others. */
  SUBCONTRACT,
  /** Fees of the authority. */
  PERMIT,
  /** A share of the company's running cost. */
  OVERHEAD,
  /** What is left over when all is paid. */
  PROFIT,
  /** What is taken off the price; negative. */
  DISCOUNT,
  /** What is collected for the state. */
  TAX;

  /** Whether this is a cost of doing the job, as against what is put on or taken off afterwards. */
  public boolean isCost() {
    return compareTo(OVERHEAD) < 0;
  }

  /** The category of the text form, in any letter case, if there is one. */
  public static Optional<Category> from(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(category -> category.toString().equals(plain))
        .findFirst();
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
