package squaresheet.xlsx;

import java.util.Optional;
import squaresheet.finding.CheckInfo;

/** Carries one sentence for the user from deep inside a file to the door of this room, and never past it. */
final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final boolean isFinal;
  private final transient Optional<CheckInfo> info;

  Refusal(String says) {
    this(says, false, Optional.empty());
  }

  private Refusal(String says, boolean isFinal, Optional<CheckInfo> info) {
    super(says, null, false, false);
    this.isFinal = isFinal;
    this.info = info;
  }

  /** A refusal with a card of its own. */
  static Refusal of(CheckInfo info, String says) {
    return new Refusal(says, false, Optional.of(info));
  }

  /** A refusal that ends the reading of the whole file, not of one part only. */
  static Refusal ofAll(String says) {
    return new Refusal(says, true, Optional.empty());
  }

  /** The same, thrown on where it ends the reading of the whole file. */
  Refusal unlessOfAll() {
    if (isFinal) {
      throw this;
    }
    return this;
  }

  /** Its card, or the usual one. */
  CheckInfo info(CheckInfo usual) {
    return info.orElse(usual);
  }

  String says() {
    return getMessage();
  }
}
