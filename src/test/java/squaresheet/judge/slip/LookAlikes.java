package squaresheet.judge.slip;

import static squaresheet.judge.made.Meaning.PACKS;
import static squaresheet.judge.made.Meaning.PITCH;
import static squaresheet.judge.made.Meaning.PLANE_NAME;
import static squaresheet.judge.made.Meaning.PRODUCT_NAME;
import static squaresheet.judge.made.Meaning.SUBTOTAL;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellCopyPolicy;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import squaresheet.judge.made.KnownCell;

/** Things that look like faults and are none, and more honest edits; nothing should be said of them. */
final class LookAlikes {

  private LookAlikes() {}

  static List<Fault> all() {
    return List.of(
        sheet("OK-03", "a flat roof by its plan", """
            Flat roofs, 1/4:12, plan area is used
            Plane|Length (ft)|Width (ft)|Plan area (sf)
            Porch|20|8|=B3*C3
            Bay|9.5|4|=B4*C4
            Garage|24|22|=B5*C5
            Total|||=SUM(D3:D5)
            """),
        sheet("OK-04", "waste by the shape of a plane", """
            Plane|Shape|Squares|Waste|With waste
            Front|gable|12.5|10%|=C2*(1+D2)
            Back|gable|12.5|10%|=C3*(1+D3)
            Left|hip|4.2|15%|=C4*(1+D4)
            Right|hip|4.2|15%|=C5*(1+D5)
            Total||=SUM(C2:C5)||=SUM(E2:E5)
            """),
        sheet("OK-06", "bundles rounded on each plane for staging", """
            Bundles to stage on each plane, rounded up plane by plane on purpose
            Plane|Squares|Bundles
            Front|12.5|=ROUNDUP(B3*3,0)
            Back|12.4|=ROUNDUP(B4*3,0)
            Porch|3.3|=ROUNDUP(B5*3,0)
            Total|=SUM(B3:B5)|=SUM(C3:C5)
            """),
        sheet("OK-08", "a running total", """
            Day|Squares laid|So far
            Monday|8|=B2
            Tuesday|11.5|=C2+B3
            Wednesday|9|=C3+B4
            Thursday|4.5|=C4+B5
            """),
        sheet("OK-12", "bands of freight in ascending order", """
            Bundles from|Freight
            0|85
            60|120
            120|165
            Bundles|90
            Freight|=VLOOKUP(B5,A2:B4,2)
            """),
        sheet("OK-20", "panels rounded on each slope", """
            Metal panels for the porch, cut for each slope
            Slope|Width (ft)|Cover (in)|Panels
            South|21|36|=ROUNDUP(B3*12/C3,0)
            North|21|36|=ROUNDUP(B4*12/C4,0)
            Total|||=SUM(D3:D4)
            """),
        honest("OK-05", "waste as a share of the order throughout", LookAlikes::divisor),
        honest("OK-09", "subtotals that skip each other", LookAlikes::subtotals),
        honest("OK-10", "a prepared row that is blank", LookAlikes::prepared),
        honest("OK-14", "codes of digits as text", LookAlikes::codes),
        honest("OK-16", "a credit", book -> MoneyFaults.line(book, "Customer credit", -250)),
        honest("OK-17", "a guard about an option", LookAlikes::guard),
        honest("OK-23", "a steep face", LookAlikes::steep),
        honest("EDIT-07", "a column put in", LookAlikes::column),
        honest("EDIT-08", "a work added", book -> MoneyFaults.line(book, "Gutter guard", 380)));
  }

  private static Fault honest(
      String id, String name, Function<OpenBook, Optional<Fault.Done>> change) {
    return new Fault(
        id,
        name,
        book -> book.made.own() ? Optional.empty() : change.apply(book).map(Fault.Done::meant));
  }

  /** A sheet of its own, a row a line: texts, numbers, percents, formulas. */
  private static Fault sheet(String id, String name, String rows) {
    return new Fault(id, name, book -> {
      Sheet sheet = book.book.createSheet("Notes on " + id.toLowerCase(java.util.Locale.ROOT));
      List<String> lines = rows.lines().toList();
      for (int i = 0; i < lines.size(); i++) {
        String[] parts = lines.get(i).split("\\|");
        for (int j = 0; j < parts.length; j++) {
          fill(book, sheet.getSheetName() + "!" + (char) ('A' + j) + (i + 1), parts[j]);
        }
      }
      return Optional.of(new Fault.Done(List.of(sheet.getSheetName() + "!A1"), false, true));
    });
  }

  private static void fill(OpenBook book, String at, String text) {
    if (text.startsWith("=")) {
      book.formula(at, text.substring(1));
    } else if (text.matches("-?[\\d.]+")) {
      book.type(at, Double.parseDouble(text));
    } else if (text.matches("[\\d.]+%")) {
      book.type(at, Double.parseDouble(text.replace("%", "")) / 100);
      BookFaults.format(book, at, "0%");
    } else if (!text.isEmpty()) {
      book.type(at, text);
    }
  }

  private static Optional<Fault.Done> swapped(
      OpenBook book, List<KnownCell> cells, String pattern, String by) {
    List<KnownCell> changed = cells.stream()
        .filter(cell -> book.content(cell.at()).matches(".*(" + pattern + ").*"))
        .toList();
    changed.forEach(cell ->
        book.formula(cell.at(), book.content(cell.at()).substring(1).replaceFirst(pattern, by)));
    return changed.isEmpty()
        ? Optional.empty()
        : Optional.of(new Fault.Done(changed.stream().map(KnownCell::at).toList(), false, true));
  }

  private static Optional<Fault.Done> divisor(OpenBook book) {
    return swapped(book, book.all(false, PACKS), "\\*\\(1\\+([^)]*)\\)", "/(1-$1)");
  }

  private static Optional<Fault.Done> subtotals(OpenBook book) {
    return swapped(
        book,
        book.all(false, SUBTOTAL).stream()
            .filter(cell -> cell.item().matches("material|labor"))
            .toList(),
        "SUM\\(",
        "SUBTOTAL(9,");
  }

  /** All rows of planes with a guard for rows that nobody has filled in, and one such row. */
  private static Optional<Fault.Done> prepared(OpenBook book) {
    return StructureFaults.planes(book).findFirst().map(plane -> {
      int column = book.cell(plane.at()).getColumnIndex();
      book.all(true, PLANE_NAME).forEach(name -> guarded(book.cell(name.at())));
      Row row = StructureFaults.insert(book.cell(plane.at()));
      ((XSSFRow) row).copyRowFrom(row.getSheet().getRow(row.getRowNum() + 1), new CellCopyPolicy());
      for (Cell cell : row) {
        if (cell.getCellType() != CellType.FORMULA && cell.getColumnIndex() >= column) {
          cell.setBlank();
        }
      }
      return Fault.Done.at(plane.at(), false).moving(StructureFaults.under(row));
    });
  }

  private static void guarded(Cell name) {
    for (Cell cell : name.getRow()) {
      if (cell.getCellType() == CellType.FORMULA) {
        cell.setCellFormula(
            "IF($" + name.getAddress() + "=\"\",\"\"," + cell.getCellFormula() + ")");
      }
    }
  }

  private static Optional<Fault.Done> codes(OpenBook book) {
    List<KnownCell> names = book.all(true, PRODUCT_NAME).stream()
        .filter(cell -> !cell.at().startsWith("Price"))
        .toList();
    book.type(OpenBook.moved(names.get(0).at(), -1, 6), "Code");
    for (int i = 0; i < names.size(); i++) {
      book.type(OpenBook.moved(names.get(i).at(), 0, 6), "00" + (123 + i * 7));
    }
    return Optional.of(Fault.Done.at(names.get(0).at(), false));
  }

  private static Optional<Fault.Done> guard(OpenBook book) {
    return MoneyFaults.line(book, "Skylight kit, if wanted", 95).map(done -> {
      book.formula(done.cells().get(1), "IFERROR(ROUNDUP(G1/H1,0),0)");
      return done;
    });
  }

  private static Optional<Fault.Done> steep(OpenBook book) {
    return book.any(book.all(true, PITCH).stream()
            .filter(cell -> cell.unit().equals("in/12") && !cell.item().equals("job"))
            .filter(cell -> !cell.run().contains("table"))
            .filter(cell -> !cell.item().startsWith("pitch "))
            .toList())
        .findFirst()
        .map(cell -> {
          book.type(cell.at(), 18);
          String beside = OpenBook.moved(cell.at(), 0, 12);
          book.type(beside, "mansard face, steep");
          return Fault.Done.at(cell.at(), false);
        });
  }

  /** A column of notes in the middle of the planes. */
  private static Optional<Fault.Done> column(OpenBook book) {
    return StructureFaults.planes(book).findFirst().map(plane -> {
      XSSFSheet sheet = (XSSFSheet) book.cell(plane.at()).getSheet();
      if (!sheet.getTables().isEmpty() || sheet.getNumMergedRegions() > 0) {
        throw new IllegalStateException("the library does not move structured tables");
      }
      sheet.shiftColumns(1, 20, 1);
      book.type(OpenBook.moved(plane.at(), 0, 1), "checked");
      return Fault.Done.at(plane.at(), false).moving(Moves.columns(sheet.getSheetName(), 1, 1));
    });
  }
}
