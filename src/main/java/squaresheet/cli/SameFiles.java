package squaresheet.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import squaresheet.finding.CheckInfo;
import squaresheet.finding.Finding;
import squaresheet.finding.Severity;
import squaresheet.finding.Where;
import squaresheet.verify.Withheld;

/** Files that are another one once more: by another path, or byte for byte. The one of the shortest name is taken. */
final class SameFiles {

  private static final CheckInfo AGAIN =
      new CheckInfo("file-given-twice", Severity.ERROR, "A workbook was given twice");

  private final GivenBooks given;
  private final Map<Path, Path> byPath = new HashMap<>();
  private final Map<Long, List<Path>> bySize = new HashMap<>();
  private final Set<Path> taken = new HashSet<>();
  private final List<Withheld> again = new ArrayList<>();

  SameFiles(GivenBooks given) {
    this.given = given;
    given.books().stream()
        .sorted(Comparator.comparingInt(file -> Books.name(file).length()))
        .forEach(this::take);
  }

  private void take(Path file) {
    try {
      Path other = byPath.putIfAbsent(file.toRealPath(), file);
      if (other != null) {
        again(file, "is the same file as " + given.called(other));
        return;
      }
      List<Path> asLong = bySize.computeIfAbsent(Files.size(file), size -> new ArrayList<>());
      Optional<Path> same = first(file, asLong);
      if (same.isPresent()) {
        again(file, "holds the same as " + given.called(same.get()) + ", byte for byte");
        return;
      }
      asLong.add(file);
    } catch (IOException unread) {
      // What cannot be read is said when it is read.
    }
    taken.add(file);
  }

  private static Optional<Path> first(Path file, List<Path> others) throws IOException {
    for (Path other : others) {
      if (Files.mismatch(file, other) == -1) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  private void again(Path file, String same) {
    String name = given.called(file);
    String says = same
        + ", which is taken; where it is another job, tell them apart by a job number or another job name in the workbook";
    again.add(new Withheld(name, List.of(new Finding(AGAIN, new Where.InFile(name), says))));
  }

  /** Every workbook once, in the order given. */
  List<Path> taken() {
    return given.books().stream().filter(taken::contains).distinct().toList();
  }

  /** The others, each with what it is the same as. */
  List<Withheld> again() {
    return List.copyOf(again);
  }
}
