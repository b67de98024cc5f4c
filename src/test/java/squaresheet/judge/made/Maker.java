package squaresheet.judge.made;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Somebody's workbook in the making, in another program's own writer; keeps what is known of every cell that it is told of. */
final class Maker {

  final XSSFWorkbook book = new XSSFWorkbook();
  final List<KnownCell> cells = new ArrayList<>();
  final List<String> orders = new ArrayList<>();
  final Words words;
  final Random random;
  final Roof roof;
  Optional<String> total = Optional.empty();

  Maker(Roof roof, Words words, Random random) {
    this.roof = roof;
    this.words = words;
    this.random = random;
  }

  /** A new tab. */
  Tab tab(String name) {
    return new Tab(book.createSheet(name));
  }

  /** The workbook, calculated by the library that wrote it. */
  MadeBook made(String name, String layout, boolean unseen) {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      book.write(out);
      book.close();
      cells.sort(Comparator.comparingInt(this::order));
      return new MadeBook(
          name,
          layout,
          false,
          unseen,
          Calculator.LIBRARY.calculated(List.of(out.toByteArray())).get(0),
          cells,
          total,
          orders);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private int order(KnownCell cell) {
    int mark = cell.at().lastIndexOf('!');
    CellReference at = new CellReference(cell.at().substring(mark + 1));
    return book.getSheetIndex(cell.at().substring(0, mark)) * 10_000_000
        + at.getRow() * 1000
        + at.getCol();
  }

  /** One tab of the workbook. Rows and columns count from 0, as the library does; addresses come out as people read them. */
  final class Tab {

    final Sheet sheet;
    /** The next row that is free. */
    int next;

    private Tab(Sheet sheet) {
      this.sheet = sheet;
    }

    String name() {
      return sheet.getSheetName();
    }

    private Cell cell(int row, int column) {
      Row there = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
      next = Math.max(next, row + 1);
      return there.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    }

    /** The cell's address on its own tab, such as {@code C5}. */
    static String at(int row, int column) {
      return new CellReference(row, column).formatAsString();
    }

    /** The cell's address from another tab. */
    String far(int row, int column) {
      return "'" + name() + "'!" + new CellReference(row, column, true, true).formatAsString();
    }

    /** A heading, a label or a note. */
    Tab text(int row, int column, String text) {
      cell(row, column).setCellValue(text);
      return this;
    }

    /** Headings side by side. */
    Tab headings(int row, int column, List<String> texts) {
      for (int i = 0; i < texts.size(); i++) {
        if (!texts.get(i).isEmpty()) {
          text(row, column + i, texts.get(i));
        }
      }
      return this;
    }

    /** A typed number. */
    String typed(int row, int column, double value, String format, Known known) {
      Cell cell = cell(row, column);
      cell.setCellValue(value);
      style(cell, format);
      return know(row, column, known, true);
    }

    /** A typed word that something depends on. */
    String word(int row, int column, String text, Known known) {
      cell(row, column).setCellValue(text);
      return know(row, column, known, true);
    }

    /** A formula, without its equals sign. */
    String formula(int row, int column, String formula, String format, Known known) {
      Cell cell = cell(row, column);
      cell.setCellFormula(formula);
      style(cell, format);
      return know(row, column, known, false);
    }

    private String know(int row, int column, Known known, boolean typed) {
      cells.add(new KnownCell(
          name() + "!" + at(row, column),
          known.meaning,
          known.item,
          known.unit,
          typed,
          known.run.isEmpty() ? "" : name() + ": " + known.run,
          known.witnesses));
      return at(row, column);
    }

    private void style(Cell cell, String format) {
      if (!format.isEmpty()) {
        CellStyle style = book.createCellStyle();
        style.setDataFormat(book.createDataFormat().getFormat(format));
        cell.setCellStyle(style);
      }
    }

    /** Names the order cell of a product. */
    void order(int row, int column) {
      orders.add(name() + "!" + at(row, column));
    }

    /** Names the cell with the price of the job. */
    void total(int row, int column) {
      total = Optional.of(name() + "!" + at(row, column));
    }
  }

  /**
   * What is known of a cell, without its place.
   *
   * @param meaning what it stands for
   * @param item whose it is
   * @param unit its unit
   * @param run the family it belongs to
   * @param witnesses what contradicts a wrong value in it
   */
  record Known(Meaning meaning, String item, String unit, String run, List<String> witnesses) {

    static Known of(Meaning meaning, String item, String unit) {
      return new Known(meaning, item, unit, "", List.of());
    }

    Known in(String family) {
      return new Known(meaning, item, unit, family, witnesses);
    }

    Known seenBy(String... cells) {
      return new Known(meaning, item, unit, run, List.of(cells));
    }
  }
}
