package squaresheet.xlsx;

/** Carries one sentence for the user from deep inside a file to the door of this room, and never past it. */
final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  Refusal(String says) {
    super(says, null, false, false);
  }

  String says() {
    return getMessage();
  }
}
