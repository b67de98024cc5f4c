package squaresheet.estimate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import squaresheet.product.Product;
import squaresheet.takeoff.Order;
import squaresheet.takeoff.Takeoff;
import squaresheet.units.Count;

/**
 * What to order, a line for each product.
 *
 * @param entries in the order of the rulebook
 */
public record OrderList(List<Entry> entries) {

  public OrderList {
    entries = List.copyOf(entries);
  }

  /**
   * A product and how many packs of it.
   *
   * @param product the product
   * @param packs whole packs, 1 or more
   */
  public record Entry(Product product, Count packs) {}

  /** The order of a takeoff; packs of one product that several rules ask for stand together. */
  public static OrderList of(Takeoff takeoff) {
    return of(takeoff.orders());
  }

  /** These orders; packs of one product stand together. */
  public static OrderList of(List<Order> orders) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (Order order : orders) {
      entries.merge(
          order.product().id(), new Entry(order.product(), order.packs()), OrderList::together);
    }
    return new OrderList(List.copyOf(entries.values()));
  }

  private static Entry together(Entry one, Entry other) {
    return new Entry(one.product(), one.packs().plus(other.packs()));
  }
}
