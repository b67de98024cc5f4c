package squaresheet.cli;

/** What a command tells the shell. */
enum Exit {
  /** All is well; totals, where asked for, are given. */
  FINE(0),
  /** The program could not do it: a file that cannot be written, say. */
  FAILED(1),
  /** The command was given wrongly. */
  WRONG_USE(2),
  /** Findings withhold the totals. */
  WITHHELD(3);

  private final int code;

  Exit(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }

  /** The graver of two. */
  Exit and(Exit other) {
    return this == FAILED || other == FAILED ? FAILED : compareTo(other) >= 0 ? this : other;
  }
}
