package squaresheet.sheet;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a defined name stands for, where that is one block of one sheet. */
final class NameText {

  private static final Pattern BLOCK = Pattern.compile(
      "=?(?:'((?:[^']|'')+)'|([\\p{L}\\p{N}_.]+))!(\\$?[A-Z]{1,3}\\$?[1-9]\\d{0,6})(?::(\\$?[A-Z]{1,3}\\$?[1-9]\\d{0,6}))?");

  private NameText() {}

  record Place(String sheet, Block block) {
    Address firstCell() {
      return new Address(sheet, block.first());
    }
  }

  static Optional<Place> block(String text) {
    Matcher parts = BLOCK.matcher(text.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    String sheet = parts.group(1) == null ? parts.group(2) : parts.group(1).replace("''", "'");
    String last = parts.group(4) == null ? parts.group(3) : parts.group(4);
    try {
      return Optional.of(new Place(
          sheet, Block.parse(parts.group(3).replace("$", "") + ":" + last.replace("$", ""))));
    } catch (IllegalArgumentException outside) {
      return Optional.empty();
    }
  }
}
