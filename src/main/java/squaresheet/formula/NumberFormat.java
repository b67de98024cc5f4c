package squaresheet.formula;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The number formats that TEXT takes; one that is not among them is not checked. */
final class NumberFormat {

  private static final Pattern DECIMAL = Pattern.compile(
      "((?:\"[^\"]*\"|[$ ])*)(#,##)?([#0]+)(?:\\.([0#]+))?(%?)((?:\"[^\"]*\"|[ ])*)");
  private static final Pattern DATE_PART =
      Pattern.compile("y{2,4}|m{1,4}|d{1,4}|[-/., ]|\"[^\"]*\"");

  private NumberFormat() {}

  static String write(double number, String format, DateSystem dates) {
    if (format.isEmpty()) {
      return "";
    }
    if (format.equalsIgnoreCase("General") || format.equals("@")) {
      return Coercion.general(number);
    }
    String[] sections = format.split(";");
    boolean second = number < 0 && sections.length > 1;
    String section = number == 0 && sections.length > 2 ? sections[2] : sections[second ? 1 : 0];
    Matcher decimal = DECIMAL.matcher(section);
    if (decimal.matches()) {
      return decimal(second ? -number : number, decimal);
    }
    if (section.toLowerCase(Locale.ROOT).matches("[ymd\\-/., ]+|.*\".*")
        && !section.contains("0")) {
      return date(number, section, dates);
    }
    throw Signal.notChecked("number format '" + format + "' is not followed");
  }

  private static String decimal(double number, Matcher parts) {
    String decimals = parts.group(4) == null ? "" : parts.group(4);
    boolean percent = !parts.group(5).isEmpty();
    double scaled = percent ? number * 100 : number;
    double rounded = Roundings.nearest(scaled, decimals.length());
    if (rounded == 0 && number < 0) {
      throw Signal.notChecked("whether a rounded zero keeps its minus differs between programs");
    }
    int least = (int) decimals.chars().filter(c -> c == '0').count();
    BigDecimal shown = new BigDecimal(Double.toString(rounded)).stripTrailingZeros();
    shown = shown.setScale(Math.max(least, shown.scale()));
    String digits = digits(shown.abs(), parts);
    String sign = rounded < 0 ? "-" : "";
    return sign + bare(parts.group(1)) + digits + parts.group(5) + bare(parts.group(6));
  }

  private static String digits(BigDecimal number, Matcher parts) {
    String plain = number.toPlainString();
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    String rest = point < 0 ? "" : plain.substring(point);
    int least = (int) parts.group(3).chars().filter(c -> c == '0').count();
    if (least == 0 && whole.equals("0")) {
      whole = "";
    }
    whole = "0".repeat(Math.max(0, least - whole.length())) + whole;
    boolean pointAlone = rest.isEmpty() && parts.group(4) != null;
    return (parts.group(2) == null ? whole : grouped(whole)) + rest + (pointAlone ? "." : "");
  }

  private static String grouped(String whole) {
    return whole.replaceAll("(?<=\\d)(?=(\\d{3})+$)", ",");
  }

  private static String bare(String quoted) {
    return quoted.replace("\"", "");
  }

  private static String date(double number, String format, DateSystem dates) {
    if (dates == DateSystem.FROM_1900 ? number < DateSystem.LEAP_BUG + 1 : number < 0) {
      throw Signal.notChecked("programs number days before March 1900 differently");
    }
    LocalDate day = dates.day(number);
    StringBuilder out = new StringBuilder();
    Matcher parts = DATE_PART.matcher(format.toLowerCase(Locale.ROOT));
    int end = 0;
    while (parts.find() && parts.start() == end) {
      out.append(part(parts.group(), day, format.substring(parts.start(), parts.end())));
      end = parts.end();
    }
    if (end < format.length()) {
      throw Signal.notChecked("number format '" + format + "' is not followed");
    }
    return out.toString();
  }

  private static String part(String part, LocalDate day, String written) {
    String month = day.getMonth().getDisplayName(java.time.format.TextStyle.FULL, Locale.ENGLISH);
    String week =
        day.getDayOfWeek().getDisplayName(java.time.format.TextStyle.FULL, Locale.ENGLISH);
    return switch (part) {
      case "yyyy", "yyy" -> String.format(Locale.ROOT, "%04d", day.getYear());
      case "yy" -> String.format(Locale.ROOT, "%02d", day.getYear() % 100);
      case "mmmm" -> month;
      case "mmm" -> month.substring(0, 3);
      case "mm" -> String.format(Locale.ROOT, "%02d", day.getMonthValue());
      case "m" -> String.valueOf(day.getMonthValue());
      case "dddd" -> week;
      case "ddd" -> week.substring(0, 3);
      case "dd" -> String.format(Locale.ROOT, "%02d", day.getDayOfMonth());
      case "d" -> String.valueOf(day.getDayOfMonth());
      default -> bare(written);
    };
  }
}
