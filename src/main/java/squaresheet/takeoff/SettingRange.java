package squaresheet.takeoff;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import squaresheet.formula.Value;

/**
 * What a number typed for a setting can be; anything else is a slip. The ranges stand in one table, {@code
 * setting-ranges.csv}, which the field sheet, the library, the job workbook and the verify pass all read.
 *
 * @param unit what the limits are in, as people write it; empty for a plain ratio
 * @param least the least, included
 * @param most the most, included
 * @param isWhole whether it must be a whole number
 * @param isZeroToo whether 0, below the least, stands for what is usual
 * @param notOver the setting that it must not be over; empty where there is none
 * @param source a key of the published sources, or {@code common practice}
 */
public record SettingRange(
    String unit,
    double least,
    double most,
    boolean isWhole,
    boolean isZeroToo,
    String notOver,
    String source) {

  private static final String TABLE = "setting-ranges.csv";

  /** Of the larger of a limit and 1: what turning millimetres into inches and back leaves, and no more. */
  private static final double SAME = 1e-9;

  private static final class All {
    static final Map<String, SettingRange> BY_NAME = load();

    private static Map<String, SettingRange> load() {
      Map<String, SettingRange> ranges = new LinkedHashMap<>();
      try (CsvReader<NamedCsvRecord> lines = CsvReader.builder()
          .commentStrategy(CommentStrategy.SKIP)
          .ofNamedCsvRecord(new InputStreamReader(
              SettingRange.class.getResourceAsStream(TABLE), StandardCharsets.UTF_8))) {
        lines.forEach(line -> ranges.put(line.getField("setting"), of(line)));
      } catch (IOException unreadable) {
        throw new UncheckedIOException(unreadable);
      }
      return ranges;
    }

    private static SettingRange of(NamedCsvRecord line) {
      String unit = line.getField("unit");
      return new SettingRange(
          unit.equals("ratio") ? "" : unit,
          Double.parseDouble(line.getField("least")),
          Double.parseDouble(line.getField("most")),
          line.getField("whole").equals("yes"),
          line.getField("zero").equals("yes"),
          line.getField("not_over"),
          line.getField("source"));
    }
  }

  /** The range of a setting, by its name; empty where it may be any number. */
  public static Optional<SettingRange> of(String setting) {
    return Optional.ofNullable(All.BY_NAME.get(setting));
  }

  /** All ranges, by the name of the setting, in the order of the table. */
  public static Map<String, SettingRange> all() {
    return java.util.Collections.unmodifiableMap(All.BY_NAME);
  }

  /** The same for numbers in another unit, of which so many make one of this. */
  public SettingRange in(String other, double each) {
    return new SettingRange(other, least * each, most * each, isWhole, isZeroToo, notOver, source);
  }

  /** Whether a number can be meant. */
  public boolean holds(double number) {
    boolean within = number >= least - same(least) && number <= most + same(most);
    boolean whole = !isWhole || Math.abs(number - Math.rint(number)) <= SAME;
    return (isZeroToo && number == 0) || (within && whole);
  }

  private static double same(double limit) {
    return SAME * Math.abs(limit);
  }

  /** A number that can be meant, as everything reads it: whole where it must be. */
  double exactly(double number) {
    return isWhole ? Math.rint(number) : number;
  }

  /** What it must be, in words: {@code a whole number from 1 to 20 (course)}. */
  public String mustBe() {
    return (isZeroToo ? "0, or " : "")
        + (isWhole ? "a whole number from " : "from ")
        + number(least) + " to " + number(most)
        + (unit.isEmpty() ? "" : isWhole ? " (" + unit + ")" : " " + unit);
  }

  private static String number(double limit) {
    return Shown.plain(Value.of(limit));
  }
}
