package squaresheet.judge.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.own.OwnBooks;

/**
 * Runs the judge: {@code JudgeRun <workbooks a layout> <faults a workbook> <own workbooks> <what>}. What is {@code table} for the
 * tables, {@code record} for what is said of every workbook alone, or the path of a record that was kept, whose workbooks are
 * made anew and judged again, to print what became of its findings. What is said goes to {@code target/judge/record.csv} each time.
 */
public final class JudgeRun {

  private static final Pattern MADE_OF = Pattern.compile(
      "# (\\d+) workbooks a layout, (\\d+) faults a workbook, (\\d+) own workbooks");

  private final Path folder = Path.of("target/judge");
  private final int books;
  private final int faults;
  private final int own;

  private JudgeRun(int books, int faults, int own) {
    this.books = books;
    this.faults = faults;
    this.own = own;
  }

  public static void main(String[] arguments) throws IOException {
    String what = arguments[3];
    if (what.equals("table") || what.equals("record")) {
      JudgeRun run = new JudgeRun(
          Integer.parseInt(arguments[0]),
          Integer.parseInt(arguments[1]),
          Integer.parseInt(arguments[2]));
      Judge judge = run.judged(what.equals("table"));
      System.out.println(
          what.equals("table")
              ? Results.table(judge) + Results.missed(judge)
              : "written to target/judge/record.csv");
    } else {
      String kept = Files.readString(Path.of(what));
      System.out.println(Transcript.difference(kept, ofSame(kept).again()));
    }
  }

  private static JudgeRun ofSame(String kept) {
    Matcher of = MADE_OF.matcher(kept);
    if (!of.find()) {
      throw new IllegalArgumentException(
          "a record must begin with what it is made of, but begins with '"
              + kept.lines().findFirst().orElse("") + "'");
    }
    return new JudgeRun(
        Integer.parseInt(of.group(1)),
        Integer.parseInt(of.group(2)),
        Integer.parseInt(of.group(3)));
  }

  private String again() throws IOException {
    judged(false);
    return Files.readString(folder.resolve("record.csv"));
  }

  private Judge judged(boolean scoring) throws IOException {
    Files.createDirectories(folder);
    Judge judge = new Judge(Files.createTempDirectory(folder, "books"), scoring);
    for (boolean unseen : new boolean[] {false, true}) {
      for (String layout : Layouts.names(unseen)) {
        for (int seed = 1; seed <= books; seed++) {
          judge.book(Layouts.book(layout, seed), faults, seed);
        }
      }
    }
    for (int seed = 1; seed <= own; seed++) {
      judge.book(OwnBooks.book(seed, judge.folder()), faults, seed);
    }
    Files.writeString(
        folder.resolve("record.csv"),
        judge
            .record()
            .text(books + " workbooks a layout, " + faults + " faults a workbook, " + own
                + " own workbooks"));
    return judge;
  }
}
