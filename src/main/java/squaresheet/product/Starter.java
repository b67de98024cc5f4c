package squaresheet.product;

import java.util.List;
import squaresheet.units.Length;

/**
 * The strip under the first course. Some come double and are split along a line, which doubles the pieces.
 *
 * @param label who it is
 * @param length along the eave, more than 0
 * @param height of a piece as packed, more than 0
 * @param strips how many strips a piece is split into: 1 or 2
 */
public record Starter(Label label, Length length, Length height, long strips) implements Product {

  public Starter {
    Checked.positive("length", length);
    Checked.positive("height", height);
    if (strips < 1 || strips > 2 || height.units() % strips != 0) {
      throw new IllegalArgumentException(
          "a starter must be laid whole (1) or split evenly in two (2), but says " + strips
              + " for a height of " + height);
    }
  }

  /** Height of a strip as laid. */
  public Length laidHeight() {
    return new Length(height.units() / strips);
  }

  /** Strips that a pack comes to. */
  public long stripsPerPack() {
    return packing().pieces() * strips;
  }

  /** What a pack runs to along eaves and rakes. */
  public Length reachPerPack() {
    return length.times(stripsPerPack());
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        Checked.inches("piece_length", length),
        Checked.inches("piece_height", height),
        Checked.pieces(packing()),
        new Fact("strips_each", strips, "pieces"));
  }
}
