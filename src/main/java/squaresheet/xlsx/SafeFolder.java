package squaresheet.xlsx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import squaresheet.finding.Read;

/**
 * Saves a set of files into a folder of their own, all of them or none: written beside it first, then put in place together. A
 * list in the folder names them; only what stands in it and is as it was written is ever taken away again.
 */
public final class SafeFolder {

  /** So many folders of one name are looked through for a free one. */
  private static final int MOST = 10_000;

  /** In bytes: short enough for a number before it, an ending behind it, and the folders over it. */
  private static final int LONGEST = 80;

  /** Names that one system in common use keeps for its devices. */
  private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)\\p{N}");

  private final Path folder;
  private final String origin;

  private SafeFolder(Path folder, String origin) {
    this.folder = folder;
    this.origin = origin;
  }

  /**
   * A set of files that was saved whole.
   *
   * @param folder where they are
   * @param files their names, in the order given
   * @param kept copies of files that were changed since they were written and had to make room
   * @param left files of the last set that are not in this one, but were changed since and so were left
   */
  public record SavedSet(Path folder, List<String> files, List<String> kept, List<String> left) {

    public SavedSet {
      files = List.copyOf(files);
      kept = List.copyOf(kept);
      left = List.copyOf(left);
    }
  }

  /**
   * Saves a set of files.
   *
   * @param parent the folder in which theirs is; made where it is not there
   * @param name what their folder is called; where one of that name holds another set, the next free number is put behind it
   * @param origin what they were made from, so that they are known when they are made again
   * @param files the bytes of each by its name, in order
   * @param existing whether a set of the same origin that is there may be replaced
   */
  public static Read<SavedSet> save(
      Path parent, String name, Path origin, Map<String, byte[]> files, Existing existing) {
    return Turn.at(parent.resolve(name), () -> {
      try {
        Files.createDirectories(parent);
        return Read.of(free(parent, name, origin).put(files, existing));
      } catch (Refusal refusal) {
        return Read.nothing(
            Complaint.of(refusal.info(Complaint.NOT_SAVED), parent, refusal.says()));
      } catch (IOException failure) {
        return Read.nothing(Complaint.of(
            Complaint.NOT_SAVED, parent, SafeFile.says(parent.resolve(name), failure)));
      }
    });
  }

  /** The folder with the set of that origin, or else the first that holds no other set. */
  private static SafeFolder free(Path parent, String name, Path origin) throws IOException {
    String from = SetList.line(from(parent.toRealPath(), origin.toRealPath()));
    Optional<Path> free = Optional.empty();
    for (int number = 1; number <= MOST; number++) {
      Path folder = parent.resolve(number == 1 ? name : name + "-" + number);
      if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
        return new SafeFolder(free.orElse(folder), from);
      }
      Optional<SetList> list = Files.isDirectory(folder) ? SetList.in(folder) : Optional.empty();
      if (list.filter(it -> it.origin().equals(from)).isPresent()) {
        return new SafeFolder(folder, from);
      }
      if (Files.isDirectory(folder) && list.isEmpty() && free.isEmpty()) {
        free = Optional.of(folder);
      }
    }
    throw new Refusal("'" + name + "' is the name of too many folders in '" + parent + "'");
  }

  private static String from(Path parent, Path origin) {
    try {
      return parent.relativize(origin).toString().replace('\\', '/');
    } catch (IllegalArgumentException onAnotherDrive) {
      return origin.toString();
    }
  }

  private SavedSet put(Map<String, byte[]> files, Existing existing) throws IOException {
    Path place = Files.exists(folder) ? folder.toRealPath() : folder.toAbsolutePath();
    Optional<SetList> old = Files.exists(place) ? SetList.in(place) : Optional.empty();
    if (existing == Existing.REFUSE) {
      refuseWhereThere(place, old, files);
    }
    Path fresh = beside(place, "part");
    Path away = beside(place, "away");
    try {
      Files.createDirectory(fresh);
      Files.createDirectory(away);
      SetList list = SetList.of(origin, files);
      write(fresh, files, list);
      Swap swap = new Swap(place, fresh, away);
      if (Files.exists(place)) {
        swap.run(old, list);
      } else {
        Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
      }
      SafeFile.force(place.getParent());
      empty(away);
      return new SavedSet(folder, List.copyOf(files.keySet()), swap.kept(), swap.left());
    } finally {
      empty(fresh);
      Files.deleteIfExists(fresh);
      Files.deleteIfExists(away);
    }
  }

  private void refuseWhereThere(Path place, Optional<SetList> old, Map<String, byte[]> files) {
    boolean taken = Stream.concat(files.keySet().stream(), Stream.of(SetList.NAME))
        .anyMatch(name -> Files.exists(place.resolve(name), LinkOption.NOFOLLOW_LINKS));
    if (taken || old.isPresent()) {
      throw Refusal.of(
          Complaint.IS_THERE,
          "the folder '" + folder + "' has these papers already and was left alone");
    }
  }

  private static Path beside(Path place, String ending) {
    String name = Long.toHexString(ThreadLocalRandom.current().nextLong());
    return place.resolveSibling("." + name + "." + ending);
  }

  private static void write(Path fresh, Map<String, byte[]> files, SetList list)
      throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      SafeFile.write(fresh.resolve(file.getKey()), out -> out.write(file.getValue()));
    }
    SafeFile.write(fresh.resolve(SetList.NAME), out -> out.write(list.bytes()));
  }

  /** Deletes what is in a folder of ours; there are no folders in those. */
  private static void empty(Path ours) throws IOException {
    if (Files.exists(ours)) {
      try (Stream<Path> files = Files.list(ours)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** The words as a file or folder may be called anywhere: letters, digits and dashes, not too long, no device's name. */
  public static String safeName(String words) {
    String name = Normalizer.normalize(words, Normalizer.Form.NFC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", "-");
    String bare = SafeFile.cut(name.replaceAll("^-", ""), LONGEST).replaceAll("-$", "");
    return bare.isEmpty() ? "unnamed" : DEVICE.matcher(bare).matches() ? bare + "-" : bare;
  }
}
