package squaresheet.binding;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import squaresheet.finding.Finding;
import squaresheet.finding.Where;
import squaresheet.sheet.Address;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Workbook;

/** A small file that says which cell is which: sheet, cell, table, property, unit, items. */
final class Mapping {

  private static final List<String> HEADINGS =
      List.of("sheet", "cell", "table", "property", "unit", "items", "sure");

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
        .allowMissingFields(true)
        .allowExtraFields(true)
        .ofNamedCsvRecord(csv.replace("\uFEFF", ""))) {
      lines.forEach(line -> apply(line, put));
    } catch (IOException | CsvParseException | UncheckedIOException broken) {
      findings.add(Complaint.MAPPING_LINE.at(
          new Where.InFile(file),
          "the mapping must be a table of comma-separated values, but is not: "
              + broken.getMessage()));
    }
    return put;
  }

  private void apply(NamedCsvRecord line, List<Guess> put) {
    Optional<Address> at = address(line);
    if (at.isEmpty()) {
      return;
    }
    String property = field(line, "property");
    put.removeIf(guess -> guess.at().equals(at.get()));
    if (property.isEmpty() || property.equals("-")) {
      return;
    }
    if (Words.find(field(line, "table"), property).isEmpty()) {
      says(
          line,
          "no property '" + field(line, "table") + "." + property + "'; known: "
              + known(field(line, "table")));
      return;
    }
    String unit = field(line, "unit");
    if (!unit.isEmpty() && UnitWords.find(unit).isEmpty()) {
      says(line, "no unit '" + unit + "'; the cell is not bound");
      return;
    }
    put.add(new Guess(
        field(line, "table"),
        property,
        UnitWords.find(unit).map(UnitWord::toString).orElse(""),
        at.get(),
        field(line, "items").equals("across"),
        1,
        "the mapping says so"));
  }

  private static String known(String table) {
    List<String> known = Words.of(table).stream().map(Meaning::property).toList();
    return known.isEmpty() ? String.join(", ", Words.tables()) + ", job" : String.join(", ", known);
  }

  private Optional<Address> address(NamedCsvRecord line) {
    String sheet = field(line, "sheet");
    try {
      Ref ref = Ref.parse(field(line, "cell").replace("$", ""));
      if (book.sheet(sheet).isPresent()) {
        return Optional.of(new Address(book.sheet(sheet).get().name(), ref));
      }
      says(line, "sheet must be one of the workbook, but there is no '" + sheet + "'");
    } catch (IllegalArgumentException unreadable) {
      says(line, unreadable.getMessage());
    }
    return Optional.empty();
  }

  private void says(NamedCsvRecord line, String sentence) {
    findings.add(Complaint.MAPPING_LINE.at(
        new Where.InLine(file, line.getStartingLineNumber(), ""), sentence));
  }

  private static String field(NamedCsvRecord line, String name) {
    return line.findField(name).orElse("").strip();
  }

  static String write(List<Guess> guesses) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(text)) {
      csv.writeRecord(HEADINGS);
      for (Guess guess : guesses) {
        csv.writeRecord(
            guess.at().sheet(),
            guess.at().ref().toString(),
            guess.table(),
            guess.isSure() ? guess.property() : "-",
            guess.unit(),
            guess.across() ? "across" : "down",
            guess.isSure() ? guess.why() : "not sure: " + guess.property() + ", " + guess.why());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }
}
