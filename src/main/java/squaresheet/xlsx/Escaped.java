package squaresheet.xlsx;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Characters that the file cannot hold as they are: written {@code _x0007_}, as ECMA-376 Part 1, 22.9.2.19 has it. */
final class Escaped {

  private static final Pattern CODE = Pattern.compile("_x([0-9A-Fa-f]{4})_");
  private static final Pattern TO_ESCAPE =
      Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)|[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uFFFF]|\r");

  private Escaped() {}

  static String decode(String text) {
    if (text.indexOf("_x") < 0) {
      return text;
    }
    return CODE.matcher(text)
        .replaceAll(code ->
            Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(code.group(1), 16))));
  }

  static String encode(String text) {
    Matcher found = TO_ESCAPE.matcher(text);
    return found.find()
        ? found.replaceAll(it -> String.format("_x%04X_", (int) it.group().charAt(0)))
        : text;
  }
}
