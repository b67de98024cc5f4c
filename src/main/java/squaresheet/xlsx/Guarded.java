package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Path;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Read;

/** The wall behind the door of this room: whatever a file does to a reader, the user gets one sentence. */
final class Guarded {

  private Guarded() {}

  /** Something done with a user's file. */
  interface Work<T> {
    Read<T> run() throws IOException;
  }

  static <T> Read<T> reading(Path file, CheckInfo info, Work<T> work) {
    String says;
    try {
      return work.run();
    } catch (Refusal refusal) {
      says = refusal.says();
    } catch (IOException failure) {
      says = Unreadable.says(failure);
    } catch (OutOfMemoryError | StackOverflowError tooMuch) {
      says = "holds more than fits into the memory given to this program ("
          + (Runtime.getRuntime().maxMemory() >> 20) + " MB)";
    } catch (RuntimeException damaged) {
      says =
          "must be an .xlsx workbook, but is damaged; open it in a spreadsheet program and save it"
              + " again";
    }
    return Read.nothing(Complaint.of(info, file, "'" + Complaint.name(file) + "' " + says));
  }
}
