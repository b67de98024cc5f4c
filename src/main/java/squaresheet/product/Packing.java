package squaresheet.product;

import squaresheet.units.Pack;

/**
 * How a product is bought.
 *
 * @param pack what it is bought in: a bundle, a roll, a box
 * @param pieces whole pieces in a pack, 1 or more
 * @param weight the weight of a full pack; zero where none is stated
 */
public record Packing(Pack pack, long pieces, Weight weight) {

  public Packing {
    if (pieces < 1) {
      throw new IllegalArgumentException(
          "a " + pack + " must hold 1 piece or more, but holds " + pieces);
    }
  }

  /** A pack of so many pieces, no weight stated. */
  public static Packing of(String pack, long pieces) {
    return new Packing(new Pack(pack), pieces, Weight.ZERO);
  }
}
