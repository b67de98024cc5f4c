package squaresheet.cli;

import java.io.BufferedReader;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Help.Ansi;

/** The way in from a shell. */
public final class Main {

  private Main() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] args) {
    quietLibraries();
    PrintWriter out =
        new PrintWriter(new OutputStreamWriter(System.out, charset("stdout.encoding")), true);
    PrintWriter err =
        new PrintWriter(new OutputStreamWriter(System.err, charset("stderr.encoding")), true);
    int code = Squaresheet.run(person(), out, err, Ansi.AUTO, args);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** Where a person answers from; nobody does where input or output is a file or a pipe. */
  private static Optional<BufferedReader> person() {
    return Optional.ofNullable(System.console())
        .map(console -> new BufferedReader(console.reader()));
  }

  /**
   * A library writes to a log of its own; what it says there is told as a finding instead. Set here and not in a file of the
   * jar, where it would hold for every program that uses the library; what was set at the start of the program stays.
   */
  static void quietLibraries() {
    Map.of(
            "log4j.provider", "org.apache.logging.log4j.simple.internal.SimpleProvider",
            "org.apache.logging.log4j.simplelog.level", "OFF",
            "log4j2.StatusLogger.level", "OFF")
        .forEach(System.getProperties()::putIfAbsent);
  }

  private static Charset charset(String property) {
    String named = System.getProperty(property, System.getProperty("native.encoding", "UTF-8"));
    Charset charset = Charset.isSupported(named) ? Charset.forName(named) : StandardCharsets.UTF_8;
    return charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset;
  }
}
