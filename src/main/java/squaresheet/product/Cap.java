package squaresheet.product;

import java.util.List;
import squaresheet.units.Length;

/**
 * Hip-and-ridge cap: a product of its own, or cut from shingles.
 *
 * @param label who it is
 * @param exposure how much of a cap is left showing, more than 0
 * @param cutFromEach caps that one packed piece gives: 1 for a product of its own
 */
public record Cap(Label label, Length exposure, long cutFromEach) implements Product {

  public Cap {
    Checked.positive("exposure", exposure);
    Checked.atLeastOne("caps cut from each piece", cutFromEach);
  }

  /** Caps that a pack comes to. */
  public long capsPerPack() {
    return packing().pieces() * cutFromEach;
  }

  /** Ridge or hip that a pack covers. */
  public Length reachPerPack() {
    return exposure.times(capsPerPack());
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        Checked.inches("exposure", exposure),
        Checked.pieces(packing()),
        new Fact("cut_each", cutFromEach, "pieces"));
  }
}
