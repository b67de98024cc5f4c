package squaresheet.binding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import squaresheet.estimate.Category;
import squaresheet.estimate.Rate;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.takeoff.Rule;

/** The priced job: a live line for everything bought, worked or hired, what is put on, and how it foots and is paid. */
final class EstimateSheet {

  static final String NAME = "Estimate";

  private static final int HEADING = 3;
  private static final String MONEY = "#,##0.00";

  /** What the sum over all categories that are none of ours is called. */
  static final String OWN = "of your own";

  /** The defined names of the sums. */
  static final List<String> SUMS = List.of(
      "estimate_cost",
      "estimate_base",
      "estimate_price",
      "discount_before",
      "tax_by_line",
      "tax_by_invoice",
      "estimate_tax",
      "estimate_total",
      "category_total",
      "code_total",
      "payment_total");

  /**
   * A line: the formulas of its cells.
   *
   * @param key what it is told by: a rule, a rate's row, or a term
   */
  private record EstimateLine(
      String key,
      String item,
      String category,
      String code,
      String quantity,
      String unit,
      String price,
      String amount) {}

  private final JobParts parts;
  private final Pricing pricing;
  private final RatesSheet rates;
  private final DraftSheet sheet;
  private final List<EstimateLine> lines = new ArrayList<>();
  private final TableDraft table;

  EstimateSheet(JobParts parts, Pricing pricing, RatesSheet rates, DraftSheet sheet) {
    this.parts = parts;
    this.pricing = pricing;
    this.rates = rates;
    this.sheet = sheet;
    materials();
    work();
    surcharges();
    table = new TableDraft(sheet, HEADING, lines.size());
    columns();
  }

  private void materials() {
    for (Rule rule : parts.rulebook().rules()) {
      rule.role()
          .filter(role -> parts.selection().of(role).isPresent())
          .ifPresent(role -> lines.add(material(rule, role + "_product")));
    }
  }

  private static EstimateLine material(Rule rule, String product) {
    String priced = "MATCH(" + product + ",price_product,0)";
    String bought = "MATCH(" + product + ",catalogue_id,0)";
    String none = "IF(" + rule.name() + "=0,";
    String square = "IF(INDEX(price_per," + priced + ")=\"square\",INDEX(catalogue_covers_per_pack,"
        + bought + ")/100,1)";
    return new EstimateLine(
        rule.name(),
        "INDEX(catalogue_description," + bought + ")",
        "IFERROR(INDEX(price_category," + priced + "),\"material\")",
        "IFERROR(INDEX(price_cost_code," + priced + ")&\"\",\"\")",
        rule.name(),
        "INDEX(catalogue_pack," + bought + ")",
        none + "0,INDEX(price_amount," + priced + ")*" + square + ")",
        "");
  }

  private void work() {
    List<Rate> all = rates.all();
    for (int item = 0; item < all.size(); item++) {
      lines.add(work(all.get(item), item));
    }
  }

  private EstimateLine work(Rate rate, int item) {
    WorkLine work =
        new WorkLine(rate, parts.rulebook(), pricing.terms().currency(), rates.table(), item);
    return new EstimateLine(
        "rate " + (item + 1),
        work.item(),
        work.category(),
        work.code(),
        work.quantity(),
        work.unit(),
        work.price(),
        "");
  }

  private void surcharges() {
    term("overhead", "\"overhead\"", "overhead_code", "ROUND(estimate_cost*overhead_rate,2)");
    term(
        "profit",
        "\"profit, \"&profit_kind",
        "profit_code",
        "ROUND(IF(profit_kind=\"margin\",estimate_base/(1-profit_rate),estimate_base*(1+profit_rate)),2)"
            + "-estimate_base");
    term(
        "discount",
        "\"discount, \"&discount_when",
        "discount_code",
        "-IF(discount_when=\"before tax\",discount_before,ROUND((estimate_price+estimate_tax)*discount_share+discount_amount,2))");
    term("tax", "\"tax, rounded by \"&tax_rounding", "tax_code", "estimate_tax");
  }

  private void term(String category, String item, String code, String amount) {
    lines.add(new EstimateLine(
        category, item, "\"" + category + "\"", code + "&\"\"", "1", "\"job\"", "", amount));
  }

  private void columns() {
    text("line_item", "Line", 44, line -> line.item);
    text("line_category", "Category", 13, line -> line.category);
    text("line_cost_code", "Cost code", 11, line -> line.code);
    table.add(Column.of(
        "line_quantity",
        "Quantity",
        11,
        item -> Entries.computed(lines.get(item).quantity, "#,##0.00")));
    text("line_unit", "Unit", 11, line -> line.unit);
    String money = pricing.terms().currency();
    table.add(Column.of(
        "line_price",
        "Price, " + money,
        12,
        item -> Entries.computed(
            lines.get(item).price.isEmpty()
                ? table.here(item, "line_amount")
                : lines.get(item).price,
            "#,##0.00##")));
    table.add(Column.of(
        "line_amount", "Amount, " + money, 14, item -> Entries.computed(amount(item), MONEY)));
    table.add(Column.of(
        "line_taxed", "Taxed amount, " + money, 13, item -> Entries.computed(taxed(item), MONEY)));
  }

  private void text(String name, String heading, double width, Function<EstimateLine, String> of) {
    table.add(
        Column.of(name, heading, width, item -> Entries.computed(of.apply(lines.get(item)), "@")));
  }

  private String amount(int item) {
    String given = lines.get(item).amount;
    return given.isEmpty()
        ? "ROUND(" + table.here(item, "line_quantity") + "*" + table.here(item, "line_price")
            + ",2)"
        : given;
  }

  /** What of a line is taxed: its amount less its share in a discount taken before tax. */
  private String taxed(int item) {
    String category = table.here(item, "line_category");
    boolean last = List.of("discount", "tax").contains(lines.get(item).key);
    return last
        ? "0"
        : "IF(INDEX(tax_applies,MATCH(" + category + ",tax_category,0))=\"yes\","
            + table.here(item, "line_amount") + "*share_left,0)";
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Estimate",
        "Every line is live and rounded to the cent, so the lines foot to the total, by category and"
            + " by cost code alike.");
    table.write(draft);
    new Footing(draft, HEADING + lines.size() + 3).write();
    Sheets.table(sheet, HEADING, 1);
  }

  /** What the lines add up to. */
  private final class Footing {
    private final Draft draft;
    private int row;

    Footing(Draft draft, int row) {
      this.draft = draft;
      this.row = row;
    }

    void write() {
      headings("Totals", "Amount");
      total("Cost of the job", "estimate_cost", cost());
      total("Cost and overhead", "estimate_base", "estimate_cost+" + at("overhead"));
      total("Price before discount and tax", "estimate_price", "estimate_base+" + at("profit"));
      total(
          "Discount before tax",
          "discount_before",
          "IF(discount_when=\"before tax\",ROUND(estimate_price*discount_share+discount_amount,2),0)");
      total(
          "Share left after it",
          "share_left",
          "IF(estimate_price=0,1,(estimate_price-discount_before)/estimate_price)");
      total("Tax rounded on each line", "tax_by_line", "SUMPRODUCT(ROUND(line_taxed*tax_rate,2))");
      total("Tax rounded once", "tax_by_invoice", "ROUND(SUM(line_taxed)*tax_rate,2)");
      total("Tax charged", "estimate_tax", "IF(tax_rounding=\"line\",tax_by_line,tax_by_invoice)");
      total("Total", "estimate_total", "SUM(line_amount)");
      categories();
      codes();
      payments();
    }

    /** The sum of the lines of cost, which stand before all others; nothing where there are none. */
    private String cost() {
      int count = lines.indexOf(
          lines.stream().filter(line -> line.key.equals("overhead")).findFirst().orElseThrow());
      return count == 0
          ? "0"
          : "SUM(" + table.ref(0, "line_amount") + ":" + table.ref(count - 1, "line_amount") + ")";
    }

    private String at(String key) {
      for (int item = 0; item < lines.size(); item++) {
        if (lines.get(item).key.equals(key)) {
          return table.here(item, "line_amount");
        }
      }
      throw new IllegalArgumentException("no line " + key);
    }

    private void headings(String... texts) {
      row++;
      for (int at = 0; at < texts.length; at++) {
        sheet.put(new Ref(row, at), Entry.text(texts[at]).as(Role.HEADING));
      }
      row++;
    }

    private void total(String label, String name, String formula) {
      Ref at = new Ref(row, 1);
      boolean sum = name.equals("estimate_total");
      sheet.put(new Ref(row, 0), Entries.label(label));
      sheet.put(
          at,
          Entry.formula(formula, new Content.Blank())
              .as(sum ? Role.TOTAL : Role.COMPUTED)
              .format(name.equals("share_left") ? "0.0000%" : MONEY));
      sheet.put(new Ref(row, 2), Entries.unit(name));
      draft.name(name, NAME + "!" + TableDraft.dollars(at));
      row++;
    }

    private void categories() {
      headings("By category", "Amount");
      int first = row;
      for (Category category : Category.Known.values()) {
        sum(Entries.label(category.toString()), "SUMIFS(line_amount,line_category," + here() + ")");
      }
      String others = IntStream.rangeClosed(first + 1, row)
          .mapToObj(at -> ",line_category,\"<>\"&$A" + at)
          .collect(Collectors.joining());
      sum(Entries.label(OWN), "SUMIFS(line_amount" + others + ")");
      foot(first, "category_total");
    }

    private void codes() {
      headings("By cost code", "Amount");
      int first = row;
      codeList()
          .forEach(code ->
              sum(Entries.label(code), "SUMIFS(line_amount,line_cost_code," + here() + ")"));
      sum(Entries.label("without a code"), "SUMIFS(line_amount,line_cost_code,\"\")");
      foot(first, "code_total");
    }

    private List<String> codeList() {
      List<String> codes = new ArrayList<>();
      pricing.prices().prices().values().forEach(price -> codes.add(price.costCode()));
      pricing.rates().rates().forEach(rate -> codes.add(rate.costCode()));
      var terms = pricing.terms().codes();
      codes.addAll(Arrays.asList(terms.overhead(), terms.profit(), terms.discount(), terms.tax()));
      return codes.stream().filter(code -> !code.isEmpty()).distinct().sorted().toList();
    }

    private String here() {
      return "$A" + (row + 1);
    }

    private void sum(Entry label, String formula) {
      sheet.put(new Ref(row, 0), label);
      sheet.put(new Ref(row, 1), Entries.computed(formula, MONEY));
      row++;
    }

    private void foot(int first, String name) {
      Ref at = new Ref(row, 1);
      sheet.put(new Ref(row, 0), Entry.text("Total").as(Role.TOTAL));
      sheet.put(
          at,
          Entry.formula("SUM(B" + (first + 1) + ":B" + row + ")", new Content.Blank())
              .as(Role.TOTAL)
              .format(MONEY));
      draft.name(name, NAME + "!" + TableDraft.dollars(at));
      row++;
    }

    /** Each share, and what is left to the last; all of it where the terms have none. */
    private void payments() {
      headings("Payments", "Amount", "Share");
      int first = row;
      int count = Math.max(1, pricing.terms().payments().size());
      for (int item = 1; item <= count; item++) {
        String when = "INDEX(payment_when," + item + ")";
        String share = "INDEX(payment_share," + item + ")";
        String before = item == 1 ? "" : "-SUM(B" + (first + 1) + ":B" + row + ")";
        sheet.put(
            new Ref(row, 0),
            Entries.computed(
                count == 1 ? "IF(" + when + "=\"\",\"in full\"," + when + ")" : when, "@"));
        sheet.put(
            new Ref(row, 1),
            Entries.computed(
                item == count ? "estimate_total" + before : "ROUND(estimate_total*" + share + ",2)",
                MONEY));
        sheet.put(new Ref(row, 2), Entries.computed(share, "0.0##%"));
        row++;
      }
      foot(first, "payment_total");
    }
  }
}
