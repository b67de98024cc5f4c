package squaresheet.paper;

import java.awt.Font;
import java.util.List;
import squaresheet.estimate.OrderList;

/**
 * The order list as it goes to the supplier: whole packs of each product. As a drawing to print and as lines of text.
 *
 * @param title what it is for
 * @param order what to order
 */
public record OrderSheet(String title, OrderList order) {

  private static final int WIDTH = 612;
  private static final double MARGIN = 36;
  private static final double ROW = 24;
  private static final double HEAD = 92;
  private static final double FOOT = 70;
  private static final int LEAST_HIGH = 792;
  private static final Font ENTRY = Type.plain(12);
  private static final Font PACKS = Type.bold(12);

  /** The order list of a job. */
  public static OrderSheet of(OrderList order, String job) {
    return new OrderSheet("Order list: " + job, order);
  }

  /** One line of text for each product: the packs, then what it is. */
  public List<String> lines() {
    return order.entries().stream()
        .map(entry -> entry.packs() + "  " + entry.product().label().description())
        .toList();
  }

  /** A page; longer than a sheet of paper where the list is. */
  public Drawing drawing() {
    double high = HEAD + ROW * order.entries().size() + FOOT;
    return new Drawing(title, WIDTH, (int) Math.max(LEAST_HIGH, Math.ceil(high)), this::paint);
  }

  private void paint(Pen pen) {
    pen.text(title, MARGIN, MARGIN + 10, Type.bold(20), Pen.Stand.RIGHT_OF);
    double right = WIDTH - MARGIN;
    pen.text("packs", MARGIN, HEAD - 14, Type.plain(10), Pen.Stand.RIGHT_OF);
    pen.text("what", MARGIN + 120, HEAD - 14, Type.plain(10), Pen.Stand.RIGHT_OF);
    pen.text("checked on delivery", right, HEAD - 14, Type.plain(10), Pen.Stand.LEFT_OF);
    double y = HEAD;
    pen.line(MARGIN, y - 4, right, y - 4, 1.2);
    for (OrderList.Entry entry : order.entries()) {
      pen.text(entry.packs().toString(), MARGIN, y + ROW / 2, PACKS, Pen.Stand.RIGHT_OF);
      pen.text(
          entry.product().label().description(),
          MARGIN + 120,
          y + ROW / 2,
          ENTRY,
          Pen.Stand.RIGHT_OF);
      pen.box(right - 14, y + 6, 12, 12, 0.8);
      pen.line(MARGIN, y + ROW, right, y + ROW, 0.3);
      y += ROW;
    }
    pen.paragraph(
        "Whole packs, rounded up once for the job. Check colour and run numbers on delivery, and spread bundles over the"
            + " deck, never in one stack.",
        MARGIN,
        y + 14,
        WIDTH - 2 * MARGIN,
        Type.plain(10));
  }
}
