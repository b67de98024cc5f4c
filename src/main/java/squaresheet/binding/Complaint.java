package squaresheet.binding;

import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** What a reader of sheets can have to say. */
enum Complaint {
  SHEET_MISSING("sheet-missing", Severity.ERROR, "A sheet or table is missing"),
  COLUMN_MISSING("column-missing", Severity.ERROR, "A column is missing"),
  NAME_MISSING("defined-name-missing", Severity.ERROR, "A defined name is missing"),
  NOT_A_NUMBER("text-in-number-cell", Severity.ERROR, "A number cell holds text"),
  FAULT("error-in-input-cell", Severity.ERROR, "An input cell holds a spreadsheet error"),
  ROW_UNREAD("row-not-read", Severity.ERROR, "A row could not be read"),
  SMALLER_UNIT("bare-number-too-large", Severity.ERROR, "A bare number fits a smaller unit"),
  ROW_WAITS(
      "row-waits-for-plane",
      Severity.NOTE,
      "A row waits for one of its plane that could not be read"),
  WORDS_LEFT("words-not-read", Severity.NOTE, "Words under the tables are not read"),
  ROW_MISSING("plane-row-missing", Severity.ERROR, "A plane has no row where one is needed"),
  WORD_UNKNOWN("word-not-known", Severity.ERROR, "A word is none of those to choose from"),
  UNIT_UNDECLARED(
      "unit-not-declared", Severity.WARNING, "The unit of bare numbers is not declared"),
  MEASURED_UNSAID(
      "measured-how-unsaid", Severity.WARNING, "It is not said how a plane was measured"),
  EDGE_UNPLACED("edge-not-placed", Severity.WARNING, "A taped edge finds no side of its plane"),
  CORNER_UNPLACED("corner-not-placed", Severity.WARNING, "A corner belongs to no plane"),
  QUOTE_OPEN(
      "quote-not-closed", Severity.WARNING, "A quotation mark opens a cell and does not close it"),
  NOTHING_THERE("nothing-to-read", Severity.ERROR, "The file holds nothing to read"),
  NOT_BOUND("not-bound", Severity.NOTE, "A part of the workbook is not bound and not checked"),
  BINDING_STALE(
      "binding-does-not-fit", Severity.WARNING, "The stored binding does not fit the workbook"),
  NOT_IN_MODEL("row-not-in-model", Severity.WARNING, "A row of the sheet is none of the model's"),
  NO_ROOM("no-room-for-rows", Severity.ERROR, "There is no room for rows of the model"),
  NO_CELL("no-cell-for-value", Severity.WARNING, "The sheet has no cell for what the model knows"),
  MAKES_OTHER(
      "formula-differs-from-model",
      Severity.WARNING,
      "A formula makes something else than the model"),
  BINDING_GONE(
      "binding-is-gone", Severity.WARNING, "The workbook was bound once, but no longer is"),
  FORMAT_NEWER(
      "format-is-newer",
      Severity.ERROR,
      "The workbook was written in a newer format than is known"),
  UNREAD_OPEN(
      "unread-row-not-answered",
      Severity.ERROR,
      "A row of the tape sheet is neither in nor left out"),
  UNREAD_GONE(
      "unread-rows-gone", Severity.ERROR, "Rows that could not be read are no longer listed"),
  UNREAD_LEFT_OUT(
      "unread-row-left-out", Severity.NOTE, "A row of the tape sheet is left out on purpose"),
  ANSWER_NOT_HELD(
      "unread-row-not-typed", Severity.ERROR, "A row is said to be typed in, but is not there"),
  MAPPING_LINE("mapping-line-unread", Severity.ERROR, "A line of the mapping could not be read");

  private final String id;
  private final Severity severity;
  private final String title;

  Complaint(String id, Severity severity, String title) {
    this.id = id;
    this.severity = severity;
    this.title = title;
  }

  CheckInfo info() {
    return new CheckInfo(id, severity, title);
  }

  Finding at(Where where, String says) {
    return new Finding(info(), where, says);
  }

  Finding at(Where where, String found, String expected, String says) {
    return new Finding(info(), where, found, expected, says, "");
  }
}
