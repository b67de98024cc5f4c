package squaresheet.binding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import squaresheet.job.Unread;
import squaresheet.sheet.Draft;
import squaresheet.sheet.DraftSheet;

/**
 * The rows of the tape sheet that could not be read, with what was understood of them, and room to answer: each is typed in
 * after all, or left out on purpose for a reason.
 */
final class NotReadSheet {

  static final String NAME = "Not read";

  static final String WHERE = "unread_where";
  static final String KIND = "unread_kind";
  static final String CALLED = "unread_name";
  static final String WRITTEN = "unread_written";
  static final String UNDERSTOOD = "unread_understood";
  static final String WHY = "unread_why";
  static final String ANSWER = "unread_answer";
  static final String REASON = "unread_reason";

  /** 1 in every row that is still to be answered. */
  static final String OPEN = "unread_open";

  /** The document's property that keeps how many rows there are, should the sheet be lost. */
  static final String COUNT = "Squaresheet rows not read";

  private static final int HEADING = 3;

  private final List<Unread> unread;
  private final TableDraft table;

  private NotReadSheet(DraftSheet sheet, List<Unread> unread) {
    this.unread = new ArrayList<>(unread);
    this.unread.sort(Comparator.comparing(Unread::kind));
    table = new TableDraft(sheet, HEADING, unread.size());
  }

  static void write(Draft draft, List<Unread> unread) {
    draft.property(COUNT, Integer.toString(unread.size()));
    DraftSheet sheet = draft.sheet(NAME);
    Sheets.head(
        sheet,
        "Not read",
        "These rows of the tape sheet are not in this workbook. Mend the tape sheet and import it again; or type a row in here,"
            + " on its own sheet, and choose '" + Unread.Answer.TYPED + "'; or choose '"
            + Unread.Answer.LEFT_OUT
            + "' and write the reason beside it. No totals until each is answered.");
    new NotReadSheet(sheet, unread).write(draft);
    Sheets.table(sheet, HEADING, 0);
  }

  private void write(Draft draft) {
    note(WHERE, "Where", 24, Unread::where);
    note(KIND, "Row of", 9, one -> one.kind().toString());
    note(CALLED, "Called", 16, Unread::name);
    note(WRITTEN, "As written", 34, one -> String.join(" | ", one.written()));
    note(UNDERSTOOD, "Understood", 30, Unread::understood);
    note(WHY, "Why not", 40, Unread::why);
    table.add(Column.of(
            ANSWER,
            "Answer",
            20,
            item -> Entries.input(unread.get(item).answer().toString()))
        .oneOf(Unread.Answer.words()));
    table.add(Column.of(
        REASON,
        "Reason, or the name it was typed under",
        34,
        item -> Entries.input(unread.get(item).reason())));
    table.add(Column.of(OPEN, "Still open", 7, item -> Entries.computed(open(item), "0")));
    table.write(draft);
  }

  private void note(String name, String heading, double width, Function<Unread, String> text) {
    table.add(Column.of(name, heading, width, item -> Entries.note(text.apply(unread.get(item)))));
  }

  private String open(int item) {
    String answer = "TRIM(" + table.here(item, ANSWER) + ")";
    return "IF(OR(" + answer + "=\"" + Unread.Answer.TYPED + "\",AND(" + answer + "=\""
        + Unread.Answer.LEFT_OUT + "\",TRIM(" + table.here(item, REASON) + ")<>\"\")),0,1)";
  }

  /** What the first sheet says: what is missing, or how every row was answered. */
  static String summary() {
    String count = "SUM(" + OPEN + ")";
    String first = "MATCH(1," + OPEN + ",0)";
    String subject = "INDEX(" + KIND + "," + first + ")&\" \"&IF(INDEX(" + CALLED + "," + first
        + ")=\"\",\"without a name\",INDEX(" + CALLED + "," + first + "))";
    String left = "COUNTIF(" + ANSWER + ",\"" + Unread.Answer.LEFT_OUT + "\")";
    return "IF(" + count + "=0,IF(" + left + "=0,\"Every row of the tape sheet is in\","
        + left + "&\" of the rows of the tape sheet left out on purpose, see Not read\"),"
        + "\"NOT TO BE ORDERED: \"&" + subject + "&IF(" + count + "=1,\" is missing\",\" and \"&("
        + count + "-1)&IF(" + count + "=2,\" more row\",\" more rows\")&\" are missing\"))";
  }
}
