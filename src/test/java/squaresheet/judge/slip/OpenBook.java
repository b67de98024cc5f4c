package squaresheet.judge.slip;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.judge.made.KnownCell;
import squaresheet.judge.made.MadeBook;
import squaresheet.judge.made.Meaning;

/** A made workbook, open in another program's library so that a fault can be put in and the rest follows as it would there. */
final class OpenBook implements AutoCloseable {

  final MadeBook made;
  final XSSFWorkbook book;
  final Random random;

  OpenBook(MadeBook made, byte[] file, Random random) {
    this.made = made;
    this.random = random;
    try {
      this.book = new XSSFWorkbook(new ByteArrayInputStream(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The cell at an address such as {@code Roof!C5}; made if it is not there. */
  Cell cell(String at) {
    int mark = at.lastIndexOf('!');
    CellReference ref = new CellReference(at.substring(mark + 1));
    Sheet sheet = book.getSheet(at.substring(0, mark));
    Row row = sheet.getRow(ref.getRow()) == null
        ? sheet.createRow(ref.getRow())
        : sheet.getRow(ref.getRow());
    return row.getCell(ref.getCol(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }

  /** The same cell of another row or column. */
  static String moved(String at, int rows, int columns) {
    int mark = at.lastIndexOf('!');
    CellReference ref = new CellReference(at.substring(mark + 1));
    return at.substring(0, mark + 1)
        + new CellReference(ref.getRow() + rows, ref.getCol() + columns).formatAsString();
  }

  /** What stands in a cell, as a slip's record spells it: a formula with its equals sign, a number, a text. */
  String content(String at) {
    Cell cell = cell(at);
    return switch (cell.getCellType()) {
      case FORMULA -> "=" + cell.getCellFormula();
      case NUMERIC -> number(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> String.valueOf(cell.getBooleanCellValue());
      default -> "";
    };
  }

  static String number(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }

  /** Puts a number in the place of whatever is there; the format stays. */
  void type(String at, double value) {
    Cell cell = cell(at);
    clearFormula(cell);
    cell.setCellValue(value);
  }

  /** Puts a text in the place of whatever is there. */
  void type(String at, String text) {
    Cell cell = cell(at);
    clearFormula(cell);
    cell.setCellValue(text);
  }

  private static void clearFormula(Cell cell) {
    if (cell.getCellType() == CellType.FORMULA) {
      cell.removeFormula();
    }
  }

  /** Puts a formula, without its equals sign, in the place of whatever is there. */
  void formula(String at, String formula) {
    cell(at).setCellFormula(formula);
  }

  /** The number a cell shows, 0 where it shows none. */
  double value(String at) {
    Cell cell = cell(at);
    CellType type = cell.getCellType() == CellType.FORMULA
        ? cell.getCachedFormulaResultType()
        : cell.getCellType();
    return type == CellType.NUMERIC ? cell.getNumericCellValue() : 0;
  }

  /** Saves with the values as they stand. */
  byte[] bytes() {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      book.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every number shown, by address, so that two states can be compared. */
  Map<String, Double> shown() {
    Map<String, Double> shown = new TreeMap<>();
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          CellType type = cell.getCellType() == CellType.FORMULA
              ? cell.getCachedFormulaResultType()
              : cell.getCellType();
          if (type == CellType.NUMERIC) {
            shown.put(sheet.getSheetName() + "!" + cell.getAddress(), cell.getNumericCellValue());
          }
        }
      }
    }
    return shown;
  }

  /** The cells of one meaning that a person typed, or that hold formulas. */
  List<KnownCell> all(boolean typed, Meaning... meanings) {
    return made.cells().stream()
        .filter(cell -> cell.typed() == typed && List.of(meanings).contains(cell.meaning()))
        .toList();
  }

  /** The cells of the family that a cell belongs to. */
  List<KnownCell> family(KnownCell cell) {
    return cell.run().isEmpty()
        ? List.of(cell)
        : made.cells().stream().filter(each -> each.run().equals(cell.run())).toList();
  }

  /** One of several, or nothing. */
  <T> Stream<T> any(List<T> list) {
    return list.isEmpty() ? Stream.empty() : Stream.of(list.get(random.nextInt(list.size())));
  }

  @Override
  public void close() {
    try {
      book.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
