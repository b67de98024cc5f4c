package squaresheet.binding;

import java.util.List;
import squaresheet.sheet.Content;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.takeoff.Rule;

/** The first sheet: the job at a glance, what to order, and how to read the others. */
final class SummarySheet {

  static final String NAME = "Summary";

  private static final List<String> TOTALS = List.of(
      "plan_area_total",
      "roof_area",
      "net_area",
      "net_squares",
      "waste_rate",
      "gross_area",
      "order_squares",
      "eave_length",
      "rake_length",
      "ridge_length",
      "hip_length",
      "valley_length",
      "sidewall_length",
      "headwall_length");

  private final JobParts parts;
  private final DraftSheet sheet;
  private int row;

  SummarySheet(JobParts parts, DraftSheet sheet) {
    this.parts = parts;
    this.sheet = sheet;
  }

  void write() {
    Sheets.head(
        sheet,
        parts.labels().getOrDefault("job_name", "Roof"),
        "Job workbook. Every number here is live: it comes from the other sheets.");
    caution();
    row = 5;
    notRead();
    headings("The roof", "", "");
    TOTALS.forEach(name -> parts.rulebook().rule(name).ifPresent(this::total));
    row++;
    headings("The price", "", "");
    price("Cost of the job", "estimate_cost");
    price("Price before discount and tax", "estimate_price");
    price("Tax", "estimate_tax");
    price("Total", "estimate_total");
    row++;
    headings("To order", "Packs", "Pack");
    tooFlat();
    parts.rulebook().rules().stream()
        .filter(rule -> rule.role().flatMap(parts.selection()::of).isPresent())
        .forEach(this::order);
    row++;
    legend();
    sheet.width(0, 60).width(1, 14).width(2, 48);
    Sheets.page(sheet);
  }

  private void caution() {
    sheet.put(new Ref(3, 0), Entry.text(Cautions.LINE).as(Role.CAUTION));
    sheet.put(new Ref(3, 1), Entry.blank().as(Role.CAUTION));
    sheet.put(new Ref(3, 2), Entry.blank().as(Role.CAUTION));
    sheet.merge(new squaresheet.sheet.Block(new Ref(3, 0), new Ref(3, 2)));
  }

  /** Rows of the tape sheet that are in no number here come before every number. */
  private void notRead() {
    if (!parts.unread().isEmpty()) {
      sheet.put(new Ref(row, 0), Entries.computed(NotReadSheet.summary(), "@").as(Role.CAUTION));
      sheet.put(new Ref(row, 1), Entry.blank().as(Role.CAUTION));
      sheet.put(new Ref(row, 2), Entry.blank().as(Role.CAUTION));
      sheet.merge(new squaresheet.sheet.Block(new Ref(row, 0), new Ref(row, 2)));
      row += 2;
    }
  }

  private void headings(String... texts) {
    for (int at = 0; at < texts.length; at++) {
      sheet.put(new Ref(row, at), Entry.text(texts[at]).as(Role.HEADING));
    }
    row++;
  }

  /** No shingles are ordered for a plane too flat for them, but everything else for it is: that must be seen. */
  private void tooFlat() {
    if (parts.rulebook().rule("slope_is_enough").isPresent()) {
      String count = "COUNTIF(slope_is_enough,FALSE)";
      sheet.put(
          new Ref(row, 0),
          Entries.computed(
              "IF(" + count
                  + "=0,\"No plane is too flat for shingles\",\"TOO FLAT FOR SHINGLES: \"&" + count
                  + "&\" of the planes; no shingles for them, all else is priced\")",
              "@"));
      row++;
    }
  }

  private void total(Rule rule) {
    sheet.put(new Ref(row, 0), Entries.label(rule.label()));
    sheet.put(new Ref(row, 1), Entries.computed(rule.name(), Entries.format(rule)));
    sheet.put(new Ref(row, 2), Entries.unit(Entries.unit(rule.unit())));
    if (!parts.unit().isImperial()) {
      metric(rule);
    }
    row++;
  }

  /** Where the tape is metric, the same length or area once more as it is spoken of there. */
  private void metric(Rule rule) {
    String unit = rule.unit().toString();
    String in = unit.startsWith("sq ft") ? "0.09290304" : unit.equals("ft") ? "0.3048" : "";
    if (!in.isEmpty()) {
      sheet.put(new Ref(row, 3), Entries.computed(rule.name() + "*" + in, "#,##0.0"));
      sheet.put(new Ref(row, 4), Entries.unit(unit.startsWith("sq ft") ? "m\u00b2" : "m"));
    }
  }

  private void price(String label, String name) {
    sheet.put(new Ref(row, 0), Entries.label(label));
    sheet.put(
        new Ref(row, 1),
        Entries.computed(name, "#,##0.00")
            .as(name.equals("estimate_total") ? Role.TOTAL : Role.COMPUTED));
    sheet.put(
        new Ref(row, 2), Entry.formula("terms_currency", new Content.Blank()).as(Role.UNIT));
    row++;
  }

  private void order(Rule rule) {
    String name = rule.role().orElseThrow() + "_product";
    sheet.put(
        new Ref(row, 0),
        Entries.computed("INDEX(catalogue_description,MATCH(" + name + ",catalogue_id,0))", "@"));
    sheet.put(new Ref(row, 1), Entries.computed(rule.name(), "#,##0"));
    sheet.put(
        new Ref(row, 2),
        Entries.computed("INDEX(catalogue_pack,MATCH(" + name + ",catalogue_id,0))", "@"));
    row++;
  }

  private void legend() {
    headings("How to read the sheets", "", "");
    for (Role role : List.of(Role.INPUT, Role.COMPUTED, Role.TOTAL, Role.NOTE, Role.FLAG)) {
      sheet.put(new Ref(row, 0), Entries.label(role.legend()));
      sheet.put(new Ref(row, 1), Entry.text("1234").as(role));
      row++;
    }
    row++;
  }
}
