package squaresheet.product;

import java.util.List;
import squaresheet.units.Length;

/**
 * Nails, by the box, the coil or the pound: the pack says which, and its pieces how many.
 *
 * @param label who it is
 * @param length under the head, more than 0
 */
public record Fastener(Label label, Length length) implements Product {

  /** Into the deck, or through a thinner one. Source: IRC R905.2.5. */
  private static final Length INTO_THE_DECK = Length.ofInches(3, 4);

  public Fastener {
    Checked.positive("length", length);
  }

  /** The length needed: everything above the deck, and 3/4 in into it, or through it where it is thinner. */
  public static Length lengthNeeded(Length aboveTheDeck, Length deck) {
    return aboveTheDeck.plus(deck.compareTo(INTO_THE_DECK) < 0 ? deck : INTO_THE_DECK);
  }

  /** Whether this nail holds; through a thin deck it must come out at the other side. */
  public boolean holds(Length aboveTheDeck, Length deck) {
    int longer = length.compareTo(lengthNeeded(aboveTheDeck, deck));
    return deck.compareTo(INTO_THE_DECK) < 0 ? longer > 0 : longer >= 0;
  }

  @Override
  public List<Fact> facts() {
    return List.of(Checked.inches("length", length), Checked.pieces(packing()));
  }
}
