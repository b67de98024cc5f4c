package squaresheet.finding;

/** What was said when something was refused, if it was our own code that refused it; a library's words reach nobody. */
public final class OwnWords {

  private static final String OURS = "squaresheet.";
  private static final String ELSE = "it must be one that can be read, but cannot";

  private OwnWords() {}

  /** The sentence of a refusal. */
  public static String of(IllegalArgumentException refused) {
    StackTraceElement[] from = refused.getStackTrace();
    boolean own = refused.getClass() == IllegalArgumentException.class
        && from.length > 0
        && from[0].getClassName().startsWith(OURS);
    return own && refused.getMessage() != null ? refused.getMessage() : ELSE;
  }
}
