package squaresheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The workbooks that a command over many was given: a folder is its workbooks; locks and our own copies are left out. */
final class GivenBooks {

  private static final Pattern WORKBOOK = Pattern.compile("(?i).*\\.(xlsx|xlsm|xls|xlsb|ods)");

  /** What spreadsheet programs put beside a workbook that they have open. */
  private static final Pattern LOCK = Pattern.compile("~\\$(.+)|\\.~lock\\.(.+)#");

  /** What saving, mark and correct put beside a workbook. */
  private static final Pattern COPY = Pattern.compile(
      "(?<name>.+?)(?<what> \\(previous \\d+\\)|\\.marked|\\.corrected)(?<ending>\\.[^.]+)");

  private final List<Path> books = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();
  private final boolean copiesToo;

  private GivenBooks(boolean copiesToo) {
    this.copiesToo = copiesToo;
  }

  /** What was given, without the copies that this program made of a workbook that still stands beside them. */
  static GivenBooks withoutCopies(List<Path> given) {
    return new GivenBooks(false).take(given);
  }

  /** What was given, copies of ours too where they are named. */
  static GivenBooks of(List<Path> given) {
    return new GivenBooks(true).take(given);
  }

  private GivenBooks take(List<Path> given) {
    for (Path path : given) {
      if (Files.isDirectory(path)) {
        inside(path);
      } else {
        take(path, copiesToo);
      }
    }
    return this;
  }

  private void inside(Path folder) {
    int before = books.size();
    for (Path path : list(folder)) {
      if (Files.isDirectory(path)) {
        leftOut.add(path + ": a folder within a folder; name it to take its workbooks");
      } else if (isLock(path) || WORKBOOK.matcher(Books.name(path)).matches()) {
        take(path, false);
      }
    }
    if (books.size() == before) {
      leftOut.add(folder + ": a folder without a workbook");
    }
  }

  private static List<Path> list(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    } catch (IOException | UncheckedIOException closed) {
      throw new CannotBeDone(Exit.FAILED, "the folder " + folder + " cannot be looked into");
    }
  }

  private void take(Path path, boolean copies) {
    Matcher lock = LOCK.matcher(Books.name(path));
    Optional<Path> original = copies ? Optional.empty() : original(path);
    if (lock.matches()) {
      leftOut.add(path + ": the mark of a program that has "
          + (lock.group(1) == null ? lock.group(2) : lock.group(1)) + " open, no workbook");
    } else if (original.isPresent()) {
      leftOut.add(path + ": a copy of ours of " + Books.name(original.get())
          + "; to take it, give it a name of its own");
    } else {
      books.add(path);
    }
  }

  private static boolean isLock(Path path) {
    return LOCK.matcher(Books.name(path)).matches();
  }

  /** The workbook beside it that a file is a copy of, over whatever steps, as far as its name says so. */
  private static Optional<Path> original(Path path) {
    Matcher copy = COPY.matcher(Books.name(path));
    if (!copy.matches()) {
      return Optional.empty();
    }
    Path before = path.resolveSibling(copy.group("name") + copy.group("ending"));
    return Files.exists(before) ? Optional.of(before) : original(before);
  }

  /** The workbooks, in the order given. */
  List<Path> books() {
    return List.copyOf(books);
  }

  /** What a workbook is called: its name, or where another has the same, its path as given. */
  String called(Path book) {
    String name = Books.name(book);
    long alike = books.stream()
        .distinct()
        .filter(other -> Books.name(other).equals(name))
        .count();
    return alike > 1 ? book.toString() : name;
  }

  /** What was left out, each with why. */
  List<String> leftOut() {
    return List.copyOf(leftOut);
  }
}
