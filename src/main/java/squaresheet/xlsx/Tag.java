package squaresheet.xlsx;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.sheet.Content;

/** A start tag as the part spells it. Changing one attribute leaves the others as they are written. */
final class Tag {

  private static final Pattern ATTRIBUTE =
      Pattern.compile("\\s+([^\\s=/<>]+)\\s*=\\s*(\"[^\"]*\"|'[^']*')");
  private static final Pattern END = Pattern.compile("\\s*/?>\\s*$");

  private Tag() {}

  /** The tag with the attribute set; a new one goes behind the others. */
  static String with(String tag, String name, String value) {
    String spelled = " " + name + "=\"" + escaped(value) + "\"";
    Matcher attribute = ATTRIBUTE.matcher(tag);
    while (attribute.find()) {
      if (attribute.group(1).equals(name)) {
        return tag.substring(0, attribute.start()) + spelled + tag.substring(attribute.end());
      }
    }
    Matcher end = END.matcher(tag);
    int at = end.find() ? end.start() : tag.length() - 1;
    return tag.substring(0, at) + spelled + tag.substring(at);
  }

  /** The tag without the attribute. */
  static String without(String tag, String name) {
    Matcher attribute = ATTRIBUTE.matcher(tag);
    while (attribute.find()) {
      if (attribute.group(1).equals(name)) {
        return tag.substring(0, attribute.start()) + tag.substring(attribute.end());
      }
    }
    return tag;
  }

  /** The tag opened, where it was closed in itself. */
  static String opened(String tag) {
    return tag.replaceFirst("\\s*/>\\s*$", ">");
  }

  /** The end tag that belongs to it. */
  static String closing(String tag) {
    Matcher name = Pattern.compile("<([^\\s/>]+)").matcher(tag);
    return name.find() ? "</" + name.group(1) + ">" : "";
  }

  private static String escaped(String value) {
    return Content.spelled(value)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace("\"", "&quot;")
        .replace("\n", "&#10;")
        .replace("\t", "&#9;");
  }
}
