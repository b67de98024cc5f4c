package squaresheet.tape;

import java.util.List;
import squaresheet.finding.Finding;
import squaresheet.finding.Read;
import squaresheet.finding.Where;

/**
 * A place and what was found there, from which complaints are made.
 *
 * @param where the place
 * @param found what stands there, as the writer would recognise it
 */
record Spot(Where where, String found) {

  /** What was found, in quotation marks. */
  String quoted() {
    return "'" + found + "'";
  }

  Finding say(Complaint complaint, String expected, String says) {
    return new Finding(complaint.info(), where, found, expected, says, "");
  }

  <T> Read<T> refuse(Complaint complaint, String expected, String says) {
    return Read.nothing(say(complaint, expected, says));
  }

  /** The value stands, and something is said about it. */
  <T> Read<T> remark(T value, Complaint complaint, String expected, String says) {
    return Read.of(value, List.of(say(complaint, expected, says)));
  }
}
