package squaresheet.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;
import squaresheet.product.Product;
import squaresheet.takeoff.Order;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Unit;

/** A line for every product to be ordered: whole packs times the price of a pack. */
final class MaterialLines {

  private final List<Line> lines = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  MaterialLines(Takeoff takeoff, PriceList prices) {
    takeoff.orders().forEach(order -> add(order, prices));
  }

  List<Line> lines() {
    return lines;
  }

  List<Finding> findings() {
    return findings;
  }

  private void add(Order order, PriceList prices) {
    Product product = order.product();
    Where asked = new Where.OfItem("order of " + order.packs(), product.id());
    Read<PriceList.Price> price = prices.perPack(product, asked);
    findings.addAll(price.findings());
    price.value().ifPresent(found -> {
      Line.Quantity packs = new Line.Quantity(
          BigDecimal.valueOf(order.packs().number()),
          unit(product.packing().pack().name()));
      lines.add(Line.extended(
          found.category(),
          found.costCode(),
          product.label().description(),
          packs,
          found.amount(),
          order.rule().name() + ", " + product.id()));
    });
  }

  private static Unit unit(String pack) {
    try {
      return Unit.parse(pack);
    } catch (IllegalArgumentException unusualName) {
      return Unit.parse("pack");
    }
  }
}
