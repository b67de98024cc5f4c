package squaresheet.estimate;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What a line is for: one of ours, or a cost that a company calls by a word of its own. Text form: {@code labour}. */
public sealed interface Category {

  /** What a line is for, in the order of the estimate. */
  enum Known implements Category {
    /** What is bought to stay on the roof. */
    MATERIAL("materials", "mat"),
    /** The company's own hours. */
    LABOUR("labor", "lab"),
    /** What is hired to do the work. */
    EQUIPMENT("equip"),
    /** Taking torn-off material away. */
    DISPOSAL("disposals", "dump"),
    /** Work done by others. */
    SUBCONTRACT("subcontractor", "sub"),
    /** Fees of the authority. */
    PERMIT("permits"),
    /** A share of the company's running cost. */
    OVERHEAD,
    /** What is left over when all is paid. */
    PROFIT,
    /** What is taken off the price; negative. */
    DISCOUNT,
    /** What is collected for the state. */
    TAX("sales tax", "vat");

    /** Other words for it, parted by bars. */
    private final String alsoCalled;

    Known(String... alsoCalled) {
      this.alsoCalled = "|" + String.join("|", alsoCalled) + "|";
    }

    @Override
    public Known place() {
      return this;
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }

    private boolean isCalled(String word) {
      return toString().equals(word) || alsoCalled.contains("|" + word + "|");
    }
  }

  /**
   * A cost by a company's own word. Two words that differ in the size of their letters only are the same, as they are to the
   * formulas of a sheet.
   *
   * @param word as written
   */
  record Own(String word) implements Category {

    public Own {
      word = word.strip();
    }

    @Override
    public Known place() {
      return Known.PERMIT;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Own own && own.word.equalsIgnoreCase(word);
    }

    @Override
    public int hashCode() {
      return word.toLowerCase(Locale.ROOT).hashCode();
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /** The order of the estimate: costs, a company's own behind ours, then what is put on and taken off. */
  static Comparator<Category> order() {
    return Comparator.comparing(Category::place)
        .thenComparing(category -> category instanceof Own)
        .thenComparing(Category::toString, String.CASE_INSENSITIVE_ORDER);
  }

  /** The last of ours that stands before it in the estimate, or itself. */
  Known place();

  /** Whether this is a cost of doing the job, as against what is put on or taken off afterwards. */
  default boolean isCost() {
    return place().compareTo(Known.OVERHEAD) < 0;
  }

  /** Whether it is part of the price from which a discount is taken. */
  default boolean isBeforeDiscount() {
    return place().compareTo(Known.DISCOUNT) < 0;
  }

  /** What a word stands for, letter by letter but for their size: what is none of ours is a company's own. */
  static Category of(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(Known.values())
        .filter(known -> known.toString().equals(plain))
        .<Category>map(known -> known)
        .findFirst()
        .orElseGet(() -> new Own(word));
  }

  /** The same of what people write: {@code Labor} and {@code sub} are ours too. */
  static Category meant(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(Known.values())
        .filter(known -> known.isCalled(plain))
        .<Category>map(known -> known)
        .findFirst()
        .orElseGet(() -> new Own(word));
  }

  /** Those of ours that are a cost. */
  static List<Known> costs() {
    return Arrays.stream(Known.values()).filter(Category::isCost).toList();
  }
}
