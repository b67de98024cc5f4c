package squaresheet.cli;

/** A command ends here, with one sentence and an exit code. */
final class CannotBeDone extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final Exit exit;

  CannotBeDone(Exit exit, String sentence) {
    super(sentence);
    this.exit = exit;
  }

  Exit exit() {
    return exit;
  }
}
