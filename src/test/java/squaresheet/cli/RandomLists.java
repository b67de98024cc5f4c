package squaresheet.cli;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The lists of a company like the demo's, with another number in the place of every number, and some where none was. */
final class RandomLists {

  private static final double INCH = 25.4;

  /**
   * A number of a list.
   *
   * @param key what its row is told by; empty where any row will do
   * @param number as typed, lengths in inches
   * @param text as typed
   * @param inRule whether it stands in the text of a rule
   */
  record Typed(String key, double number, String text, boolean inRule) {
    Typed(String key, double number, String text) {
      this(key, number, text, false);
    }
  }

  private final Random random;
  private final List<Typed> typed = new ArrayList<>();

  RandomLists(long seed) {
    random = new Random(seed);
  }

  /** Writes the lists into a folder, and gives every number that was typed into them. */
  List<Typed> write(Path folder) {
    products(folder);
    prices(folder);
    rates(folder);
    terms(folder);
    ownRules(folder);
    return List.copyOf(typed);
  }

  /** A list of the demo: its headings and its lines. */
  private static List<List<String>> lines(String file) {
    List<List<String>> lines = new ArrayList<>();
    try (var csv = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .ofCsvRecord(Files.readString(Path.of("demo-data", file)))) {
      csv.forEach(line -> lines.add(new ArrayList<>(line.getFields())));
      return lines;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static void save(Path file, List<List<String>> lines) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(text)) {
      lines.forEach(csv::writeRecord);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    try {
      Files.writeString(file, text.toString());
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  /** A number of up to so many decimals, each size as likely as another. */
  private String number(double low, double high, int decimals) {
    double size = Math.exp(between(Math.log(low), Math.log(high)));
    return BigDecimal.valueOf(size)
        .setScale(random.nextInt(decimals + 1), RoundingMode.UP)
        .toPlainString();
  }

  private String type(String key, String text) {
    typed.add(new Typed(key, Double.parseDouble(text), text));
    return text;
  }

  private String share(String key, double low, double high) {
    String percent = number(low, high, 3);
    typed.add(
        new Typed(key, new BigDecimal(percent).movePointLeft(2).doubleValue(), percent + "%"));
    return percent + "%";
  }

  private void products(Path folder) {
    List<List<String>> lines = lines("products.csv");
    List<String> headings = lines.get(0);
    for (List<String> line : lines.subList(1, lines.size())) {
      for (int at = 0; at < headings.size(); at++) {
        line.set(at, product(headings.get(at), line, line.get(at)));
      }
      int usual = headings.indexOf("nails");
      if (!line.get(usual).isEmpty()) {
        line.set(usual + 1, type(line.get(0), line.get(usual) + random.nextInt(10)));
      }
    }
    save(folder.resolve("products.csv"), lines);
  }

  private String product(String heading, List<String> line, String was) {
    boolean text =
        List.of("id", "kind", "description", "pack", "source", "note").contains(heading);
    boolean later = heading.equals("nails_high_wind");
    boolean refused = heading.equals("length_in") && line.get(1).equals("box_vent");
    boolean free = was.isEmpty() && random.nextInt(4) > 0;
    if (text || later || refused || free) {
      return later ? "" : was;
    }
    return switch (heading) {
      case "cut_into" -> type(line.get(0), was.isEmpty() ? "2" : was);
      case "pieces_per_pack", "nails" ->
        type(line.get(0), Integer.toString(1 + random.nextInt(40)));
      case "minimum_slope_in_per_ft" -> type(line.get(0), number(2, 3, 4));
      case "length_in", "height_in", "width_in", "side_lap_in", "end_lap_in" ->
        length(line.get(0), inches(was) * between(1, 1.3));
      case "exposure_in", "joint_offset_in" -> length(line.get(0), inches(was) * between(0.8, 1));
      default -> type(line.get(0), number(1, 99_999, 6));
    };
  }

  private static double inches(String text) {
    if (text.isEmpty()) {
      return 7;
    }
    String[] parts = text.replace("'", "").split("[ /]");
    double whole = Double.parseDouble(parts[0]) * (text.endsWith("'") ? 12 : 1);
    return parts.length < 3
        ? whole
        : whole + Double.parseDouble(parts[1]) / Double.parseDouble(parts[2]);
  }

  /** A length near that many inches that can be halved, as a decimal, as a fraction or in millimetres. */
  private String length(String key, double inches) {
    long sixtyFourths = 2 * Math.round(inches * 32);
    BigDecimal decimal = BigDecimal.valueOf(sixtyFourths).divide(BigDecimal.valueOf(64));
    BigDecimal tenths = BigDecimal.valueOf(Math.round(inches * INCH * 10), 1);
    int notation = random.nextInt(3);
    double number = notation == 2 ? tenths.doubleValue() / INCH : decimal.doubleValue();
    String text =
        switch (notation) {
          case 0 -> decimal.toPlainString();
          case 1 -> sixtyFourths / 64 + " " + sixtyFourths % 64 + "/64";
          default -> tenths + " mm";
        };
    typed.add(new Typed(key, number, text));
    return text;
  }

  private void prices(Path folder) {
    List<List<String>> lines = lines("prices.csv");
    lines.stream().skip(1).forEach(line -> line.set(1, type(line.get(0), number(1, 99_999, 4))));
    save(folder.resolve("prices.csv"), lines);
  }

  /** Every item has its own limits of pitch and stories, so that its rates still share the work between them. */
  private void rates(Path folder) {
    List<List<String>> lines = lines("rates.csv");
    for (List<String> line : lines.subList(1, lines.size())) {
      double least = line.get(0).equals("permit") ? 1_001 : 0.01;
      line.set(3, type(line.get(0), number(least, 9_999, 6)));
      Random limits = new Random(line.get(0).hashCode() + random.hashCode());
      String six = BigDecimal.valueOf(3 + limits.nextInt(5000), 3).toPlainString();
      String nine = BigDecimal.valueOf(9000 + limits.nextInt(5000), 3).toPlainString();
      String two = BigDecimal.valueOf(15 + limits.nextInt(20), 1).toPlainString();
      for (int at = 6; at < 10; at++) {
        String limit =
            switch (line.get(at)) {
              case "6" -> six;
              case "9" -> nine;
              case "2" -> two;
              default -> "";
            };
        line.set(at, limit.isEmpty() ? "" : type(line.get(0), limit));
      }
    }
    save(folder.resolve("rates.csv"), lines);
  }

  private void terms(Path folder) {
    BigDecimal first = BigDecimal.valueOf(1 + random.nextInt(90_000), 3);
    BigDecimal rest = BigDecimal.valueOf(100).subtract(first);
    List<Typed> shares = List.of(
        new Typed("at first", first.movePointLeft(2).doubleValue(), first + "%"),
        new Typed("at last", rest.movePointLeft(2).doubleValue(), rest + "%"));
    typed.addAll(shares);
    String profit = random.nextBoolean() ? "margin " : "markup ";
    save(
        folder.resolve("terms.csv"),
        List.of(
            List.of("name", "value", "cost_code"),
            List.of("overhead", share("", 1, 150), "A"),
            List.of("profit", profit + share("", 1, 80), "B"),
            List.of("discount_share", share("", 0.1, 20), "C"),
            List.of("discount_amount", type("", number(1, 500, 2)), ""),
            List.of("discount_when", random.nextBoolean() ? "before tax" : "after tax", ""),
            List.of("tax_rate", share("", 0.1, 25), "D"),
            List.of("tax_on", "material|labour", ""),
            List.of("tax_rounding", random.nextBoolean() ? "line" : "invoice", ""),
            List.of("payment: at first", first + "%", ""),
            List.of("payment: at last", rest + "%", "")));
  }

  private void ownRules(Path folder) {
    List<List<String>> lines = lines("own-rules.csv");
    for (List<String> line : lines.subList(1, lines.size())) {
      String formula = line.get(3);
      String number = BigDecimal.valueOf(5 + random.nextInt(30_000_000), 8).toPlainString();
      line.set(3, formula.replaceAll("\\d+\\.\\d+", number));
      if (!line.get(3).equals(formula)) {
        typed.add(new Typed(line.get(0), Double.parseDouble(number), number, true));
      }
    }
    save(folder.resolve("rulebook.csv"), lines);
  }
}
