package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import squaresheet.sheet.Address;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** Looks a workbook over and says what its columns and cells seem to be. */
final class Survey {

  private final Workbook book;
  private final SheetTables sheets;
  private final Amounts amounts;

  Survey(Workbook book, SheetTables sheets) {
    this.book = book;
    this.sheets = sheets;
    amounts = new Amounts(book, sheets);
  }

  List<Guess> guesses() {
    List<Guess> guesses = new ArrayList<>();
    SingleValues values = new SingleValues(book);
    for (Sheet sheet : book.sheets()) {
      if (!AnyLayout.isOurs(sheet)) {
        List<FoundTable> tables = sheets.of(sheet);
        tables.forEach(table -> columns(table, guesses));
        LabelFinder.all(sheets.grid(sheet), tables, "job")
            .forEach(label -> values.add(amounts.weighed(guess(label))));
      }
    }
    names().forEach(name -> values.add(amounts.weighed(name)));
    guesses.addAll(amounts.together(values.settled(buildings(guesses))));
    return guesses;
  }

  /** Empty cells beside their labels, of values of which none is bound yet. */
  List<Guess> vacant(List<Guess> bound) {
    Set<String> known = bound.stream().map(Guess::property).collect(Collectors.toSet());
    return book.sheets().stream()
        .filter(sheet -> !AnyLayout.isOurs(sheet))
        .flatMap(sheet -> LabelFinder.vacant(sheets.grid(sheet), sheets.of(sheet)).stream())
        .map(Survey::guess)
        .filter(guess -> !known.contains(guess.property()))
        .toList();
  }

  /** The sheets with planes, where there is more than one. */
  private static Set<String> buildings(List<Guess> guesses) {
    Set<String> sheets = guesses.stream()
        .filter(guess -> guess.table().equals("planes"))
        .map(guess -> guess.at().sheet())
        .collect(Collectors.toSet());
    return sheets.size() > 1 ? sheets : Set.of();
  }

  private static void columns(FoundTable table, List<Guess> guesses) {
    for (FoundColumn column : table.columns()) {
      if (column.sure() >= FoundColumn.WORTH_ASKING) {
        guesses.add(new Guess(
            table.table(),
            column.property(),
            column.unit().map(UnitWord::toString).orElse(""),
            table.grid().address(table.heading(), column.at()).orElseThrow(),
            table.isOnItsSide(),
            Math.min(column.sure(), 0.99),
            column.why()));
      }
    }
  }

  private static Guess guess(FoundLabel label) {
    return new Guess(
        "job",
        label.meaning().property(),
        label.unit().map(UnitWord::toString).orElse(""),
        label.address().orElseThrow(),
        false,
        Math.min(label.sure(), 0.99),
        label.why());
  }

  /** Defined names that say what they stand for: {@code WasteRate}, {@code tax_rate}. */
  private List<Guess> names() {
    List<Guess> guesses = new ArrayList<>();
    for (Workbook.Name name : book.names()) {
      Optional<Address> cell = name.cell()
          .filter(at -> name.block()
              .filter(block -> block.rows() == 1 && block.columns() == 1)
              .isPresent())
          .filter(at -> book.sheet(at.sheet()).isPresent());
      String words = name.name().replaceAll("(?<=[a-z])(?=[A-Z])", " ").replace('_', ' ');
      cell.flatMap(at -> best(Heading.of(words), at, name.name())).ifPresent(guesses::add);
    }
    return guesses;
  }

  private static Optional<Guess> best(Heading heading, Address at, String name) {
    return Words.fits(heading, "job").stream()
        .filter(fit -> fit.score() >= 0.85)
        .max(Comparator.comparingDouble(Words.Fit::score))
        .map(fit -> new Guess(
            "job",
            fit.meaning().property(),
            "",
            at,
            false,
            0.99,
            "the defined name " + name + " stands for it"));
  }
}
