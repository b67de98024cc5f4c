package squaresheet.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Optional;
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
    return of(Optional.empty(), args);
  }

  /** The command with a person at it, who answers these lines. */
  static Ran answering(String lines, String... args) {
    return of(Optional.of(new BufferedReader(new StringReader(lines))), args);
  }

  private static Ran of(Optional<BufferedReader> answers, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit = Squaresheet.run(answers, new PrintWriter(out), new PrintWriter(err), Ansi.OFF, args);
    return new Ran(exit, out.toString(), err.toString());
  }

  String all() {
    return out + err;
  }
}
