package squaresheet.product;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import squaresheet.units.Length;

/** Writes a product as the row of a catalogue; reading it back gives an equal product. */
final class ProductWriter {

  private final Map<String, String> cells = new LinkedHashMap<>();

  /** Heading to text, in the order of the headings; empty cells are left out. */
  static Map<String, String> cells(Product product) {
    ProductWriter writer = new ProductWriter();
    Headings.all().forEach(heading -> writer.cells.put(heading, ""));
    writer.label(product.label());
    writer.measures(product);
    writer.cells.values().removeIf(String::isEmpty);
    return writer.cells;
  }

  private void label(Product.Label label) {
    cells.put("id", label.id());
    cells.put("kind", label.kind().toString());
    cells.put("description", label.description());
    cells.put("pack", label.packing().pack().name());
    cells.put("pieces_per_pack", Long.toString(label.packing().pieces()));
    cells.put("weight_lb", weight(label.packing().weight()));
    cells.put("source", label.source());
    cells.put("note", label.note());
  }

  private void measures(Product product) {
    if (product instanceof Shingle shingle) {
      shingle(shingle);
    } else if (product instanceof Starter starter) {
      lengths("length", starter.length(), "height", starter.height());
      cells.put("cut_into", Long.toString(starter.strips()));
    } else if (product instanceof Cap cap) {
      lengths("exposure", cap.exposure());
      cells.put("cut_into", Long.toString(cap.cutFromEach()));
    } else if (product instanceof Roll roll) {
      lengths(
          "width",
          roll.width(),
          "length",
          roll.length(),
          "side_lap",
          roll.sideLap(),
          "end_lap",
          roll.endLap());
    } else if (product instanceof EdgeMetal metal) {
      lengths("length", metal.length(), "end_lap", metal.lap());
    } else {
      rest(product);
    }
  }

  private void shingle(Shingle shingle) {
    lengths("length", shingle.length(), "height", shingle.height(), "exposure", shingle.exposure());
    lengths("joint_offset", shingle.jointOffset());
    cells.put("nails", Long.toString(shingle.nails().usual()));
    cells.put("nails_high_wind", Long.toString(shingle.nails().highWind()));
    cells.put("minimum_slope_in_per_ft", shingle.minimumSlope().rise().toPlainString());
  }

  private void rest(Product product) {
    if (product instanceof Fastener fastener) {
      lengths("length", fastener.length());
    } else if (product instanceof Product.StepFlashing step) {
      lengths("length", step.length(), "height", step.height(), "width", step.width());
    } else if (product instanceof Product.Vent vent) {
      lengths("length", vent.length());
      cells.put("net_free_area_sq_in", vent.netFreeArea().squareInches().toPlainString());
    } else if (product instanceof Product.DeckSheet sheet) {
      lengths("length", sheet.length(), "width", sheet.width());
    } else if (product instanceof Product.Container container) {
      cells.put("weight_limit_lb", weight(container.limit()));
    }
  }

  private void lengths(Object... columnsAndLengths) {
    for (int i = 0; i < columnsAndLengths.length; i += 2) {
      cells.put(columnsAndLengths[i] + "_in", inches((Length) columnsAndLengths[i + 1]));
    }
  }

  /** Decimal inches where nine decimals hold them, else millimetres with their mark. */
  private static String inches(Length length) {
    if (length.isZero()) {
      return "";
    }
    BigDecimal inches = BigDecimal.valueOf(length.toInches());
    return inches.scale() <= 9 ? inches.stripTrailingZeros().toPlainString() : millimetres(length);
  }

  private static String millimetres(Length length) {
    BigDecimal perMillimetre = BigDecimal.valueOf(320);
    return BigDecimal.valueOf(length.units()).divide(perMillimetre).toPlainString() + " mm";
  }

  private static String weight(Weight weight) {
    return weight.isZero() ? "" : weight.pounds().toPlainString();
  }
}
