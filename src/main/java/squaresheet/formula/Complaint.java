package squaresheet.formula;

/** Why a text is no formula: a place in it and a sentence with what to write instead. Carries no stack. */
final class Complaint extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final int place;

  Complaint(int place, String sentence) {
    super(Caret.onOneLine(sentence), null, false, false);
    this.place = place;
  }

  /** Where, 0 for the first character after the equals sign. */
  int place() {
    return place;
  }
}
