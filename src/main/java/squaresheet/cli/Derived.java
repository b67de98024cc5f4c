package squaresheet.cli;

import java.nio.file.Path;

/** The files that stand beside another unless a place is given for them. */
final class Derived {

  private Derived() {}

  /** The place given, or beside the workbook with another ending: {@code bid.marked.xlsx}. */
  static Path of(Path file, Path given, String what) {
    String name = Books.name(file);
    String bare = name.replaceFirst("\\.[^.]+$", "");
    String ending = Ending.of(file).equals(".xlsm") ? ".xlsm" : ".xlsx";
    return given == null
        ? file.resolveSibling(bare + "." + what + ending)
        : Ending.like(file, given);
  }
}
