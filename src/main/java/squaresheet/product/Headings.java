package squaresheet.product;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The headings of a catalogue: each column, with the unit that its heading gives. */
final class Headings {

  private static final List<String> LENGTH = List.of("in", "ft", "mm", "cm", "m");
  private static final List<String> WEIGHT = List.of("lb", "kg");
  private static final List<String> PLAIN = List.of("");

  /** Every column, with the units its heading may give; the first is the one that is written. */
  private static final Map<String, List<String>> COLUMNS = new LinkedHashMap<>();

  static {
    List.of("id", "kind", "description", "pack", "pieces_per_pack", "cut_into")
        .forEach(column -> COLUMNS.put(column, PLAIN));
    List.of("length", "height", "width", "exposure", "side_lap", "end_lap", "joint_offset")
        .forEach(column -> COLUMNS.put(column, LENGTH));
    COLUMNS.put("nails", PLAIN);
    COLUMNS.put("nails_high_wind", PLAIN);
    COLUMNS.put("minimum_slope", List.of("in_per_ft"));
    COLUMNS.put("net_free_area", List.of("sq_in", "sq_cm"));
    COLUMNS.put("weight", WEIGHT);
    COLUMNS.put("weight_limit", WEIGHT);
    COLUMNS.put("stated_coverage", List.of("sq_ft"));
    COLUMNS.put("source", PLAIN);
    COLUMNS.put("note", PLAIN);
  }

  /**
   * A heading as it stands in the file.
   *
   * @param text the whole heading
   * @param unit the unit in it, or empty
   */
  record Heading(String text, String unit) {}

  private final Map<String, Heading> found = new HashMap<>();
  private final List<String> strangers = new ArrayList<>();

  Headings(Collection<String> texts) {
    texts.forEach(this::add);
  }

  private void add(String text) {
    for (Map.Entry<String, List<String>> column : COLUMNS.entrySet()) {
      for (String unit : column.getValue()) {
        if (text.strip().equals(written(column.getKey(), unit))) {
          found.put(column.getKey(), new Heading(text, unit));
          return;
        }
      }
    }
    strangers.add(text);
  }

  private static String written(String column, String unit) {
    return unit.isEmpty() ? column : column + "_" + unit;
  }

  /** The heading of a column, if the file has it. */
  Optional<Heading> of(String column) {
    return Optional.ofNullable(found.get(column));
  }

  /** Headings that are no column of a catalogue. */
  List<String> strangers() {
    return strangers;
  }

  /** The columns no catalogue can do without that are missing here. */
  List<String> missing() {
    return List.of("id", "kind", "pack").stream()
        .filter(column -> !found.containsKey(column))
        .toList();
  }

  /** The columns that hold numbers. */
  static List<String> numbers() {
    List<String> words = List.of("id", "kind", "description", "pack", "source", "note");
    return COLUMNS.keySet().stream().filter(column -> !words.contains(column)).toList();
  }

  /** Whether a column holds lengths. */
  static boolean isLength(String column) {
    return COLUMNS.get(column).equals(LENGTH);
  }

  /** The heading of a column in a catalogue that is written. */
  static String written(String column) {
    return written(column, COLUMNS.get(column).get(0));
  }

  /** The headings of a catalogue that is written. */
  static List<String> all() {
    return COLUMNS.keySet().stream().map(Headings::written).toList();
  }
}
