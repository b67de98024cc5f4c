package squaresheet.xlsx;

/** What to do where the file to be written is there already. */
public enum Existing {
  /** Leave it alone and say so. */
  REFUSE,
  /** Keep it beside the new one under another name. */
  KEEP_COPY,
  /** Replace it. */
  REPLACE
}
