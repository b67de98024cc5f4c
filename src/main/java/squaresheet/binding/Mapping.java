package squaresheet.binding;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.OwnWords;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.sheet.Workbook;

/** A small file that says which cell is which: sheet, cell, table, property, unit, items. */
final class Mapping {

  private static final List<String> HEADINGS =
      List.of("sheet", "cell", "written", "table", "property", "unit", "items", "why");

  /** A line that nobody has filled in yet. */
  private static final String OPEN = "?";

  private final Workbook book;
  private final String file;
  private final List<Finding> findings = new ArrayList<>();

  Mapping(Workbook book, String file) {
    this.book = book;
    this.file = file;
  }

  List<Finding> findings() {
    return findings;
  }

  /** The guesses with the lines of the file in the place of what was guessed of the same cell. */
  List<Guess> apply(String csv, List<Guess> guesses) {
    List<Guess> put = new ArrayList<>(guesses);
    try (CsvReader<NamedCsvRecord> lines = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .ofNamedCsvRecord(csv.replace("\uFEFF", ""))) {
      lines.forEach(line -> apply(line, put));
    } catch (IOException | CsvParseException | UncheckedIOException broken) {
      findings.add(Complaint.MAPPING_LINE.at(
          new Where.InFile(file),
          "the mapping must be a table of comma-separated values, but has a heading twice or a value too long for"
              + " any table"));
    }
    return put;
  }

  private void apply(NamedCsvRecord line, List<Guess> put) {
    Optional<Address> at = address(line);
    if (at.isEmpty()) {
      return;
    }
    String property = field(line, "property");
    if (property.equals(OPEN)) {
      return;
    }
    put.removeIf(guess -> guess.at().equals(at.get()));
    if (property.isEmpty() || property.equals("-")) {
      return;
    }
    String unit = field(line, "unit");
    if (isKnown(line, property, unit)) {
      put.add(new Guess(
          field(line, "table"),
          property,
          UnitWords.find(unit).map(UnitWord::toString).orElse(""),
          at.get(),
          field(line, "items").equals("across"),
          1,
          "the mapping says so"));
    }
  }

  private boolean isKnown(NamedCsvRecord line, String property, String unit) {
    boolean known = Words.find(field(line, "table"), property).isPresent();
    boolean unitKnown = unit.isEmpty() || UnitWords.find(unit).isPresent();
    if (!known) {
      says(
          line,
          "no property '" + field(line, "table") + "." + property + "'; known: "
              + known(field(line, "table")));
    } else if (!unitKnown) {
      says(line, "no unit '" + unit + "'; the cell is not bound");
    }
    return known && unitKnown;
  }

  private static String known(String table) {
    List<String> known = Words.of(table).stream().map(Meaning::property).toList();
    return known.isEmpty() ? String.join(", ", Words.tables()) + ", job" : String.join(", ", known);
  }

  private Optional<Address> address(NamedCsvRecord line) {
    String sheet = sheet(field(line, "sheet"));
    try {
      Ref ref = Ref.parse(field(line, "cell").replace("$", ""));
      if (book.sheet(sheet).isPresent()) {
        return Optional.of(new Address(book.sheet(sheet).get().name(), ref));
      }
      says(line, "sheet must be one of the workbook, but there is no '" + sheet + "'");
    } catch (IllegalArgumentException unreadable) {
      says(line, OwnWords.of(unreadable));
    }
    return Optional.empty();
  }

  /** The name of the sheet, as it stands in the workbook or as a csv must write it. */
  private String sheet(String written) {
    return book.sheets().stream()
        .map(Sheet::name)
        .filter(name -> book.sheet(written).isEmpty())
        .filter(name -> Content.safeForCsv(name).equalsIgnoreCase(written))
        .findFirst()
        .orElse(written);
  }

  private void says(NamedCsvRecord line, String sentence) {
    findings.add(Complaint.MAPPING_LINE.at(
        new Where.InLine(file, line.getStartingLineNumber(), ""), sentence));
  }

  private static String field(NamedCsvRecord line, String name) {
    return line.findField(name).orElse("").strip();
  }

  /** The list as a file to fill in: what is sure, then what is not, then the columns that nothing is bound to. */
  static String write(Workbook book, List<Guess> guesses, List<Finding> unbound) {
    List<List<String>> rows = new ArrayList<>(List.of(HEADINGS));
    guesses.forEach(guess -> rows.add(line(book, guess)));
    unbound.forEach(finding -> line(book, finding).ifPresent(rows::add));
    return Content.csv(
        List.of(
            "property: what the cell or the column under it is; - leaves it unbound, ? is not answered yet",
            "tables and their properties: " + String.join(", ", Words.tables())
                + ", job; see docs/binding.md"),
        rows);
  }

  private static List<String> line(Workbook book, Guess guess) {
    return List.of(
        guess.at().sheet(),
        guess.at().ref().toString(),
        Cells.text(book.cell(guess.at())),
        guess.table(),
        guess.isSure() ? guess.property() : OPEN,
        guess.unit(),
        guess.across() ? "across" : "down",
        guess.isSure() ? guess.why() : "perhaps " + guess.property() + ": " + guess.why());
  }

  private static Optional<List<String>> line(Workbook book, Finding finding) {
    return finding.where() instanceof Where.InCell in
        ? Optional.of(List.of(
            in.cell().sheet(),
            in.cell().ref().toString(),
            Cells.text(book.cell(in.cell())),
            "",
            OPEN,
            "",
            "",
            finding.says()))
        : Optional.empty();
  }
}
