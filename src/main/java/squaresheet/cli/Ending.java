package squaresheet.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Holds the names of files to be written to what is written into them, before anything else is done. */
final class Ending {

  /** Endings of files that we read or write, which no folder should have. */
  private static final List<String> OF_FILES =
      List.of(".svg", ".png", ".pdf", ".csv", ".txt", ".xlsx", ".xlsm", ".xls", ".ods", ".html");

  private Ending() {}

  /** In small letters with its point; empty where there is none. */
  static String of(Path file) {
    String name = Books.name(file);
    int dot = name.lastIndexOf('.');
    return dot <= 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
  }

  /** The file, whose name must end so. */
  static Path must(Path file, String ending) {
    if (!of(file).equals(ending)) {
      throw new CannotBeDone(
          Exit.WRONG_USE,
          "the file to write must end in " + ending + ", but is " + file + "; nothing was written");
    }
    return file;
  }

  /** The file to write, whose name must end as that of the workbook it is made from, or as any other workbook's of ours. */
  static Path like(Path from, Path file) {
    return from.equals(file) ? file : must(file, of(from).equals(".xlsm") ? ".xlsm" : ".xlsx");
  }

  /** The folder, whose name must not read like a file's. */
  static Path folder(Path folder) {
    if (OF_FILES.contains(of(folder))) {
      throw new CannotBeDone(
          Exit.WRONG_USE,
          "a folder must be given to write to, but " + folder
              + " reads like a file; nothing was written");
    }
    return folder;
  }
}
