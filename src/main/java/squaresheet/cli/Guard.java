package squaresheet.cli;

import java.util.Arrays;
import java.util.function.Supplier;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;

/** Keeps what goes wrong at one file from the others: it becomes a finding that names the file. */
final class Guard {

  private static final CheckInfo NOT_DONE =
      new CheckInfo("file-not-done", Severity.ERROR, "A file could not be gone through to its end");

  private Guard() {}

  /** What comes of a file by the name it goes by; where nothing does, why. */
  static <T> Read<T> over(String file, Supplier<Read<T>> work) {
    try {
      return work.get();
    } catch (CannotBeDone told) {
      return not(file, told.getMessage());
    } catch (RuntimeException broken) {
      return not(file, fault(broken));
    } catch (OutOfMemoryError | StackOverflowError tooMuch) {
      return not(file, tooMuch());
    }
  }

  private static <T> Read<T> not(String file, String says) {
    return Read.nothing(new Finding(NOT_DONE, new Where.InFile(file), says));
  }

  /** What is said of a fault of the program. */
  static String fault(Exception broken) {
    return "it could not be done, through no fault of yours (" + place(broken)
        + "); please report this with the command you gave";
  }

  /** Where in our own code it happened, for whoever it is reported to. */
  private static String place(Exception broken) {
    return Arrays.stream(broken.getStackTrace())
        .filter(step -> step.getClassName().startsWith("squaresheet."))
        .findFirst()
        .map(step -> step.getFileName() + " line " + step.getLineNumber())
        .orElse("outside of it");
  }

  /** What is said where memory did not do. */
  static String tooMuch() {
    return "it could not be done, because a workbook asks for more than the memory given to this program ("
        + (Runtime.getRuntime().maxMemory() >> 20) + " MB)";
  }
}
