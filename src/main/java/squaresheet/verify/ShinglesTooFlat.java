package squaresheet.verify;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import squaresheet.finding.Check;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Address;

/** Does a table lay shingles on a plane below 2:12? */
final class ShinglesTooFlat implements Check<Table> {

  private static final CheckInfo INFO = new CheckInfo(
      "shingles-too-flat", Severity.WARNING, "Shingles are laid on a plane below 2:12");

  private static final Pattern SYSTEM = Pattern.compile(
      "(?<!\\p{L})(system|covering|material|product|roofing|type)(?!\\p{L})",
      Pattern.CASE_INSENSITIVE);
  private static final Pattern SHINGLES = Pattern.compile(
      "(?<!\\p{L})(shingles?|laminated|3-tab|three-tab)(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  /** IRC R905.2.2: asphalt shingles only on slopes of 2:12 or greater. */
  private static final double LEAST = 2;

  @Override
  public CheckInfo info() {
    return INFO;
  }

  @Override
  public Stream<Finding> examine(Table table) {
    Optional<Integer> pitch = table.property(Words::isPitch);
    Optional<Integer> system = table.property(heading -> SYSTEM.matcher(heading).find());
    return pitch.isPresent() && system.isPresent()
        ? table
            .items()
            .filter(along -> isTooFlat(table, along, pitch.get(), system.get()))
            .mapToObj(along -> says(table, along, pitch.get(), system.get()))
        : Stream.empty();
  }

  private static boolean isTooFlat(Table table, int along, int pitch, int system) {
    String covering = table.tab().text(table.ref(along, system));
    boolean typed = !table.tab().cell(table.ref(along, pitch)).isBlank();
    return typed
        && RoundedPitch.rise(table, along, pitch).orElse(LEAST) < LEAST
        && SHINGLES.matcher(covering).find()
        && !Words.saysOutside(table.tab().wordsAbout(table.ref(along, system)))
        && isPitchPerTwelve(table, pitch);
  }

  /** Whether the column holds rises per 12: ratios and degrees are the question of other checks. */
  private static boolean isPitchPerTwelve(Table table, int pitch) {
    return IntStream.rangeClosed(table.first(), table.last())
        .anyMatch(along -> table.number(along, pitch).orElse(0) >= LEAST);
  }

  private static Finding says(Table table, int along, int pitch, int system) {
    Address at = table.at(along, system);
    String says = "lays shingles at " + Shown.of(table.tab().book().value(table.at(along, pitch)))
        + ":12; asphalt shingles are not laid below 2:12 (IRC R905.2.2): check the pitch, or choose a"
        + " covering for low slopes";
    return Says.about(INFO, table.tab().book(), at, says);
  }
}
