package squaresheet.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Help.Ansi;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Prints for people: results to standard output, complaints about the command itself to standard error. */
final class Console {

  private final PrintWriter out;
  private final PrintWriter err;
  private final Ansi ansi;

  Console(PrintWriter out, PrintWriter err, Ansi ansi) {
    this.out = out;
    this.err = err;
    this.ansi = ansi;
  }

  /** Whether a person is watching. */
  boolean isTerminal() {
    return ansi.enabled();
  }

  /** One line of results. */
  void say(String line) {
    out.println(line);
    out.flush();
  }

  /** One line of complaint. */
  void complain(String line) {
    err.println(line);
    err.flush();
  }

  /** Every finding: its weight, its place, what it says, then what is there, what it should be and what that is worth. */
  void say(List<Finding> findings) {
    findings.forEach(this::say);
  }

  void say(Finding finding) {
    say(weight(finding.info().severity()) + " " + finding.where() + "  ["
        + finding.info().id() + "]");
    say("    " + finding.says());
    detail("there is", finding.found());
    detail("should be", finding.expected());
    detail("worth", finding.worth());
  }

  private void detail(String label, String value) {
    if (!value.isEmpty()) {
      say(String.format("    %-9s %s", label, value));
    }
  }

  /** The word comes first, so that nothing depends on the colour, which only a terminal gets. */
  private String weight(Severity severity) {
    return switch (severity) {
      case ERROR -> ansi.string("@|bold,red ERROR  |@");
      case WARNING -> ansi.string("@|bold WARNING|@");
      case NOTE -> "NOTE   ";
    };
  }
}
