package squaresheet.binding;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import squaresheet.sheet.Address;
import squaresheet.sheet.Workbook;

/** Amounts beside their labels: {@code Total} stands beside hours, squares and feet too, so each must show that it is money. */
final class Amounts {

  private static final String PRICE = "price_total";

  /** What may be an amount is asked. */
  private static final double ASKED = 0.7;

  /** What is something else is not taken before what may be an amount, and is asked last. */
  private static final double HARDLY = 0.5;

  /** A row of totals is looked through so far. */
  private static final int FARTHEST = 12;

  private final Workbook book;
  private final MoneyEvidence evidence;

  Amounts(Workbook book, SheetTables sheets) {
    this.book = book;
    evidence = new MoneyEvidence(book, sheets);
  }

  /** A guess with what speaks against its being money; where another number of a row of totals is money, it is that one. */
  Guess weighed(Guess guess) {
    if (!isAmount(guess) || evidence.of(guess.at()) == MoneyWords.MONEY) {
      return guess;
    }
    boolean price = guess.property().equals(PRICE);
    Optional<Address> other = price ? further(guess.at()) : Optional.empty();
    if (other.isPresent()) {
      return guess.at(other.get()).doubted(ASKED, "of the numbers behind it this one is money");
    }
    if (evidence.of(guess.at()) == MoneyWords.OTHER) {
      return guess.doubted(
          HARDLY,
          "by its format, by what is written about it or by what it adds up it is no money");
    }
    return price
        ? guess.doubted(
            ASKED,
            "neither its format nor what is written about it nor what it adds up says that it is money")
        : guess;
  }

  private static boolean isAmount(Guess guess) {
    return Words.find(guess.table(), guess.property())
        .filter(meaning -> meaning.holds() == Holds.MONEY)
        .isPresent();
  }

  /** The only number of money behind one in its row. */
  private Optional<Address> further(Address at) {
    List<Address> money = IntStream.rangeClosed(1, FARTHEST)
        .mapToObj(right -> new Address(at.sheet(), at.ref().plus(0, right)))
        .filter(cell -> Cells.isLikeANumber(book.cell(cell)))
        .filter(cell -> evidence.of(cell) == MoneyWords.MONEY)
        .toList();
    return money.size() == 1 ? Optional.of(money.get(0)) : Optional.empty();
  }

  /** The guesses beside the price that is sure: what it does not add up must show that it is money by itself. */
  List<Guess> together(List<Guess> settled) {
    Optional<Guess> price = settled.stream()
        .filter(guess -> guess.property().equals(PRICE) && guess.isSure())
        .findFirst();
    Set<Address> parts = price.map(guess -> evidence.addedUp(guess.at())).orElse(Set.of());
    return settled.stream()
        .map(guess -> price.isEmpty() || !isAmount(guess) || isShown(guess, parts)
            ? guess
            : guess.doubted(
                ASKED, "nothing says that it is money, and the price does not add it up"))
        .toList();
  }

  private boolean isShown(Guess guess, Set<Address> parts) {
    return parts.contains(guess.at()) || evidence.of(guess.at()) == MoneyWords.MONEY;
  }
}
