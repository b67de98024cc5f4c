package squaresheet.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import squaresheet.estimate.OrderList;
import squaresheet.job.JobResult;

/** What an import prints at its end: how large the roof is, what to order, what it costs. */
final class JobSummary {

  private JobSummary() {}

  static List<String> of(JobResult job, long unread) {
    List<String> lines = new ArrayList<>();
    lines.add(String.format(
        Locale.ROOT,
        "%s: %d planes, %s on the slope, %s in plan",
        job.input().card().name(),
        job.roof().planes().size(),
        job.input().card().show(job.roof().slopedArea()),
        job.input().card().show(job.roof().planArea())));
    if (unread > 0) {
      lines.add(unread + (unread == 1 ? " row" : " rows")
          + " of the sheet could not be read; see the sheet 'Not read' of the workbook");
    }
    lines.add("To order:");
    for (OrderList.Entry entry : job.orderList().entries()) {
      lines.add(
          String.format("  %-14s %s", entry.packs(), entry.product().label().description()));
    }
    lines.add("Price, tax included: " + job.estimate().total().show());
    return lines;
  }
}
