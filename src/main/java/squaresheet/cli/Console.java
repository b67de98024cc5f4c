package squaresheet.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import picocli.CommandLine.Help.Ansi;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.sheet.Content;

/** Prints for people: results to standard output, complaints about the command itself to standard error. */
final class Console {

  /** What is left to steer a terminal by when the control characters of files are gone. */
  private static final Pattern STEERING = Pattern.compile("[\\x7F-\\x9F]");

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
    out.print(legible(question));
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

  /** One line of results. What a file holds must not steer the terminal, so control characters are shown as a mark. */
  void say(String line) {
    print("", line);
  }

  private void print(String coloured, String line) {
    out.println(coloured + legible(line));
    out.flush();
  }

  /** One line of complaint. */
  void complain(String line) {
    err.println(legible(line));
    err.flush();
  }

  private static String legible(String line) {
    return STEERING.matcher(Content.legible(line)).replaceAll("\uFFFD");
  }

  /** Every finding: its weight, its place, what it says, then what is there, what it should be and what that is worth. */
  void say(List<Finding> findings) {
    findings.forEach(this::say);
  }

  void say(Finding finding) {
    print(
        weight(finding.info().severity()),
        " " + finding.where() + "  [" + finding.info().id() + "]");
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
