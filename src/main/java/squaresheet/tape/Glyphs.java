package squaresheet.tape;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Turns the many characters that people and programs use for one mark into that one mark. */
final class Glyphs {

  private static final Pattern FRACTION_AFTER_WHOLE = Pattern.compile(
      "(?<=[0-9])(?=[\u00B9\u00B2\u00B3\u2070-\u2079\u00BC-\u00BE\u2150-\u215F\u2189])");
  private static final Pattern DEGREE = Pattern.compile("[\u00BA\u02DA]");
  private static final Pattern SINGLE =
      Pattern.compile("[\u2018\u2019\u201A\u201B\u2032\u2035\u02B9\u02BC\u02C8\u00B4`]");
  private static final Pattern DOUBLE =
      Pattern.compile("[\u201C\u201D\u201E\u201F\u2033\u2036\u02BA\u02DD\u3003]|''");
  private static final Pattern DASH = Pattern.compile("[\u2010-\u2015\u2212\uFE58\uFE63\uFF0D]");
  private static final Pattern SLASH = Pattern.compile("[\u2044\u2215]");
  private static final Pattern INVISIBLE = Pattern.compile("[\u200B-\u200F\u2060\uFEFF\u00AD]");
  private static final Pattern SPACE = Pattern.compile("[\\s\\h]+");

  private Glyphs() {}

  /** The text in lower-case ASCII as far as it goes, with single spaces; a vulgar fraction becomes {@code 1/2}. */
  static String plain(String text) {
    String marks = SINGLE
        .matcher(DEGREE.matcher(INVISIBLE.matcher(text).replaceAll("")).replaceAll("\u00B0"))
        .replaceAll("'");
    marks = DOUBLE.matcher(marks).replaceAll("\"");
    marks = FRACTION_AFTER_WHOLE.matcher(marks).replaceAll(" ");
    marks = Normalizer.normalize(marks, Normalizer.Form.NFKC);
    marks = SLASH.matcher(DASH.matcher(marks).replaceAll("-")).replaceAll("/");
    return SPACE.matcher(marks).replaceAll(" ").strip().toLowerCase(Locale.ROOT);
  }
}
