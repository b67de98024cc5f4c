package squaresheet.judge.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import squaresheet.judge.made.Layouts;
import squaresheet.judge.own.OwnBooks;

/** Prints the judge's table: {@code JudgeRun <workbooks a layout> <faults a workbook> <own workbooks>}. */
public final class JudgeRun {

  private JudgeRun() {}

  public static void main(String[] arguments) throws IOException {
    int books = Integer.parseInt(arguments[0]);
    int faults = Integer.parseInt(arguments[1]);
    Judge judge = new Judge(Files.createTempDirectory(Path.of("target"), "judge"));
    for (boolean unseen : new boolean[] {false, true}) {
      for (String layout : Layouts.names(unseen)) {
        for (int seed = 1; seed <= books; seed++) {
          judge.book(Layouts.book(layout, seed), faults, seed);
        }
      }
    }
    int own = arguments.length > 2 ? Integer.parseInt(arguments[2]) : books;
    for (int seed = 1; seed <= own; seed++) {
      judge.book(OwnBooks.book(seed, judge.folder()), faults, seed);
      System.err.println(seed);
    }
    System.out.println(Results.table(judge));
  }
}
