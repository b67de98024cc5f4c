package squaresheet.judge.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import squaresheet.judge.made.Layouts;

/** Prints the judge's table: {@code JudgeRun <workbooks a layout> <faults a workbook>}. */
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
    System.out.println(Results.table(judge));
  }
}
