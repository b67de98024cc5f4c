package squaresheet.xlsx;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import org.codehaus.stax2.XMLStreamReader2;
import squaresheet.sheet.Address;
import squaresheet.sheet.Content;
import squaresheet.sheet.Ref;
import squaresheet.sheet.SheetBuilder;

/** Reads the rows and cells of a sheet part: the loop that a large file spends its time in. */
final class CellReader {

  /** Bytes a cell takes in a sheet, and its formula beside it. */
  private static final int CELL = 16;

  private static final int FORMULA = 16;

  /**
   * What the workbook knows and its cells only refer to.
   *
   * @param styles number formats by style
   * @param texts the shared texts
   * @param date1904 which day is day 0
   */
  record Known(Styles styles, List<String> texts, boolean date1904) {}

  private final Xml xml;
  private final XMLStreamReader2 reader;
  private final SheetBuilder to;
  private final String sheet;
  private final Styles styles;
  private final List<String> texts;
  private final Remarks remarks;
  private final Budget budget;
  private final FormulaReader formulas;
  private final boolean date1904;
  private short[] formats = new short[0];

  private int row = -1;
  private int column = -1;
  private int style;
  private char type;
  private String value = "";
  /** The characters of a number; longer than any that a program writes. */
  private final char[] digits = new char[400];

  private int length;
  private double number;
  private boolean isPlaced;

  CellReader(Xml xml, SheetBuilder to, String sheet, Known known, Remarks remarks, Budget budget) {
    this.xml = xml;
    this.reader = xml.reader();
    this.to = to;
    this.sheet = sheet;
    this.styles = known.styles();
    this.texts = known.texts();
    this.date1904 = known.date1904();
    this.remarks = remarks;
    this.budget = budget;
    formulas = new FormulaReader(xml, to, remarks, sheet);
  }

  /** Reads all rows; the part stands at the start of {@code sheetData}, and past its end afterwards. */
  void read() throws IOException {
    int data = xml.depth();
    while (xml.child(data)) {
      if (xml.name().equals("row")) {
        startRow();
        refuseBelowTheSheet();
        int open = xml.depth();
        while (xml.child(open)) {
          if (xml.name().equals("c")) {
            cell();
          }
        }
      }
    }
    formulas.finish();
  }

  private void refuseBelowTheSheet() {
    if (row >= CellPlace.ROWS) {
      throw new Refusal("has more than " + CellPlace.ROWS + " rows, and those below were left out");
    }
  }

  private void startRow() {
    row++;
    column = -1;
    int stated = xml.number("r", row + 1);
    if (stated >= 1 && stated <= CellPlace.ROWS) {
      row = stated - 1;
    }
    if (row < CellPlace.ROWS && xml.flag("hidden", false)) {
      to.hiddenRow(row);
    }
  }

  private void cell() throws IOException {
    attributes();
    value = "";
    number = Double.NaN;
    length = 0;
    formulas.startCell(row, column);
    int open = xml.depth();
    while (xml.child(open)) {
      child(xml.name());
    }
    if (isPlaced) {
      put();
    }
  }

  private void attributes() {
    column++;
    style = 0;
    type = 'n';
    isPlaced = column < CellPlace.COLUMNS && row < CellPlace.ROWS;
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String name = reader.getAttributeLocalName(i);
      if (name.length() == 1) {
        attribute(name.charAt(0), reader.getAttributeValue(i));
      }
    }
  }

  private void attribute(char name, String text) {
    if (name == 'r') {
      place(text);
    } else if (name == 's') {
      style = index(text);
    } else if (name == 't') {
      // n, b, e, s, d as they are; str becomes t, inlineStr becomes i
      type = text.equals("str") ? 't' : text.isEmpty() ? 'n' : text.charAt(0);
    }
  }

  private void place(String text) {
    long packed = CellPlace.packed(text);
    if (packed >= 0) {
      row = (int) (packed >>> 14);
      column = (int) (packed & CellPlace.COLUMNS - 1);
      isPlaced = true;
    } else {
      isPlaced = false;
      remarks.add(
          Complaint.PARTLY_READ,
          "sheet '" + sheet + "' has a cell at '" + Excerpt.of(text)
              + "', but cells must lie in A1 to XFD1048576; it was left out");
    }
  }

  private static int index(String text) {
    int index = 0;
    for (int i = 0; i < text.length() && index < 1 << 20; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return 0;
      }
      index = index * 10 + digit;
    }
    return index;
  }

  private void child(String name) throws IOException {
    if (name.equals("v")) {
      value();
    } else if (name.equals("f")) {
      formulas.read();
    } else if (name.equals("is")) {
      value = RichText.read(xml);
    }
  }

  private void value() throws IOException {
    if (type != 'n' && type != 's') {
      value = xml.text();
      return;
    }
    int inside = xml.depth();
    length = 0;
    while (xml.depth() >= inside) {
      int event = xml.next();
      if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
        take();
      }
    }
    number = Digits.parse(digits, 0, length);
  }

  private void take() throws IOException {
    int more = Math.min(xml.pieceLength(), digits.length - length);
    System.arraycopy(xml.pieceFrom(), xml.pieceStart(), digits, length, more);
    length += more;
  }

  private void put() {
    boolean formula = formulas.hasFormula();
    short format = format();
    switch (type) {
      case 'n' -> number(format, formula);
      case 's' -> shared(format);
      case 'b' -> truth(format);
      case 'e' -> text(value, format, formula, true);
      case 'd' -> day(format);
      case 'i' -> text(value, format, formula, false);
      default -> text(Content.unspelled(value), format, formula, false);
    }
    if (formula) {
      budget.spend(FORMULA + formulas.length());
      to.formula(row, column, formulas.text());
      if (styles.hidesFormulas(style)) {
        to.hiddenFormula(row, column);
      }
    }
  }

  private short format() {
    if (style >= formats.length) {
      int known = formats.length;
      formats = Arrays.copyOf(formats, Math.max(style + 1, Math.min(styles.size(), 1 << 16)));
      for (int i = known; i < formats.length; i++) {
        formats[i] = to.format(styles.format(i));
      }
    }
    return formats[style];
  }

  private void number(short format, boolean formula) {
    if (!Double.isNaN(number) && !Double.isInfinite(number)) {
      budget.spend(CELL);
      to.number(row, column, format, number);
    } else if (length > 0) {
      wrong("must be a number, but reads '" + Excerpt.of(new String(digits, 0, length)) + "'");
      text(new String(digits, 0, length), format, formula, false);
    } else if (formula || format != 0) {
      budget.spend(CELL);
      to.blank(row, column, format);
    }
  }

  private void shared(short format) {
    if (number >= 0 && number < texts.size() && number == Math.rint(number)) {
      budget.spend(CELL);
      to.sharedText(row, column, format, (int) number);
    } else if (length > 0) {
      wrong("asks for text number '" + Excerpt.of(new String(digits, 0, length))
          + "', but the workbook has " + texts.size() + "; it was left out");
    }
  }

  private void truth(short format) {
    budget.spend(CELL);
    to.truth(row, column, format, value.strip().equals("1") || value.strip().equals("true"));
  }

  private void day(short format) {
    double serial = IsoDay.serial(value.strip(), date1904);
    if (Double.isNaN(serial)) {
      text(value, format, false, false);
    } else {
      budget.spend(CELL);
      short shown = format == 0 ? to.format("yyyy-mm-dd") : format;
      to.number(row, column, shown, serial);
    }
  }

  private void text(String text, short format, boolean formula, boolean fault) {
    if (text.isEmpty() && !formula && format == 0) {
      return;
    }
    budget.spend(CELL + 2L * text.length());
    if (fault) {
      to.fault(row, column, format, text);
    } else if (text.isEmpty() && !formula) {
      to.blank(row, column, format);
    } else {
      to.text(row, column, format, text);
    }
  }

  private void wrong(String says) {
    remarks.add(
        Complaint.PARTLY_READ,
        new Address(sheet, new Ref(row, column)),
        "the cell's value " + says);
  }
}
