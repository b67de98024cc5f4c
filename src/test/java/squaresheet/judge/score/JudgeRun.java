package squaresheet.judge.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.own.OwnBooks;

/**
 * Prints the judge's table and writes what was said of every workbook to {@code target/judge/record.csv}: {@code JudgeRun <workbooks
 * a layout> <faults a workbook> <own workbooks>}.
 */
public final class JudgeRun {

  private JudgeRun() {}

  public static void main(String[] arguments) throws IOException {
    int books = Integer.parseInt(arguments[0]);
    int faults = Integer.parseInt(arguments[1]);
    int own = Integer.parseInt(arguments[2]);
    Path folder = Files.createDirectories(Path.of("target/judge"));
    Judge judge = new Judge(Files.createTempDirectory(folder, "books"));
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
    Files.writeString(folder.resolve("record.csv"), judge.record());
    System.out.println(Results.table(judge));
  }
}
