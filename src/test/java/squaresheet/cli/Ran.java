package squaresheet.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine.Help.Ansi;

/**
 * A command as it ran: away from a terminal.
 *
 * @param exit its exit code
 * @param out what it printed
 * @param err what it complained of
 */
record Ran(int exit, String out, String err) {

  static Ran of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit = Squaresheet.run(new PrintWriter(out), new PrintWriter(err), Ansi.OFF, args);
    return new Ran(exit, out.toString(), err.toString());
  }

  String all() {
    return out + err;
  }
}
