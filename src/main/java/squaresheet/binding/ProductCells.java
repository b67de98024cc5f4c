package squaresheet.binding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.product.Cap;
import squaresheet.product.Catalogue;
import squaresheet.product.EdgeMetal;
import squaresheet.product.Fastener;
import squaresheet.product.Product;
import squaresheet.product.Roll;
import squaresheet.product.Shingle;
import squaresheet.product.Starter;
import squaresheet.sheet.Content;
import squaresheet.units.Length;

/** A product as a row of the catalogue sheet, under the catalogue's own headings, lengths in inches. */
final class ProductCells {

  private final Map<String, Content> cells = new LinkedHashMap<>();

  private ProductCells(Product product) {
    Product.Label label = product.label();
    text("id", label.id());
    text("kind", label.kind().toString());
    text("description", label.description());
    text("pack", label.packing().pack().name());
    count("pieces_per_pack", label.packing().pieces());
    if (!label.packing().weight().isZero()) {
      number("weight_lb", label.packing().weight().pounds().doubleValue());
    }
    text("source", label.source());
    text("note", label.note());
  }

  /** The row of a product; numbers that its kind has no use for stand there as typed. */
  static Map<String, Content> of(Catalogue catalogue, Product product) {
    Map<String, Content> cells = of(product);
    catalogue
        .unused()
        .getOrDefault(product.id(), Map.of())
        .forEach((column, number) ->
            cells.putIfAbsent(column, new Content.Numeric(number.doubleValue())));
    return cells;
  }

  private static Map<String, Content> of(Product product) {
    ProductCells row = new ProductCells(product);
    if (product instanceof Shingle shingle) {
      row.shingle(shingle);
    } else if (product instanceof Starter starter) {
      row.lengths("length", starter.length(), "height", starter.height());
      row.count("cut_into", starter.strips());
    } else if (product instanceof Cap cap) {
      row.lengths("exposure", cap.exposure());
      row.count("cut_into", cap.cutFromEach());
    } else if (product instanceof Roll roll) {
      row.lengths("width", roll.width(), "length", roll.length());
      row.lengths("side_lap", roll.sideLap(), "end_lap", roll.endLap());
    } else if (product instanceof EdgeMetal metal) {
      row.lengths("length", metal.length(), "end_lap", metal.lap());
    } else if (product instanceof Fastener fastener) {
      row.lengths("length", fastener.length());
    } else {
      row.others(product);
    }
    return row.cells;
  }

  private void shingle(Shingle shingle) {
    lengths("length", shingle.length(), "height", shingle.height());
    lengths("exposure", shingle.exposure(), "joint_offset", shingle.jointOffset());
    count("nails", shingle.nails().usual());
    count("nails_high_wind", shingle.nails().highWind());
    number("minimum_slope_in_per_ft", shingle.minimumSlope().rise().doubleValue());
  }

  private void others(Product product) {
    if (product instanceof Product.StepFlashing step) {
      lengths("length", step.length(), "height", step.height());
      lengths("width", step.width());
    } else if (product instanceof Product.Vent vent) {
      number("net_free_area_sq_in", vent.netFreeArea().squareInches().doubleValue());
      if (!vent.length().isZero()) {
        lengths("length", vent.length());
      }
    } else if (product instanceof Product.DeckSheet sheet) {
      lengths("length", sheet.length(), "width", sheet.width());
    } else if (product instanceof Product.Container container) {
      number("weight_limit_lb", container.limit().pounds().doubleValue());
    }
  }

  private void lengths(String column, Length length) {
    number(column + "_in", length.toInches());
  }

  private void lengths(String one, Length first, String other, Length second) {
    lengths(one, first);
    lengths(other, second);
  }

  private void text(String column, String text) {
    if (!text.isEmpty()) {
      cells.put(column, new Content.Text(text));
    }
  }

  private void count(String column, long count) {
    number(column, (double) count);
  }

  private void number(String column, double number) {
    cells.put(column, new Content.Numeric(number));
  }

  /** The column of the catalogue that a fact of a chosen product is looked up in. */
  static final Map<String, String> COLUMN_OF_FACT = Map.ofEntries(
      Map.entry("length", "length_in"),
      Map.entry("height", "height_in"),
      Map.entry("exposure", "exposure_in"),
      Map.entry("pieces_per_pack", "pieces_per_pack"),
      Map.entry("nails_usual", "nails"),
      Map.entry("nails_high_wind", "nails_high_wind"),
      Map.entry("minimum_slope", "minimum_slope_in_per_ft"),
      Map.entry("pack_weight", "weight_lb"),
      Map.entry("piece_length", "length_in"),
      Map.entry("piece_height", "height_in"),
      Map.entry("strips_each", "cut_into"),
      Map.entry("cut_each", "cut_into"),
      Map.entry("roll_width", "width_in"),
      Map.entry("roll_length", "length_in"),
      Map.entry("side_lap", "side_lap_in"),
      Map.entry("end_lap", "end_lap_in"),
      Map.entry("lap", "end_lap_in"),
      Map.entry("net_free_area", "net_free_area_sq_in"),
      Map.entry("weight_limit", "weight_limit_lb"),
      Map.entry("width", "width_in"));

  /** The headings of the catalogue that a person sees: {@code exposure_in} as {@code Exposure, in}. */
  static String heading(String column) {
    String words = column.replace('_', ' ');
    for (String unit : List.of(" in per ft", " sq in", " sq ft", " in", " lb")) {
      if (words.endsWith(unit)) {
        words = words.substring(0, words.length() - unit.length()) + "," + unit;
        break;
      }
    }
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** The catalogue's own heading for one that a person sees. */
  static String column(String heading) {
    return heading
        .strip()
        .toLowerCase(java.util.Locale.ROOT)
        .replace(",", "")
        .replaceAll("\\s+", "_");
  }
}
