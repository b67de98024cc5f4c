package squaresheet.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import squaresheet.product.Catalogue;
import squaresheet.takeoff.RuleLine;

/**
 * A list of the company, or a table of the roof, as it stands on a sheet of a job workbook.
 *
 * @param what what it is called
 * @param key what each row must name
 * @param heading what stands over the column of that name
 * @param columns the defined names of its columns, the key's first; none where every row has defined names of its own
 * @param texts so many texts in a row, or one number, are an entry; fewer are words for people
 */
record Listed(String what, String key, String heading, List<String> columns, int texts) {

  private static final int NEVER_BY_CHANCE = 3;
  private static final int PAIR = 2;

  /** Every list, in the order in which those of one sheet stand on it. */
  static final List<Listed> ALL = List.of(
      of("the crews", "crew", "Crew", NEVER_BY_CHANCE, "crew_name", "crew_rate"),
      of(
          "the rates",
          "work or hire",
          "Work or hire",
          NEVER_BY_CHANCE,
          "rate_item",
          "rate_category",
          "rate_cost_code",
          "rate_quantity",
          "rate_amount",
          "rate_unit",
          "rate_crew",
          "rate_pitch_from",
          "rate_pitch_below",
          "rate_stories_from",
          "rate_stories_below"),
      of(
          "the prices",
          "product",
          "Product",
          NEVER_BY_CHANCE,
          "price_product",
          "price_amount",
          "price_per",
          "price_category",
          "price_cost_code",
          "price_quoted"),
      new Listed(
          "the products",
          "id",
          "Id",
          Catalogue.headings().stream().map(it -> "catalogue_" + it).toList(),
          NEVER_BY_CHANCE),
      new Listed(
          "the own rules",
          "rule",
          "Name",
          RuleLine.columns().stream().map(OwnRulesSheet::cells).toList(),
          PAIR),
      of("the terms", "term", "Term", PAIR),
      of("the taxed categories", "category", "Category", PAIR, "tax_category", "tax_applies"),
      of("the payments", "payment", "Payment", NEVER_BY_CHANCE, "payment_when", "payment_share"),
      of("the chosen products", "part", "Part", PAIR),
      roof("planes", "plane", "Plane"),
      roof("openings", "opening", "Opening"),
      roof("corners", "plane", "Plane"),
      roof("edges", "remarks", "Edge"));

  /** A table of the roof, which is read by its own reader: only rows that this passes over are none of it. */
  private static Listed roof(String table, String property, String heading) {
    Map<String, String> names = JobTables.ALL.get(table);
    List<String> columns = new ArrayList<>(List.of(names.get(property)));
    names.values().stream().filter(it -> !columns.contains(it)).forEach(columns::add);
    return new Listed(
        "the " + table, heading.toLowerCase(Locale.ROOT), heading, columns, NEVER_BY_CHANCE);
  }

  private static Listed of(String what, String key, String heading, int texts, String... columns) {
    return new Listed(what, key, heading, List.of(columns), texts);
  }

  /** A defined name by which the sheet of the list is found. */
  String anchor() {
    if (!columns.isEmpty()) {
      return columns.get(0);
    }
    return what.equals("the terms") ? "terms_currency" : "shingle_product";
  }

  /** Whether a text stands over rows of it. */
  boolean isHeading(String text) {
    return text.equalsIgnoreCase(heading)
        || text.toLowerCase(java.util.Locale.ROOT)
            .startsWith(heading.toLowerCase(java.util.Locale.ROOT) + ",")
        || (columns.isEmpty() && text.equals(ProductsSheet.GIVEN));
  }

  /** The names of the columns that stand for the list's cells and for nothing else. */
  static Stream<String> names() {
    return ALL.stream().flatMap(list -> list.columns.stream());
  }
}
