package squaresheet.product;

import squaresheet.product.Product.Fact;
import squaresheet.units.Length;
import squaresheet.units.Pack;
import squaresheet.units.Unit;

/** The refusals and the measures that several products share. */
final class Checked {

  private static final Unit PIECE = Unit.parse("piece");

  private Checked() {}

  /** The unit of a pack; one whose name is no unit of its own counts as a pack. */
  static Unit unit(Pack pack) {
    try {
      return Unit.parse(pack.name());
    } catch (IllegalArgumentException unusualName) {
      return Unit.parse("pack");
    }
  }

  static void positive(String what, Length length) {
    if (!length.isPositive()) {
      throw new IllegalArgumentException(what + " must be more than 0, but is " + length);
    }
  }

  static void less(String what, Length small, String than, Length large) {
    if (small.units() < 0 || small.compareTo(large) >= 0) {
      throw new IllegalArgumentException(what + " must be 0 or more and less than the " + than
          + " of " + large + ", but is " + small);
    }
  }

  static void atLeastOne(String what, long count) {
    if (count < 1) {
      throw new IllegalArgumentException(what + " must be 1 or more, but is " + count);
    }
  }

  static Fact inches(String name, Length length) {
    return new Fact(name, length.toInches(), "in");
  }

  static Fact feet(String name, Length length) {
    return new Fact(name, length.toFeet(), "ft");
  }

  static Fact pieces(Packing packing) {
    return new Fact("pieces_per_pack", packing.pieces(), PIECE.over(unit(packing.pack())));
  }
}
