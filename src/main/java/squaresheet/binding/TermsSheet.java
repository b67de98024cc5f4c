package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import squaresheet.estimate.Category;
import squaresheet.estimate.Profit;
import squaresheet.estimate.Terms;
import squaresheet.sheet.Block;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Sheet;

/** What is put on the cost and taken off, what is taxed, and how it is paid. */
final class TermsSheet {

  static final String NAME = "Terms";

  private static final String SHARE = "0.0##%";

  /** Rows for categories of the company's own. */
  private static final int FREE = 2;

  private final Terms terms;
  private final DraftSheet sheet;
  private int row = 3;

  TermsSheet(Pricing pricing, DraftSheet sheet) {
    this.terms = pricing.terms();
    this.sheet = sheet;
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Terms",
        "Markup is put on the cost, margin is a share of the price: not the same number. What is taxed"
            + " is a matter of local law.");
    headings("Term", "Value", "Cost code", "Name");
    text(draft, "terms_currency", "Currency", terms.currency(), List.of());
    number(draft, "overhead_rate", "Overhead, share of cost", terms.overhead().toDouble(), SHARE);
    code(draft, "overhead_code", terms.codes().overhead());
    boolean margin = terms.profit() instanceof Profit.Margin;
    text(
        draft,
        "profit_kind",
        "Profit is",
        margin ? "margin" : "markup",
        List.of("markup", "margin"));
    number(draft, "profit_rate", "Profit rate", stated(), SHARE);
    code(draft, "profit_code", terms.codes().profit());
    discount(draft);
    tax(draft);
    row++;
    taxed(draft);
    payments(draft);
    sheet.width(0, 34).width(1, 16).width(2, 12).width(3, 22);
    Sheets.page(sheet);
  }

  private double stated() {
    return terms.profit() instanceof Profit.Margin margin
        ? margin.stated().toDouble()
        : terms.profit().toMarkup().stated().toDouble();
  }

  private void discount(Draft draft) {
    number(
        draft,
        "discount_share",
        "Discount, share of the price",
        terms.discount().share().toDouble(),
        SHARE);
    code(draft, "discount_code", terms.codes().discount());
    number(
        draft,
        "discount_amount",
        "Discount, amount",
        terms.discount().amount().amount().doubleValue(),
        "#,##0.00");
    text(
        draft,
        "discount_when",
        "Discount is taken",
        terms.discount().beforeTax() ? "before tax" : "after tax",
        List.of("before tax", "after tax"));
  }

  private void tax(Draft draft) {
    number(draft, "tax_rate", "Tax rate", terms.tax().rate().toDouble(), "0.0###%");
    code(draft, "tax_code", terms.codes().tax());
    text(
        draft,
        "tax_rounding",
        "Tax is rounded on each line, or once",
        terms.tax().rounding().toString(),
        List.of("line", "invoice"));
  }

  private void taxed(Draft draft) {
    List<Category> categories = new ArrayList<>(List.of(Category.Known.values()));
    categories.removeIf(category -> !category.isBeforeDiscount());
    int ours = categories.size();
    categories.addAll(terms.tax().own());
    TableDraft table = new TableDraft(sheet, row, categories.size() + FREE);
    table.add(Column.of(
        "tax_category",
        "Category, yours too",
        34,
        item -> item < ours
            ? Entries.label(categories.get(item).toString())
            : item < categories.size()
                ? Entries.input(categories.get(item).toString())
                : Entries.blankInput()));
    table.add(Column.of(
            "tax_applies",
            "Taxed",
            16,
            item -> item < categories.size()
                ? Entries.input(terms.tax().taxed().contains(categories.get(item)) ? "yes" : "no")
                : Entries.blankInput())
        .oneOf(List.of("yes", "no")));
    table.write(draft);
    row = table.end() + 1;
  }

  private void payments(Draft draft) {
    List<Terms.Share> shares = terms.payments();
    TableDraft table = new TableDraft(sheet, row, Math.max(1, shares.size()));
    table.add(Column.of(
        "payment_when",
        "Payment",
        34,
        item ->
            item < shares.size() ? Entries.input(shares.get(item).when()) : Entries.blankInput()));
    table.add(Column.of(
            "payment_share",
            "Share of the total",
            16,
            item -> item < shares.size()
                ? Entries.input(shares.get(item).share().toDouble(), SHARE)
                : Entries.blankInput())
        .inTotal());
    table.write(draft);
    row = table.end();
  }

  private void headings(String... texts) {
    for (int at = 0; at < texts.length; at++) {
      sheet.put(new Ref(row, at), Entry.text(texts[at]).as(Role.HEADING));
    }
    row++;
  }

  private void number(Draft draft, String name, String label, double value, String format) {
    line(draft, name, label, Entries.input(value, format));
  }

  private void text(Draft draft, String name, String label, String value, List<String> choices) {
    Ref at = line(draft, name, label, Entries.input(value));
    if (!choices.isEmpty()) {
      sheet.validate(Sheet.Validation.choice(
          new Block(at, at), choices, "one of: " + String.join(", ", choices)));
    }
  }

  private Ref line(Draft draft, String name, String label, Entry value) {
    Ref at = new Ref(row, 1);
    sheet.put(new Ref(row, 0), Entries.label(label));
    sheet.put(at, value);
    sheet.put(new Ref(row, 3), Entries.unit(name));
    draft.name(name, NAME + "!" + TableDraft.dollars(at));
    row++;
    return at;
  }

  /** The cost code beside the line before. */
  private void code(Draft draft, String name, String code) {
    Ref at = new Ref(row - 1, 2);
    sheet.put(at, Entries.input(code));
    draft.name(name, NAME + "!" + TableDraft.dollars(at));
  }
}
