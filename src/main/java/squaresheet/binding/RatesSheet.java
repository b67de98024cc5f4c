package squaresheet.binding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import squaresheet.estimate.Rate;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.units.Money;

/** The company's rates, and what an hour of each crew costs. */
final class RatesSheet {

  static final String NAME = "Rates";

  private static final int HEADING = 3;

  private final List<Rate> rates;
  private final List<Map.Entry<String, Money>> crews;
  private final DraftSheet sheet;
  private final TableDraft table;
  private final TableDraft crewTable;

  RatesSheet(Pricing pricing, DraftSheet sheet) {
    this.sheet = sheet;
    rates = pricing.rates().rates();
    crews = new ArrayList<>(pricing.rates().crews().entrySet());
    crewTable = new TableDraft(sheet, HEADING, Math.max(1, crews.size()));
    table = new TableDraft(sheet, HEADING + crewTable.rows() + 4, Math.max(1, rates.size()));
    crews(pricing.terms().currency());
    rates();
  }

  private void crews(String money) {
    crewTable.add(Column.of(
        "crew_name",
        "Crew",
        26,
        item ->
            item < crews.size() ? Entries.input(crews.get(item).getKey()) : Entries.blankInput()));
    crewTable.add(Column.of(
        "crew_rate",
        "Loaded, " + money + "/hour",
        13,
        item -> item < crews.size()
            ? Entries.input(crews.get(item).getValue().amount().doubleValue(), "#,##0.00##")
            : Entries.blankInput()));
  }

  private void rates() {
    text("rate_item", "Work or hire", 26, Rate::item);
    table.add(Column.of("rate_category", "Category", 13, item -> row(item)
            .map(rate -> Entries.input(rate.category().toString()))
            .orElseGet(Entries::blankInput))
        .oneOf(PricesSheet.costs()));
    text("rate_cost_code", "Cost code", 11, Rate::costCode);
    text("rate_quantity", "Quantity, by its rule", 20, Rate::quantity);
    number("rate_amount", "Hours or money for each unit", 12, rate -> rate.amount());
    text("rate_unit", "Unit", 13, rate -> rate.unit().toString());
    text("rate_crew", "Crew (for hours)", 12, Rate::crew);
    number("rate_pitch_from", "Pitch from, rise per 12", 9, rate -> rate.band().pitchFrom());
    number(
        "rate_pitch_below", "Pitch below, rise per 12", 9, rate -> rate.band().pitchBelow());
    number("rate_stories_from", "Stories from", 9, rate -> rate.band().storiesFrom());
    number("rate_stories_below", "Stories below", 9, rate -> rate.band().storiesBelow());
  }

  private Optional<Rate> row(int item) {
    return item < rates.size() ? Optional.of(rates.get(item)) : Optional.empty();
  }

  private void text(String name, String heading, double width, Function<Rate, String> of) {
    table.add(Column.of(name, heading, width, item -> row(item)
        .map(of)
        .map(Entries::input)
        .orElseGet(Entries::blankInput)));
  }

  private void number(String name, String heading, double width, Function<Rate, BigDecimal> of) {
    table.add(Column.of(name, heading, width, item -> row(item)
        .map(rate -> Entries.input(of.apply(rate).doubleValue(), "General"))
        .orElseGet(Entries::blankInput)));
  }

  TableDraft table() {
    return table;
  }

  List<Rate> all() {
    return rates;
  }

  void write(Draft draft) {
    Sheets.head(
        sheet,
        "Rates",
        "What an hour of each crew costs, loaded; and hours or money for each unit of work. Several"
            + " rows of one work divide it by pitch and by height.");
    crewTable.write(draft);
    sheet.put(new Ref(HEADING + crewTable.rows() + 3, 0), Entry.text("Rates").as(Role.LABEL));
    table.write(draft);
    Sheets.table(sheet, 2, 1);
  }
}
