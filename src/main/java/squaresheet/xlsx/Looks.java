package squaresheet.xlsx;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import squaresheet.sheet.Role;

/** How each role looks: told apart by border, weight, slant and pattern; grounds are light enough to print. */
final class Looks {

  private record Key(Role role, String format) {}

  private final XSSFWorkbook workbook;
  private final Map<Key, XSSFCellStyle> made = new HashMap<>();
  private final Map<String, XSSFFont> fonts = new HashMap<>();

  Looks(XSSFWorkbook workbook) {
    this.workbook = workbook;
    workbook.getFontAt(0).setFontName("Arial");
    workbook.getFontAt(0).setFontHeightInPoints((short) 10);
  }

  XSSFCellStyle of(Role role, String format) {
    return made.computeIfAbsent(new Key(role, format), key -> make(role, format));
  }

  private XSSFCellStyle make(Role role, String format) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setVerticalAlignment(VerticalAlignment.TOP);
    if (!format.equals("General")) {
      style.setDataFormat(workbook.createDataFormat().getFormat(format));
    }
    dress(style, role);
    return style;
  }

  private void dress(XSSFCellStyle style, Role role) {
    switch (role) {
      case TITLE -> style.setFont(font(true, false, 16));
      case HEADING -> heading(style);
      case UNIT -> {
        style.setFont(font(false, true, 9));
        apart(style);
      }
      case INPUT -> {
        frame(style, BorderStyle.THIN);
        ground(style, "FFF8DC");
      }
      case COMPUTED -> frame(style, BorderStyle.DOTTED);
      case TOTAL -> total(style);
      case NOTE -> {
        style.setFont(font(false, true, 10));
        style.setWrapText(true);
        apart(style);
      }
      case CAUTION -> caution(style);
      case FLAG -> flag(style);
      case PLAIN, LABEL -> style.setFont(workbook.getFontAt(0));
    }
  }

  /** Words keep off the number in the cell on their left. */
  private static void apart(XSSFCellStyle style) {
    style.setAlignment(HorizontalAlignment.LEFT);
    style.setIndention((short) 1);
  }

  private void total(XSSFCellStyle style) {
    style.setFont(font(true, false, 10));
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.DOUBLE);
  }

  private void caution(XSSFCellStyle style) {
    style.setFont(font(true, false, 10));
    style.setWrapText(true);
    frame(style, BorderStyle.MEDIUM);
  }

  private void heading(XSSFCellStyle style) {
    style.setFont(font(true, false, 10));
    style.setWrapText(true);
    style.setAlignment(HorizontalAlignment.CENTER);
    style.setVerticalAlignment(VerticalAlignment.BOTTOM);
    style.setBorderBottom(BorderStyle.MEDIUM);
    ground(style, "E7E6E6");
  }

  private void flag(XSSFCellStyle style) {
    style.setFont(font(true, false, 10));
    frame(style, BorderStyle.MEDIUM_DASHED);
    style.setFillForegroundColor(colour("808080"));
    style.setFillBackgroundColor(colour("FFFFFF"));
    style.setFillPattern(FillPatternType.LESS_DOTS);
  }

  private static void frame(XSSFCellStyle style, BorderStyle line) {
    style.setBorderTop(line);
    style.setBorderBottom(line);
    style.setBorderLeft(line);
    style.setBorderRight(line);
  }

  private static void ground(XSSFCellStyle style, String rgb) {
    style.setFillForegroundColor(colour(rgb));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private static XSSFColor colour(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    return new XSSFColor(
        new byte[] {(byte) 0xFF, (byte) (value >> 16), (byte) (value >> 8), (byte) value});
  }

  private XSSFFont font(boolean bold, boolean italic, int points) {
    return fonts.computeIfAbsent(bold + "/" + italic + "/" + points, key -> {
      XSSFFont font = workbook.createFont();
      font.setFontName("Arial");
      font.setBold(bold);
      font.setItalic(italic);
      font.setFontHeightInPoints((short) points);
      return font;
    });
  }
}
