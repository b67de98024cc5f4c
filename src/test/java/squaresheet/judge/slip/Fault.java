package squaresheet.judge.slip;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.Meaning;

/**
 * A kind of fault: where it may stand in a workbook, what it does there, and whether anything else in the workbook contradicts it.
 *
 * @param id its id in the list of errors, or a word of its own
 * @param name the slip in words
 * @param put puts it into a workbook; nothing where the workbook has no place for it
 */
record Fault(String id, String name, Function<OpenBook, Optional<Done>> put) {

  /** How many rows of one family are needed for the odd one to stand out. */
  private static final int A_FAMILY = 3;

  /** Faults that the meaning of the cells contradicts, however few rows there are. */
  private static final Set<String> BY_MEANING = Set.of(
      "FRM-06", "FRM-08", "FRM-09", "UNI-03", "UNI-04", "UNI-14", "LOG-01", "LOG-03", "LOG-14",
      "LOG-11");

  /**
   * What was done.
   *
   * @param cells where
   * @param identifiable whether something else in the workbook contradicts it
   * @param harmless whether it is no fault
   * @param moves where other cells went by it
   * @param also other cells of which it is no surprise that something is said
   * @param last what is done after the workbook was worked out, so that its values stay as they were
   */
  record Done(
      List<String> cells,
      boolean identifiable,
      boolean harmless,
      Moves moves,
      List<String> also,
      Consumer<OpenBook> last) {

    Done(List<String> cells, boolean identifiable, boolean harmless) {
      this(cells, identifiable, harmless, Moves.NONE, List.of(), book -> {});
    }

    /** The same that touches other cells too. */
    Done touching(List<String> others) {
      return new Done(cells, identifiable, harmless, moves, others, last);
    }

    /** The same where rows, columns or sheets moved. */
    Done moving(Moves other) {
      return new Done(cells, identifiable, harmless, other, also, last);
    }

    /** The same with something done when the values are stored already. */
    Done then(Consumer<OpenBook> other) {
      return new Done(cells, identifiable, harmless, moves, also, other);
    }

    /** The same where it is no fault. */
    Done meant() {
      return new Done(cells, false, true, moves, also, last);
    }

    /** The same where nothing in the workbook contradicts it. */
    Done unseen() {
      return new Done(cells, false, harmless, moves, also, last);
    }

    static Done at(String cell, boolean identifiable) {
      return new Done(List.of(cell), identifiable, false);
    }
  }

  /** The same fault where nothing in a workbook contradicts it: a rule that the workbook does not declare, say. */
  Fault unseen() {
    return new Fault(id, name, book -> put.apply(book).map(Done::unseen));
  }

  /** The same fault in workbooks of other people's layout only. */
  Fault foreign() {
    return new Fault(id, name, book -> book.made.own() ? Optional.empty() : put.apply(book));
  }

  /** What it is told by. */
  String label() {
    return id + " " + name;
  }

  /** A formula of one row of a family becomes another. */
  static Fault oneRow(
      String id,
      String name,
      BiFunction<OpenBook, KnownCell, Optional<String>> change,
      Meaning... meanings) {
    return new Fault(id, name, book -> places(book, change, false, meanings).flatMap(cell -> {
      change.apply(book, cell).ifPresent(text -> book.formula(cell.at(), text));
      return Optional.of(Done.at(
          cell.at(),
          book.family(cell).size() >= A_FAMILY || cell.run().isEmpty() || BY_MEANING.contains(id)));
    }));
  }

  /** The formula of every row of a family becomes another; only what stands outside the family contradicts it. */
  static Fault everyRow(
      String id,
      String name,
      BiFunction<OpenBook, KnownCell, Optional<String>> change,
      Meaning... meanings) {
    return new Fault(id, name + ", in every row", book -> places(book, change, false, meanings)
        .filter(cell -> book.family(cell).size() > 1)
        .map(cell -> {
          List<KnownCell> all =
              book.family(cell).stream().filter(each -> !each.typed()).toList();
          all.forEach(
              each -> change.apply(book, each).ifPresent(text -> book.formula(each.at(), text)));
          return new Done(all.stream().map(KnownCell::at).toList(), true, false);
        }));
  }

  /** A typed number becomes another. */
  static Fault number(
      String id,
      String name,
      BiFunction<OpenBook, Double, Optional<Double>> change,
      Predicate<KnownCell> contradicted,
      Meaning... meanings) {
    return new Fault(id, name, book -> book.any(book.all(true, meanings).stream()
            .filter(cell -> change.apply(book, book.value(cell.at())).isPresent())
            .toList())
        .findFirst()
        .map(cell -> {
          book.type(cell.at(), change.apply(book, book.value(cell.at())).orElseThrow());
          return Done.at(cell.at(), contradicted.test(cell) || !cell.witnesses().isEmpty());
        }));
  }

  /** A cell becomes a text. */
  static Fault text(
      String id,
      String name,
      boolean typed,
      BiFunction<OpenBook, KnownCell, Optional<String>> change,
      boolean identifiable,
      Meaning... meanings) {
    return new Fault(id, name, book -> book.any(book.all(typed, meanings).stream()
            .filter(cell -> change.apply(book, cell).isPresent())
            .toList())
        .findFirst()
        .map(cell -> {
          book.type(cell.at(), change.apply(book, cell).orElseThrow());
          return Done.at(cell.at(), identifiable || !cell.witnesses().isEmpty());
        }));
  }

  private static Optional<KnownCell> places(
      OpenBook book,
      BiFunction<OpenBook, KnownCell, Optional<String>> change,
      boolean typed,
      Meaning... meanings) {
    return book.any(book.all(typed, meanings).stream()
            .filter(cell -> change.apply(book, cell).isPresent())
            .toList())
        .findFirst();
  }
}
