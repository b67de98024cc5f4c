package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Puts a set of files that is written already in the place of another, by moves alone, which need no room on the disk. When
 * one of them fails all are taken back.
 */
final class Swap {

  private static final String BOTH = "both-lists.txt";

  private final Path folder;
  private final Path list;
  private final Path fresh;
  private final Path away;
  private final Deque<Path[]> moved = new ArrayDeque<>();
  private final List<String> kept = new ArrayList<>();
  private final List<String> left = new ArrayList<>();

  /**
   * A swap.
   *
   * @param folder where the files go
   * @param fresh the folder where they are written already, with their list
   * @param away the folder for what is taken away
   */
  Swap(Path folder, Path fresh, Path away) {
    this.folder = folder;
    list = folder.resolve(SetList.NAME);
    this.fresh = fresh;
    this.away = away;
  }

  /** Copies of changed files that had to make room. */
  List<String> kept() {
    return kept;
  }

  /** Changed files of the old set that are in nobody's way. */
  List<String> left() {
    return left;
  }

  /** Swaps; both lists stand in the folder meanwhile, so that nothing is forgotten if the program is stopped. */
  void run(Optional<SetList> old, SetList now) throws IOException {
    Path both = away.resolve(BOTH);
    try {
      SafeFile.write(both, out -> out.write(old.map(now::and).orElse(now).bytes()));
      makeRoomForList(old);
      move(both, list);
      for (SetList.Entry entry : old.map(SetList::entries).orElse(List.of())) {
        takeAway(entry, now);
      }
      for (SetList.Entry entry : now.entries()) {
        keep(entry.name());
        move(fresh.resolve(entry.name()), folder.resolve(entry.name()));
      }
      move(fresh.resolve(SetList.NAME), list);
    } catch (IOException | RuntimeException failure) {
      takeBack();
      throw failure;
    }
  }

  /** The old list is copied, not moved, so that there is one at every moment. */
  private void makeRoomForList(Optional<SetList> old) throws IOException {
    if (old.isPresent()) {
      Path copy = Files.copy(list, away.resolve(SetList.NAME));
      moved.push(new Path[] {list, copy});
    } else {
      keep(SetList.NAME);
    }
  }

  private void takeAway(SetList.Entry entry, SetList now) throws IOException {
    if (entry.isUnchanged(folder)) {
      move(folder.resolve(entry.name()), away.resolve(entry.name()));
    } else if (isThere(entry.name())
        && now.entries().stream().noneMatch(it -> it.name().equals(entry.name()))) {
      left.add(entry.name());
    }
  }

  /** Keeps what is in the way under the first free name. */
  private void keep(String name) throws IOException {
    if (isThere(name)) {
      int number = 1;
      while (isThere(SafeFile.copyName(name, number))) {
        number++;
      }
      String copy = SafeFile.copyName(name, number);
      move(folder.resolve(name), folder.resolve(copy));
      kept.add(copy);
    }
  }

  private boolean isThere(String name) {
    return Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
  }

  private void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    moved.push(new Path[] {from, to});
  }

  private void takeBack() throws IOException {
    while (!moved.isEmpty()) {
      Path[] move = moved.pop();
      Files.move(move[1], move[0], StandardCopyOption.ATOMIC_MOVE);
    }
    Files.deleteIfExists(away.resolve(BOTH));
  }
}
