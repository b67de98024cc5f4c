package squaresheet.cli;

import java.nio.file.Path;
import java.util.List;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;

/** Goes through many files; on a terminal it shows how far it is. */
final class Workload {

  /** So few files are done before a bar is of any use. */
  private static final int FEW = 5;

  private Workload() {}

  static Iterable<Path> of(List<Path> files, Console console) {
    if (files.size() <= FEW || !console.isTerminal()) {
      return files;
    }
    return ProgressBar.wrap(files, new ProgressBarBuilder().setTaskName("workbooks"));
  }
}
