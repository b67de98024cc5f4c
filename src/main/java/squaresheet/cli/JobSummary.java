package squaresheet.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import squaresheet.estimate.OrderList;
import squaresheet.formula.Value;
import squaresheet.job.JobResult;
import squaresheet.job.Unread;

/** What an import prints at its end: how large the roof is, what to order, what it costs. */
final class JobSummary {

  private JobSummary() {}

  static List<String> of(JobResult job) {
    List<String> lines = new ArrayList<>();
    lines.add(String.format(
        Locale.ROOT,
        "%s: %d planes, %s on the slope, %s in plan",
        job.input().card().name(),
        job.roof().planes().size(),
        job.input().card().show(job.roof().slopedArea()),
        job.input().card().show(job.roof().planArea())));
    List<String> flat = tooFlat(job);
    if (!flat.isEmpty()) {
      lines.add(
          "too flat for shingles, none ordered there: " + String.join(", ", flat)
              + "; underlayment, metal and work there are still ordered and priced, and verify withholds the totals");
    }
    lines.add("To order:");
    for (OrderList.Entry entry : job.orderList().entries()) {
      lines.add(
          String.format("  %-14s %s", entry.packs(), entry.product().label().description()));
    }
    String total = job.estimate().total().show();
    lines.add(
        job.missing().isEmpty()
            ? "Price, tax included: " + total
            : "Price of what could be read, tax included: " + total);
    lines.addAll(notRead(job.input().unread()));
    return lines;
  }

  /** What could not be read, each with all that was written, and at the end that the job is not to be ordered. */
  static List<String> notRead(List<Unread> unread) {
    List<String> lines = new ArrayList<>();
    if (!Unread.open(unread).isEmpty()) {
      lines.add("Not read:");
      Unread.open(unread)
          .forEach(one -> lines.add("  " + one.where() + ": " + one.subject() + ": "
              + String.join(" | ", one.written()) + " (understood: " + one.understood() + ")"));
      lines.add(
          "Mend the tape sheet and import it again, or answer each on the sheet 'Not read' of the workbook");
      lines.add("NOT TO BE ORDERED: " + Unread.sentence(unread));
    }
    return lines;
  }

  private static List<String> tooFlat(JobResult job) {
    List<Value> names = job.takeoff().values("plane_name");
    List<Value> enough = job.takeoff().values("slope_is_enough");
    return IntStream.range(0, enough.size())
        .filter(row -> enough.get(row).equals(new Value.Truth(false)))
        .mapToObj(row -> ((Value.Text) names.get(row)).value())
        .toList();
  }
}
