package squaresheet.judge.slip;

import static squaresheet.judge.made.Meaning.AMOUNT;
import static squaresheet.judge.made.Meaning.EAVE;
import static squaresheet.judge.made.Meaning.LENGTH_UP_SLOPE;
import static squaresheet.judge.made.Meaning.PLANE_NAME;
import static squaresheet.judge.made.Meaning.PRICE;
import static squaresheet.judge.made.Meaning.PRODUCT_NAME;
import static squaresheet.judge.made.Meaning.TOTAL;
import static squaresheet.judge.made.Meaning.WASTE_RATE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellCopyPolicy;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.Meaning;

/** Faults of rows, sheets, formats and the file as a whole; and honest edits and look-alikes, of which nothing should be said. */
final class StructureFaults {

  private StructureFaults() {}

  static List<Fault> all() {
    return List.of(
        new Fault("MEC-04", "a plane added without its formulas", StructureFaults::bareRow),
        new Fault("MEC-06", "a plane pasted twice", book -> copied(book, false)),
        new Fault(
            "MEC-05", "one column sorted alone", book -> rotated(book, EAVE, LENGTH_UP_SLOPE)),
        new Fault("MEC-10", "prices one row off", book -> rotated(book, PRICE)),
        new Fault("ITG-01", "a hidden row that counts", StructureFaults::hiddenRow),
        new Fault("ITG-02", "a hidden sheet that feeds the price", StructureFaults::hiddenSheet),
        new Fault("ITG-08", "a format that hides a value", StructureFaults::hidingFormat),
        new Fault("DAT-10", "two prices for one product", StructureFaults::secondPrice),
        new Fault("DAT-12", "values under a merged range", StructureFaults::merged),
        file("STL-02", "manual calculation left on", book -> book.book
            .getCTWorkbook()
            .addNewCalcPr()
            .setCalcMode(org.openxmlformats.schemas.spreadsheetml.x2006.main.STCalcMode.MANUAL)),
        file(
            "STL-10",
            "precision as displayed",
            book -> book.book.getCTWorkbook().addNewCalcPr().setFullPrecision(false)),
        new Fault("ITG-05", "another date system", StructureFaults::otherDates),
        file("ITG-07", "a name that is broken", book -> {
          var name = book.book.createName();
          name.setNameName("old_rate");
          name.setRefersToFormula("#REF!");
        }),
        honest("EDIT-01", "a plane added with its formulas", book -> copied(book, true)),
        honest("EDIT-02", "a price changed", book -> edit(book, PRICE, 1.03)),
        honest("EDIT-03", "the waste changed", book -> edit(book, WASTE_RATE, 1.25)),
        honest("EDIT-04", "a plane measured again", book -> edit(book, EAVE, 1.02)),
        honest("EDIT-05", "a sheet renamed", StructureFaults::renamed),
        honest("EDIT-06", "a column of notes put beside", StructureFaults::notes),
        honest("EDIT-09", "a list of prices hidden", StructureFaults::hiddenList),
        honest("OK-11", "a footnote number under a column", StructureFaults::footnote),
        honest("OK-15", "a date beside the planes", StructureFaults::dates),
        honest("OK-18", "an option outside the total", StructureFaults::option),
        honest("OK-24", "a rounded headline price", StructureFaults::headline));
  }

  private static Fault file(String id, String name, Consumer<OpenBook> change) {
    return new Fault(id, name, book -> {
      if (book.made.own() && id.startsWith("STL")) {
        return Optional.empty(); // the office program writes these settings anew
      }
      change.accept(book);
      return Optional.of(Fault.Done.at("", true));
    });
  }

  /** Days of this year, shown four years late. */
  private static Optional<Fault.Done> otherDates(OpenBook book) {
    Sheet sheet = book.book.getSheetAt(0);
    int free = sheet.getLastRowNum() + 3;
    List<String> cells = new ArrayList<>(List.of(""));
    for (String label : List.of("Measured on", "Bid date")) {
      String at = sheet.getSheetName() + "!A" + free;
      book.type(at, label);
      book.type(OpenBook.moved(at, 0, 1), 46150.0 + free);
      BookFaults.format(book, OpenBook.moved(at, 0, 1), "m/d/yyyy");
      cells.add(OpenBook.moved(at, 0, 1));
      free++;
    }
    if (book.book.getCTWorkbook().getWorkbookPr() == null) {
      book.book.getCTWorkbook().addNewWorkbookPr();
    }
    book.book.getCTWorkbook().getWorkbookPr().setDate1904(true);
    return book.made.own() ? Optional.empty() : Optional.of(new Fault.Done(cells, true, false));
  }

  private static Fault honest(
      String id, String name, java.util.function.Function<OpenBook, Optional<Fault.Done>> change) {
    return new Fault(
        id,
        name,
        book -> book.made.own() && !id.matches("EDIT-0[234]")
            ? Optional.empty()
            : change.apply(book).map(Fault.Done::meant));
  }

  static Stream<KnownCell> planes(OpenBook book) {
    List<KnownCell> names = book.all(true, PLANE_NAME);
    boolean inRows = names.size() > 2
        && names.stream()
                .map(cell -> book.cell(cell.at()).getColumnIndex())
                .distinct()
                .count()
            == 1;
    return inRows && !book.made.own()
        ? book.any(names.subList(1, names.size() - 1))
        : Stream.empty();
  }

  static Row insert(Cell before) {
    Sheet sheet = before.getSheet();
    if (!((XSSFSheet) sheet).getTables().isEmpty()) {
      throw new IllegalStateException("the library does not move structured tables");
    }
    int at = before.getRowIndex();
    sheet.shiftRows(at, sheet.getLastRowNum(), 1);
    return sheet.createRow(at);
  }

  private static Optional<Fault.Done> bareRow(OpenBook book) {
    return planes(book).findFirst().map(any -> {
      List<KnownCell> names = book.all(true, PLANE_NAME);
      Cell last = book.cell(names.get(names.size() - 1).at());
      Row from = last.getRow();
      Row row = insert(last.getSheet()
          .getRow(from.getRowNum() + 1)
          .getCell(last.getColumnIndex(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK));
      for (Cell cell : from) {
        Cell to = row.createCell(cell.getColumnIndex());
        if (cell.getCellType() == CellType.NUMERIC) {
          to.setCellValue(cell.getNumericCellValue());
        } else if (cell.getCellType() == CellType.STRING) {
          to.setCellValue(cell.getStringCellValue() + " too");
        }
      }
      List<String> cells = new ArrayList<>();
      row.forEach(cell -> cells.add(row.getSheet().getSheetName() + "!" + cell.getAddress()));
      from.forEach(cell -> cells.add(row.getSheet().getSheetName() + "!"
          + new org.apache.poi.ss.util.CellReference(row.getRowNum(), cell.getColumnIndex())
              .formatAsString()));
      return new Fault.Done(cells.stream().distinct().toList(), true, false).moving(under(row));
    });
  }

  /** Where everything went that stood at the new row or under it. */
  static Moves under(Row row) {
    return Moves.rows(row.getSheet().getSheetName(), row.getRowNum(), 1);
  }

  private static Optional<Fault.Done> copied(OpenBook book, boolean renamed) {
    return planes(book).findFirst().map(plane -> {
      Cell name = book.cell(plane.at());
      int at = name.getRowIndex();
      Row row = insert(name);
      ((XSSFRow) row).copyRowFrom(name.getSheet().getRow(at + 1), new CellCopyPolicy());
      if (renamed) {
        row.getCell(name.getColumnIndex()).setCellValue("Added part");
      }
      String copy = plane.at();
      return new Fault.Done(
              renamed ? List.of(copy) : List.of(copy, OpenBook.moved(copy, 1, 0)), false, false)
          .moving(under(row));
    });
  }

  private static Optional<Fault.Done> rotated(OpenBook book, Meaning... meanings) {
    return book.any(book.all(true, meanings))
        .findFirst()
        .map(book::family)
        .filter(all -> all.size() > 2)
        .filter(all ->
            all.stream().mapToDouble(cell -> book.value(cell.at())).distinct().count() > 1)
        .map(all -> {
          List<Double> values = all.stream().map(cell -> book.value(cell.at())).toList();
          for (int i = 0; i < all.size(); i++) {
            book.type(all.get(i).at(), values.get((i + 1) % values.size()));
          }
          return new Fault.Done(all.stream().map(KnownCell::at).toList(), false, false);
        });
  }

  private static Optional<Fault.Done> hiddenRow(OpenBook book) {
    return book.any(book.all(false, AMOUNT)).findFirst().map(cell -> {
      book.cell(cell.at()).getRow().setZeroHeight(true);
      Row row = book.cell(cell.at()).getRow();
      List<String> cells = new ArrayList<>();
      row.forEach(each -> cells.add(row.getSheet().getSheetName() + "!" + each.getAddress()));
      return new Fault.Done(cells, true, false);
    });
  }

  private static Optional<Fault.Done> hiddenSheet(OpenBook book) {
    return book.made.total().filter(total -> !book.made.own()).map(total -> {
      Sheet sheet = book.book.createSheet("Adj");
      sheet.createRow(0).createCell(0).setCellValue("more");
      sheet.getRow(0).createCell(1).setCellValue(750);
      book.book.setSheetVisibility(book.book.getSheetIndex(sheet), SheetVisibility.VERY_HIDDEN);
      book.formula(total, book.content(total).substring(1) + "+Adj!B1");
      return new Fault.Done(List.of("", "Adj!A1", "Adj!B1", total), true, false);
    });
  }

  /** A list of prices that a person put out of the way. */
  private static Optional<Fault.Done> hiddenList(OpenBook book) {
    return book.all(true, PRICE).stream()
        .map(cell -> cell.at().substring(0, cell.at().lastIndexOf('!')))
        .filter(sheet -> sheet.startsWith("Price"))
        .findFirst()
        .map(sheet -> {
          book.book.setSheetHidden(book.book.getSheetIndex(sheet), true);
          return Fault.Done.at(sheet + "!A1", false);
        });
  }

  private static Optional<Fault.Done> hidingFormat(OpenBook book) {
    return book.any(book.all(false, AMOUNT)).findFirst().map(cell -> {
      CellStyle style = book.book.createCellStyle();
      style.setDataFormat(book.book.createDataFormat().getFormat(";;;"));
      book.cell(cell.at()).setCellStyle(style);
      return Fault.Done.at(cell.at(), true);
    });
  }

  private static Optional<Fault.Done> secondPrice(OpenBook book) {
    return book.any(book.all(true, PRODUCT_NAME).stream()
            .filter(cell -> cell.at().startsWith("Price"))
            .toList())
        .findFirst()
        .filter(cell -> !book.made.own())
        .map(cell -> {
          Sheet sheet = book.cell(cell.at()).getSheet();
          Row row = sheet.createRow(sheet.getLastRowNum() + 1);
          row.createCell(0).setCellValue(book.content(cell.at()));
          row.createCell(2).setCellValue(book.value(OpenBook.moved(cell.at(), 0, 2)) * 1.1);
          String second = sheet.getSheetName() + "!A" + (row.getRowNum() + 1);
          return new Fault.Done(
              List.of(
                  cell.at(), second, OpenBook.moved(cell.at(), 0, 2), OpenBook.moved(second, 0, 2)),
              true,
              false);
        });
  }

  private static Optional<Fault.Done> merged(OpenBook book) {
    return planes(book).findFirst().map(plane -> {
      Cell cell = book.cell(plane.at());
      int row = cell.getRowIndex();
      int column = cell.getColumnIndex() + 1;
      cell.getSheet().addMergedRegion(new CellRangeAddress(row, row + 1, column, column));
      return new Fault.Done(
          List.of(OpenBook.moved(plane.at(), 1, 1), OpenBook.moved(plane.at(), 0, 1)), true, false);
    });
  }

  private static Optional<Fault.Done> edit(OpenBook book, Meaning meaning, double by) {
    return book.any(book.all(true, meaning))
        .findFirst()
        .filter(cell -> !book.made.own() || meaning != EAVE)
        .map(cell -> {
          book.type(cell.at(), Math.round(book.value(cell.at()) * by * 100) / 100.0);
          return Fault.Done.at(cell.at(), false);
        });
  }

  private static Optional<Fault.Done> renamed(OpenBook book) {
    String before = book.book.getSheetName(0);
    String after = "Sheet for the office";
    book.book.setSheetName(0, after);
    return Optional.of(Fault.Done.at(after + "!A1", false).moving(Moves.renamed(before, after)));
  }

  private static Optional<Fault.Done> notes(OpenBook book) {
    return planes(book).findFirst().map(plane -> {
      Row row = book.cell(plane.at()).getRow();
      row.createCell(row.getLastCellNum() + 1).setCellValue("2 broken rafters, see 14 photos");
      return Fault.Done.at(plane.at(), false);
    });
  }

  private static Optional<Fault.Done> footnote(OpenBook book) {
    return book.any(book.all(true, PLANE_NAME)).findFirst().map(plane -> {
      Sheet sheet = book.cell(plane.at()).getSheet();
      sheet.createRow(sheet.getLastRowNum() + 4).createCell(1).setCellValue(1);
      return Fault.Done.at(plane.at(), false);
    });
  }

  private static Optional<Fault.Done> dates(OpenBook book) {
    return planes(book).findFirst().map(plane -> {
      CellStyle style = book.book.createCellStyle();
      style.setDataFormat(book.book.createDataFormat().getFormat("m/d/yyyy"));
      int column = 30;
      for (KnownCell name : book.all(true, PLANE_NAME)) {
        Cell cell = book.cell(name.at()).getRow().createCell(column);
        cell.setCellValue(LocalDate.of(2026, 5, 4));
        cell.setCellStyle(style);
      }
      return Fault.Done.at(plane.at(), false);
    });
  }

  private static Optional<Fault.Done> option(OpenBook book) {
    return book.made.total().map(at -> {
      String under = OpenBook.moved(at, 8, 0);
      book.type(
          OpenBook.moved(under, 0, -book.cell(under).getColumnIndex()),
          "Option, not in the price: copper valley");
      book.type(under, 640);
      return Fault.Done.at(at, false);
    });
  }

  private static Optional<Fault.Done> headline(OpenBook book) {
    return book.made.total().filter(at -> !book.all(false, TOTAL).isEmpty()).map(at -> {
      String under = OpenBook.moved(at, 9, 0);
      book.type(OpenBook.moved(under, 0, -book.cell(under).getColumnIndex()), "We say");
      book.formula(under, "ROUND(" + at.substring(at.lastIndexOf('!') + 1) + ",-2)");
      return Fault.Done.at(at, false);
    });
  }
}
