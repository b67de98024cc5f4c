package squaresheet.xlsx;

/** Carries one sentence for the user from deep inside a file to the door of this room, and never past it. */
final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final boolean isFinal;

  Refusal(String says) {
    this(says, false);
  }

  private Refusal(String says, boolean isFinal) {
    super(says, null, false, false);
    this.isFinal = isFinal;
  }

  /** A refusal that ends the reading of the whole file, not of one part only. */
  static Refusal ofAll(String says) {
    return new Refusal(says, true);
  }

  /** The same, thrown on where it ends the reading of the whole file. */
  Refusal unlessOfAll() {
    if (isFinal) {
      throw this;
    }
    return this;
  }

  String says() {
    return getMessage();
  }
}
