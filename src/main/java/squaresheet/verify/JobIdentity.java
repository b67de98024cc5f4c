package squaresheet.verify;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What tells a job from others: its name and its number, whatever the size of their letters and the spaces between.
 *
 * @param name what it is called; the file's name where nobody says
 * @param number its number, or empty
 */
record JobIdentity(String name, String number) {

  /** A name that programs give a copy of a file. */
  private static final Pattern COPY = Pattern.compile(
      "(?i)(copy( \\(\\d+\\))? of )*(?<name>.+?)( - copy)?( ?\\(\\d+\\))*(\\.[^.]+)?");

  /** What a workbook says of itself; where it does not say a name, it goes by its file's, however often copied. */
  static JobIdentity of(String name, String number, String file) {
    Matcher copy = COPY.matcher(file);
    String called = copy.matches() ? copy.group("name") : file;
    return new JobIdentity(name.isBlank() ? called : name.strip(), number.strip());
  }

  private String plain() {
    return toString().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof JobIdentity identity && identity.plain().equals(plain());
  }

  @Override
  public int hashCode() {
    return plain().hashCode();
  }

  @Override
  public String toString() {
    return number.isEmpty() ? name : name + ", " + number;
  }
}
