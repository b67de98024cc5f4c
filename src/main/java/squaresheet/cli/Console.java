package squaresheet.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Help.Ansi;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;

/** Prints for people: results to standard output, complaints about the command itself to standard error. */
final class Console {

  private final PrintWriter out;
  private final PrintWriter err;
  private final Ansi ansi;
  private final Optional<BufferedReader> answers;

  /**
   * A console.
   *
   * @param answers where a person answers from; nothing where nobody can be asked
   */
  Console(PrintWriter out, PrintWriter err, Ansi ansi, Optional<BufferedReader> answers) {
    this.out = out;
    this.err = err;
    this.ansi = ansi;
    this.answers = answers;
  }

  /** Whether there is someone to answer. */
  boolean mayAsk() {
    return answers.isPresent();
  }

  /** What the person answers; nothing where there is nobody, or the answers have ended. */
  Optional<String> ask(String question) {
    out.print(question);
    out.flush();
    return answers.flatMap(Console::line);
  }

  private static Optional<String> line(BufferedReader answers) {
    try {
      return Optional.ofNullable(answers.readLine());
    } catch (IOException ended) {
      return Optional.empty();
    }
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
