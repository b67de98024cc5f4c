package squaresheet.binding;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import squaresheet.estimate.Category;
import squaresheet.finding.Where;
import squaresheet.job.JobInput;
import squaresheet.job.JobResult;
import squaresheet.product.Catalogue;
import squaresheet.sheet.Content;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;
import squaresheet.sheet.DraftSheet.Entry;
import squaresheet.sheet.DraftSheet.Paper;
import squaresheet.sheet.Ref;
import squaresheet.sheet.Role;
import squaresheet.sheet.Workbook;
import squaresheet.takeoff.Rule;
import squaresheet.takeoff.RuleLine;
import squaresheet.takeoff.Rulebook;

/** The blank workbooks a company starts from, each drawn by the code that reads it. */
public final class Templates {

  private static final int HEADING = 3;

  /** The categories of an estimate, in its order. */
  private static final List<String> CATEGORIES =
      Arrays.stream(Category.Known.values()).map(Category::toString).toList();

  private Templates() {}

  /**
   * A list of a company as a workbook holds it.
   *
   * @param headings its headings
   * @param rows what stands under them
   * @param table the place of the headings
   */
  public record Rows(List<String> headings, List<Catalogue.Row> rows, Where table) {
    public Rows {
      headings = List.copyOf(headings);
      rows = List.copyOf(rows);
    }
  }

  /** The list that stands under these headings in a workbook of a company, whatever its sheet is called. */
  public static Optional<Rows> list(Workbook book, String file, List<String> needed) {
    return ListSheet.find(book, file, needed);
  }

  /** Every template by its file name. The job is one to overtype: a plain roof of two planes. */
  public static Map<String, Draft> all(JobInput example, JobResult result) {
    Map<String, Draft> all = new LinkedHashMap<>();
    all.put("blank-job.xlsx", JobWorkbook.write(example, result));
    all.put("field-sheet.xlsx", FieldSheet.blank(Paper.LETTER));
    all.put("field-sheet-a4.xlsx", FieldSheet.blank(Paper.A4));
    all.put("product-list.xlsx", products(example.company().catalogue()));
    all.put("company-rulebook.xlsx", rulebook(example.company().rulebook()));
    all.put("totals-book.xlsx", totals());
    return all;
  }

  /** A list of products to overtype, under the headings that a catalogue is read by. */
  public static Draft products(Catalogue catalogue) {
    Draft draft = new Draft();
    DraftSheet sheet = draft.sheet("Products");
    how(
        draft,
        "Product list",
        "One product a row, by physical size and packing; what follows from it is worked out. Keep"
            + " this workbook, or its sheet Products as csv, in the company's folder; keep its headings.");
    List<String> headings = Catalogue.headings();
    headings(sheet, headings);
    for (int item = 0; item < catalogue.products().size(); item++) {
      Map<String, Content> cells =
          ProductCells.of(catalogue, catalogue.products().get(item));
      for (int at = 0; at < headings.size(); at++) {
        Content content = cells.getOrDefault(headings.get(at), new Content.Blank());
        sheet.put(new Ref(1 + item, at), Entry.of(content).as(Role.INPUT));
      }
    }
    Sheets.table(sheet, 0, 1);
    Fit.fit(sheet);
    return draft;
  }

  /** A rulebook to edit, under the headings that a rulebook is read by. */
  public static Draft rulebook(Rulebook rulebook) {
    Draft draft = new Draft();
    DraftSheet sheet = draft.sheet("Rules");
    how(
        draft,
        "Company rulebook",
        "One rule a row, each an ordinary formula over names. Delete the rows you keep as they are,"
            + " change the others, and keep this workbook, or its sheet Rules as csv, in the company's"
            + " folder: a rule here goes before the standard rule of the same name. Keep the headings.");
    headings(sheet, RuleLine.columns());
    int row = 1;
    for (Rule rule : rulebook.rules()) {
      List<String> texts = RuleLine.texts(rule);
      for (int at = 0; at < texts.size(); at++) {
        sheet.put(new Ref(row, at), Entries.input(texts.get(at)).format("@"));
      }
      row++;
    }
    Sheets.table(sheet, 0, 1);
    Fit.fit(sheet);
    return draft;
  }

  /** A second sheet that says what the first is for. */
  private static void how(Draft draft, String title, String about) {
    DraftSheet sheet = draft.sheet("How to use it");
    sheet.put(new Ref(0, 0), Entry.text(title).as(Role.TITLE));
    sheet.put(new Ref(2, 0), Entries.note(about));
    sheet.width(0, 90);
    Sheets.page(sheet);
    Fit.fit(sheet);
  }

  /** A book to collect the totals of many jobs in. */
  public static Draft totals() {
    Draft draft = new Draft();
    DraftSheet sheet = draft.sheet("Totals");
    Sheets.head(
        sheet,
        "Totals of jobs",
        "Paste the totals of verified job workbooks here, a row each; the sums are live. A workbook"
            + " that has errors gives no totals and does not belong here.");
    int rows = 24;
    TableDraft table = new TableDraft(sheet, HEADING, rows);
    table.add(text("total_job", "Job", 28));
    table.add(text("total_file", "File", 24));
    table.add(text("total_date", "Date", 12));
    for (String category : CATEGORIES) {
      table.add(money("total_" + category, category));
    }
    table.add(Column.of(
            "total_price",
            "total",
            13,
            item -> Entries.computed(
                "SUM(" + table.here(item, "total_material") + ":" + table.here(item, "total_tax")
                    + ")",
                "#,##0.00"))
        .inTotal());
    table.write(draft);
    Sheets.table(sheet, HEADING, 1);
    DraftValues.store(draft);
    Fit.fit(sheet);
    return draft;
  }

  private static Column text(String name, String heading, double width) {
    return Column.of(name, heading, width, item -> Entries.blankInput());
  }

  private static Column money(String name, String heading) {
    return Column.of(name, heading, 12, item -> Entries.blankInput().format("#,##0.00"))
        .inTotal();
  }

  private static void headings(DraftSheet sheet, List<String> headings) {
    for (int at = 0; at < headings.size(); at++) {
      sheet.put(new Ref(0, at), Entry.text(headings.get(at)).as(Role.HEADING));
    }
  }
}
