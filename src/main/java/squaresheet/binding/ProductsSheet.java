package squaresheet.binding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.product.Catalogue;
import squaresheet.product.Product;
import squaresheet.product.Role;
import squaresheet.sheet.Block;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Sheet;
import squaresheet.takeoff.Rule;

/** The catalogue with what follows from it, and on a second sheet the products chosen and what they give to the rules. */
final class ProductsSheet {

  static final String NAME = "Products";
  static final String CHOSEN = "Chosen products";
  static final String GIVEN = "What the products give";

  private static final int HEADING = 3;

  private final JobParts parts;
  private final List<Product> products;
  private final DraftSheet sheet;
  private final DraftSheet chosen;
  private final TableDraft table;
  private int row = HEADING;

  ProductsSheet(JobParts parts, DraftSheet sheet, DraftSheet chosen) {
    this.parts = parts;
    this.products = parts.catalogue().products();
    this.sheet = sheet;
    this.chosen = chosen;
    table = new TableDraft(sheet, HEADING, Math.max(1, products.size()));
  }

  void write(Draft draft) {
    catalogue(draft);
    Sheets.head(
        chosen,
        "Chosen products",
        "Which product plays which part. Choose by the code of the sheet Products; what it gives to"
            + " the rules stands below.");
    heading("Part", "Product", "Description");
    for (Role role : Role.values()) {
      choice(draft, role);
    }
    row++;
    heading(GIVEN, "Value", "Unit", "Name");
    parts.rulebook().rules().stream()
        .filter(rule -> rule.per() == Rule.Per.JOB && rule.kind() == Rule.Kind.GIVEN)
        .forEach(rule -> given(draft, rule));
    chosen.width(0, 48).width(1, 22).width(2, 40).width(3, 30);
    chosen.freeze(HEADING + 1, 1);
    Sheets.page(chosen);
  }

  private void catalogue(Draft draft) {
    Sheets.head(
        sheet,
        "Products",
        "One product a row, by physical size and packing, lengths in inches. The last columns follow"
            + " from it.");
    for (String column : Catalogue.headings()) {
      table.add(Column.of(
          "catalogue_" + column,
          ProductCells.heading(column),
          width(column),
          item -> cell(item, column)));
    }
    derived("covers_per_piece", "Covers per piece, sq ft", "{length_in}*{exposure_in}/144");
    derived(
        "covers_per_pack",
        "Covers per pack, sq ft",
        "{length_in}*{exposure_in}/144*{pieces_per_pack}");
    derived("courses_per_square", "Courses up 10 ft", "120/{exposure_in}");
    table.write(draft);
    Sheets.table(sheet, HEADING, 1);
  }

  private static double width(String column) {
    return switch (column) {
      case "id" -> 18;
      case "kind" -> 15;
      case "description" -> 34;
      case "source", "note" -> 24;
      default -> 8.5;
    };
  }

  private Entry cell(int item, String column) {
    Optional<Content> content = products.isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(
            ProductCells.of(parts.catalogue(), products.get(item)).get(column));
    return content
        .map(it -> Entry.of(it).as(squaresheet.sheet.Role.INPUT).format(format(it)))
        .orElseGet(Entries::blankInput);
  }

  private static String format(Content content) {
    return content instanceof Content.Numeric ? "0.####" : "General";
  }

  /** A column that follows for what is laid in courses; empty for everything else. */
  private void derived(String name, String heading, String formula) {
    table.add(Column.of("catalogue_" + name, heading, 9, item -> {
      String filled = formula;
      for (String column : List.of("length_in", "exposure_in", "pieces_per_pack")) {
        filled = filled.replace("{" + column + "}", table.here(item, "catalogue_" + column));
      }
      String exposure = table.here(item, "catalogue_exposure_in");
      String length = table.here(item, "catalogue_length_in");
      String known = "AND(N(" + exposure + ")>0,N(" + length + ")>0)";
      return Entries.computed("IF(" + known + "," + filled + ",\"\")", "0.00##");
    }));
  }

  private void heading(String... texts) {
    for (int at = 0; at < texts.length; at++) {
      chosen.put(new Ref(row, at), Entry.text(texts[at]).as(squaresheet.sheet.Role.HEADING));
    }
    row++;
  }

  private void choice(Draft draft, Role role) {
    Ref at = new Ref(row, 1);
    String id = parts.selection().of(role).map(Product::id).orElse("");
    String name = role + "_product";
    chosen.put(new Ref(row, 0), Entries.label(words(role)));
    chosen.put(at, Entries.input(id));
    chosen.put(
        new Ref(row, 2),
        Entries.computed(
            "IF(" + name + "=\"\",\"\",INDEX(catalogue_description,MATCH(" + name
                + ",catalogue_id,0)))",
            "@"));
    draft.name(name, place(at));
    chosen.validate(Sheet.Validation.choiceFrom(
        new Block(at, at), "catalogue_id", "the code of a product of the sheet Products"));
    row++;
  }

  private static String words(Role role) {
    String words = role.toString().replace('_', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String place(Ref at) {
    return "'" + CHOSEN + "'!" + TableDraft.dollars(at);
  }

  private void given(Draft draft, Rule rule) {
    String formula = formula(rule);
    if (formula.isEmpty()) {
      return;
    }
    Ref at = new Ref(row, 1);
    chosen.put(new Ref(row, 0), Entries.label(rule.label()));
    chosen.put(at, Entries.computed(formula, "0.####"));
    chosen.put(new Ref(row, 2), Entries.unit(Entries.unit(rule.unit())));
    chosen.put(new Ref(row, 3), Entries.unit(rule.name()));
    draft.name(rule.name(), place(at));
    row++;
  }

  /** What looks a fact up in the catalogue; empty where the name is no fact of a product. */
  private static String formula(Rule rule) {
    if (rule.name().equals("rake_metal_shared")) {
      return "IF(rake_metal_product=eave_metal_product,1,0)";
    }
    for (Role role : Role.values()) {
      String prefix = role + "_";
      String fact = rule.name().startsWith(prefix) ? rule.name().substring(prefix.length()) : "";
      if (ProductCells.COLUMN_OF_FACT.containsKey(fact)) {
        return looked(role, ProductCells.COLUMN_OF_FACT.get(fact), rule);
      }
    }
    return "";
  }

  private static String looked(Role role, String column, Rule rule) {
    boolean feet = column.endsWith("_in") && rule.unit().toString().equals("ft");
    return "INDEX(catalogue_" + column + ",MATCH(" + role + "_product,catalogue_id,0))"
        + (feet ? "/12" : "");
  }

  /** The columns of the catalogue by our own heading. */
  static Map<String, String> headings() {
    Map<String, String> headings = new java.util.LinkedHashMap<>();
    Catalogue.headings().forEach(column -> headings.put(ProductCells.heading(column), column));
    return headings;
  }
}
