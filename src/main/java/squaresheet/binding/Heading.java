package squaresheet.binding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A heading or label as read: what it says, with and without the unit in it.
 *
 * @param text as written
 * @param readings its words, the likeliest reading first
 * @param unit the unit it names, if it names one
 */
record Heading(String text, List<List<String>> readings, Optional<UnitWord> unit) {

  private static final Pattern BRACKETS = Pattern.compile("[(\\[{]([^)\\]}]*)[)\\]}]");
  private static final int LONGEST_UNIT = 4;

  Heading {
    readings = List.copyOf(readings);
  }

  static Heading of(String text) {
    String plain = Tokens.plain(text);
    Optional<Split> split = UnitWords.pricePer(plain)
        .map(price -> new Split(price.getKey(), price.getValue()))
        .or(() -> bracketed(plain))
        .or(() -> behindAMark(plain))
        .or(() -> atTheEnd(plain));
    Set<List<String>> readings = new LinkedHashSet<>();
    split.map(found -> Tokens.of(found.words)).filter(w -> !w.isEmpty()).ifPresent(readings::add);
    readings.add(Tokens.of(plain));
    Tokens.of(BRACKETS.matcher(plain).replaceAll(" ")).stream()
        .reduce((one, other) -> one + " " + other)
        .ifPresent(words -> readings.add(List.of(words.split(" "))));
    Optional<UnitWord> unit = split.map(found -> found.unit).or(() -> UnitWords.find(plain));
    return new Heading(text.strip(), new ArrayList<>(readings), unit);
  }

  /** A heading under another that spans it: {@code Area} over {@code plan, sq ft}. */
  Heading under(String above) {
    return above.isBlank() ? this : of(above + " " + text);
  }

  boolean isEmpty() {
    return readings.get(0).isEmpty();
  }

  private static Optional<Split> bracketed(String plain) {
    Matcher inside = BRACKETS.matcher(plain);
    while (inside.find()) {
      Optional<UnitWord> unit = UnitWords.find(inside.group(1));
      if (unit.isPresent()) {
        String rest = plain.substring(0, inside.start()) + " " + plain.substring(inside.end());
        return Optional.of(new Split(rest, unit.get()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Split> behindAMark(String plain) {
    for (String mark : List.of(",", " in ", " - ", ":", "|", ";", "–")) {
      int at = plain.lastIndexOf(mark);
      if (at > 0) {
        Optional<UnitWord> unit = UnitWords.find(plain.substring(at + mark.length()));
        if (unit.isPresent()) {
          return Optional.of(new Split(plain.substring(0, at), unit.get()));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Split> atTheEnd(String plain) {
    Optional<UnitWord> whole = UnitWords.find(plain);
    if (whole.isPresent()) {
      return Optional.of(new Split("", whole.get()));
    }
    String[] words = plain.split(" ");
    for (int length = Math.min(LONGEST_UNIT, words.length - 1); length > 0; length--) {
      int cut = words.length - length;
      String tail = String.join(" ", Arrays.copyOfRange(words, cut, words.length));
      Optional<UnitWord> unit = UnitWords.find(tail);
      if (unit.isPresent()) {
        return Optional.of(
            new Split(String.join(" ", Arrays.copyOfRange(words, 0, cut)), unit.get()));
      }
    }
    return Optional.empty();
  }

  private record Split(String words, UnitWord unit) {}
}
