package squaresheet.judge.slip;

import static squaresheet.judge.made.Meaning.EAVE;
import static squaresheet.judge.made.Meaning.LENGTH_UP_SLOPE;
import static squaresheet.judge.made.Meaning.PACKS;
import static squaresheet.judge.made.Meaning.PLANE_NAME;
import static squaresheet.judge.made.Meaning.PLAN_AREA;
import static squaresheet.judge.made.Meaning.PRICE;
import static squaresheet.judge.made.Meaning.SLOPED_AREA;
import static squaresheet.judge.made.Meaning.SUBTOTAL;
import static squaresheet.judge.made.Meaning.TAX_RATE;
import static squaresheet.judge.made.Meaning.WASTE_RATE;
import static squaresheet.judge.slip.FormulaFaults.wrap;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorkbook;
import squaresheet.judge.made.Calculator;
import squaresheet.judge.made.KnownCell;

/** Faults of sheets, names, links, filters, and of values that a file keeps from before, in other people's workbooks. */
final class BookFaults {

  private static final String LINKS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink";
  private static final String PATHS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLinkPath";
  private static final String KIND =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.externalLink+xml";

  private BookFaults() {}

  static List<Fault> all() {
    return Stream.of(
            new Fault("MEC-11", "the order reads an old copy of the sheet", BookFaults::oldCopy),
            new Fault("FRM-07", "one line reads another sheet", book -> garage(book, true)),
            new Fault("DOM-18", "a building left out of the sum", book -> garage(book, false)),
            Fault.oneRow("FRM-08", "a deleted plane in a sum", wrap("", "+#REF!"), SUBTOTAL),
            new Fault("FRM-20", "a name that points elsewhere", BookFaults::name),
            new Fault("ITG-03", "a filter left on under a subtotal", book -> hidden(book, "9")),
            new Fault("ITG-04", "a subtotal without hidden rows", book -> hidden(book, "109")),
            new Fault("ITG-06", "formulas hidden by protection", BookFaults::hiddenFormulas),
            new Fault("ITG-11", "an input that nobody reads", BookFaults::inlined),
            Fault.oneRow(
                "ITG-12",
                "a function that few programs know",
                wrap("_xlfn.BYROW(", ",1)"),
                SUBTOTAL),
            new Fault("STL-01", "stored values left behind", BookFaults::stale),
            new Fault("STL-03", "no stored values", BookFaults::stripped),
            new Fault(
                "STL-04", "a price from another file", book -> linked(book, "price list.xlsx")),
            new Fault(
                "STL-05",
                "a price from a file of another machine",
                book -> linked(book, "file:///C:/Office/price%20list.xlsx")),
            new Fault("STL-11", "a total retyped in a letter", BookFaults::letter))
        .map(Fault::foreign)
        .toList();
  }

  static void format(OpenBook book, String at, String format) {
    CellStyle style = book.book.createCellStyle();
    style.setDataFormat(book.book.createDataFormat().getFormat(format));
    book.cell(at).setCellStyle(style);
  }

  /** The sum of the roof's area, where the order stands on another sheet. */
  private static Optional<KnownCell> area(OpenBook book) {
    return book.all(false, SLOPED_AREA).stream()
        .filter(cell -> cell.item().equals("job") && cell.run().isEmpty())
        .filter(cell -> !book.made.orders().get(0).startsWith(sheet(cell) + "!"))
        .findFirst();
  }

  private static String sheet(KnownCell cell) {
    return cell.at().substring(0, cell.at().lastIndexOf('!'));
  }

  /** A copy of the roof's sheet with one dimension another. */
  private static String copy(OpenBook book, KnownCell area, String name) {
    Sheet copy = book.book.cloneSheet(book.book.getSheetIndex(sheet(area)), name);
    KnownCell any = book.all(true, EAVE, LENGTH_UP_SLOPE, PLAN_AREA).stream()
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("nothing typed"));
    String at = name + any.at().substring(any.at().lastIndexOf('!'));
    book.type(at, Math.rint(book.value(any.at()) * 0.6));
    return copy.getSheetName();
  }

  private static Optional<Fault.Done> oldCopy(OpenBook book) {
    return area(book).map(area -> {
      String name = copy(book, area, sheet(area) + " old");
      List<String> cells = new ArrayList<>();
      book.made.cells().stream()
          .filter(cell -> !cell.typed() && !cell.at().startsWith(sheet(area) + "!"))
          .filter(cell -> book.content(cell.at()).contains(sheet(area) + "'!")
              || book.content(cell.at()).contains(sheet(area) + "!"))
          .forEach(cell -> {
            book.formula(cell.at(), elsewhere(book.content(cell.at()), sheet(area), name));
            cells.add(cell.at());
          });
      return new Fault.Done(cells, true, false);
    });
  }

  private static String elsewhere(String text, String sheet, String name) {
    return text.substring(1).replaceAll("'?" + sheet + "'?!", "'" + name + "'!");
  }

  private static Optional<Fault.Done> garage(OpenBook book, boolean read) {
    return area(book).flatMap(area -> {
      String name = copy(book, area, "Garage");
      if (!read) {
        String at = name + area.at().substring(area.at().lastIndexOf('!'));
        List<String> cells = new ArrayList<>(List.of(at, area.at()));
        cells.addAll(book.made.orders());
        return Optional.of(new Fault.Done(cells, true, false));
      }
      return book.any(book.all(false, PACKS).stream()
              .filter(cell -> book.content(cell.at()).contains(sheet(area)))
              .toList())
          .findFirst()
          .map(cell -> {
            book.formula(cell.at(), elsewhere(book.content(cell.at()), sheet(area), name));
            return Fault.Done.at(cell.at(), true);
          });
    });
  }

  private static Optional<Fault.Done> name(OpenBook book) {
    return book.all(true, TAX_RATE).stream().findFirst().flatMap(tax -> {
      List<KnownCell> users = book.all(false, PACKS).stream()
          .filter(cell -> book.content(cell.at()).contains("(1+$"))
          .toList();
      if (users.isEmpty()) {
        return Optional.empty();
      }
      var name = book.book.createName();
      name.setNameName("Waste");
      name.setRefersToFormula("'" + sheet(tax) + "'!"
          + tax.at()
              .substring(tax.at().lastIndexOf('!') + 1)
              .replaceAll("([A-Z]+)(\\d+)", "\\$$1\\$$2"));
      users.forEach(cell -> book.formula(
          cell.at(),
          book.content(cell.at()).substring(1).replaceAll("\\(1\\+\\$[A-Z]+\\$\\d+", "(1+Waste")));
      return Optional.of(new Fault.Done(
          Stream.concat(users.stream().map(KnownCell::at), Stream.of(tax.at())).toList(),
          true,
          false));
    });
  }

  private static Optional<Fault.Done> hidden(OpenBook book, String function) {
    return book.all(false, SLOPED_AREA).stream()
        .filter(cell -> cell.item().equals("job") && cell.run().isEmpty())
        .findFirst()
        .flatMap(sum -> StructureFaults.planes(book).findFirst().map(plane -> {
          List<KnownCell> names = book.all(true, PLANE_NAME);
          Row row = book.cell(plane.at()).getRow();
          row.setZeroHeight(true);
          if (function.equals("9")) {
            Row head = book.cell(names.get(0).at()).getRow();
            book.cell(plane.at())
                .getSheet()
                .setAutoFilter(new CellRangeAddress(
                    head.getRowNum() - 1,
                    book.cell(names.get(names.size() - 1).at()).getRowIndex(),
                    0,
                    row.getLastCellNum() - 1));
          }
          String text = book.content(sum.at()).substring(1);
          book.formula(sum.at(), text.replace("SUM(", "SUBTOTAL(109,"));
          List<String> hidden = new ArrayList<>();
          row.forEach(cell -> hidden.add(row.getSheet().getSheetName() + "!" + cell.getAddress()));
          // of rows that a filter hides, the spreadsheet programs leave out either way
          return Fault.Done.at(sum.at(), true).touching(hidden).then(last -> ((XSSFCell)
                  last.cell(sum.at()))
              .getCTCell()
              .getF()
              .setStringValue(text.replace("SUM(", "SUBTOTAL(" + function + ",")));
        }));
  }

  private static Optional<Fault.Done> hiddenFormulas(OpenBook book) {
    return book.all(false, SLOPED_AREA).stream().findFirst().map(cell -> {
      Sheet sheet = book.cell(cell.at()).getSheet();
      CellStyle style = book.book.createCellStyle();
      style.setHidden(true);
      style.setLocked(true);
      List<String> cells = new ArrayList<>(List.of(""));
      book.all(false, SLOPED_AREA).forEach(each -> {
        book.cell(each.at()).setCellStyle(style);
        cells.add(each.at());
      });
      cells.add(sheet.getSheetName() + "!A1");
      sheet.protectSheet("");
      return new Fault.Done(cells, true, false);
    });
  }

  private static Optional<Fault.Done> inlined(OpenBook book) {
    return book.all(true, WASTE_RATE).stream().findFirst().map(waste -> {
      List<String> cells = new ArrayList<>(List.of(waste.at()));
      double rate = book.value(waste.at());
      book.all(false, PACKS).stream()
          .filter(cell -> book.content(cell.at()).contains("(1+$"))
          .forEach(cell -> {
            book.formula(
                cell.at(),
                book.content(cell.at())
                    .substring(1)
                    .replaceAll("\\(1\\+\\$[A-Z]+\\$\\d+", "(1+" + OpenBook.number(rate)));
            cells.add(cell.at());
          });
      return new Fault.Done(cells, true, false);
    });
  }

  private static Optional<Fault.Done> stale(OpenBook book) {
    return book.any(book.all(true, EAVE, LENGTH_UP_SLOPE, WASTE_RATE))
        .findFirst()
        .map(cell -> {
          double value = Math.round(book.value(cell.at()) * 130) / 100.0;
          List<String> cells = new ArrayList<>(List.of(cell.at()));
          try (OpenBook other = new OpenBook(book.made, book.made.file(), new Random(0))) {
            other.type(cell.at(), value);
            byte[] then = Calculator.LIBRARY.calculated(List.of(other.bytes())).get(0);
            try (OpenBook after = new OpenBook(book.made, then, new Random(0))) {
              Map<String, Double> before = book.shown();
              after.shown().forEach((at, shown) -> {
                if (!shown.equals(before.get(at))) {
                  cells.add(at);
                }
              });
            }
          }
          return new Fault.Done(cells, true, false).then(last -> last.type(cell.at(), value));
        });
  }

  private static Optional<Fault.Done> stripped(OpenBook book) {
    return Optional.of(Fault.Done.at("", true)
        .then(last -> last.book.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
          if (cell.getCellType() == CellType.FORMULA
              && ((XSSFCell) cell).getCTCell().isSetV()) {
            ((XSSFCell) cell).getCTCell().unsetV();
          }
        })))));
  }

  private static Optional<Fault.Done> linked(OpenBook book, String target) {
    return book.any(book.all(true, PRICE)).findFirst().map(cell -> new Fault.Done(
            List.of(cell.at(), ""), true, false)
        .then(last -> link(last, cell.at(), target)));
  }

  /** Makes a price come from another file; its stored value stays. */
  private static void link(OpenBook book, String at, String target) {
    try {
      OPCPackage file = book.book.getPackage();
      PackagePartName name =
          PackagingURIHelper.createPartName("/xl/externalLinks/externalLink1.xml");
      PackagePart part = file.createPart(name, KIND);
      String path = part.addRelationship(
              PackagingURIHelper.toURI(target.replace(" ", "%20")), TargetMode.EXTERNAL, PATHS)
          .getId();
      try (OutputStream out = part.getOutputStream()) {
        out.write("""
            <?xml version="1.0" encoding="UTF-8" standalone="yes"?>
            <externalLink xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">\
            <externalBook xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="%s">\
            <sheetNames><sheetName val="Prices"/></sheetNames></externalBook></externalLink>
            """.formatted(path).getBytes(StandardCharsets.UTF_8));
      }
      PackageRelationship relation =
          book.book.getPackagePart().addRelationship(name, TargetMode.INTERNAL, LINKS);
      CTWorkbook workbook = book.book.getCTWorkbook();
      workbook.addNewExternalReferences().addNewExternalReference().setId(relation.getId());
      Cell cell = book.cell(at);
      ((XSSFCell) cell).getCTCell().addNewF().setStringValue("[1]Prices!$C$9");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InvalidFormatException | java.net.URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Optional<Fault.Done> letter(OpenBook book) {
    return book.made.total().map(total -> {
      Sheet letter = book.book.createSheet("Letter");
      letter.createRow(0).createCell(0).setCellValue("We offer to roof your house as agreed.");
      Row row = letter.createRow(2);
      row.createCell(0).setCellValue("Total price");
      row.createCell(1).setCellValue(Math.round(book.value(total) * 97) / 100.0);
      return Fault.Done.at("Letter!B3", true);
    });
  }
}
