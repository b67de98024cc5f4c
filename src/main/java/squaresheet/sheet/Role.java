package squaresheet.sheet;

/** What a cell is for. Decides how it looks; roles are told apart by border, weight, slant or pattern, never by colour alone. */
public enum Role {
  /** Nothing in particular. */
  PLAIN("plain"),
  /** The title of a sheet: large and bold. */
  TITLE("title"),
  /** The head of a column: bold, a thick rule below, grey ground. */
  HEADING("heading"),
  /** The unit of a column or a cell: slanted. */
  UNIT("unit"),
  /** The name of what stands beside it. */
  LABEL("label"),
  /** To be typed by a person: boxed with a solid border on a light ground. */
  INPUT("type here"),
  /** Comes from a formula: boxed with a dotted border, no ground. */
  COMPUTED("computed, leave alone"),
  /** A sum: bold, a double rule below. */
  TOTAL("total"),
  /** A remark: slanted, wrapped. */
  NOTE("note"),
  /** A caution about people's safety: bold, thick frame, wrapped. */
  CAUTION("caution"),
  /** Something the check found wrong: bold, dashed frame, dotted ground. */
  FLAG("found wrong");

  private final String legend;

  Role(String legend) {
    this.legend = legend;
  }

  /** Two or three words for the legend. */
  public String legend() {
    return legend;
  }
}
