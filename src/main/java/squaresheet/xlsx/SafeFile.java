package squaresheet.xlsx;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import squaresheet.finding.Read;

/**
 * Saves a file whole or not at all: written beside its place, forced to the disk, then put in place in one step. Whatever
 * happens on the way, the file that was there stays as it was.
 */
public final class SafeFile {

  /** In bytes; file systems in common use take names up to this. */
  private static final int LONGEST_NAME = 255;

  private SafeFile() {}

  /** Writes the bytes of a file. */
  @FunctionalInterface
  public interface Body {
    /**
     * Writes all of it; the stream is closed by the caller.
     *
     * @throws IOException if that cannot be done; nothing is saved then
     */
    void writeTo(OutputStream out) throws IOException;
  }

  /** Saves these bytes. */
  public static Read<Saved> save(Path file, byte[] bytes, Existing existing) {
    return save(file, existing, out -> out.write(bytes));
  }

  /** Saves what the body writes. */
  public static Read<Saved> save(Path file, Existing existing, Body body) {
    return save(file, existing, body, () -> {});
  }

  /** The same if the last look, taken when all is written and before anything is put in place, refuses nothing. */
  static Read<Saved> save(Path file, Existing existing, Body body, Runnable lastLook) {
    return Turn.at(file, () -> {
      try {
        return Read.of(put(file, existing, body, lastLook));
      } catch (Refusal refusal) {
        return Read.nothing(Complaint.of(refusal.info(Complaint.NOT_SAVED), file, refusal.says()));
      } catch (FileAlreadyExistsException taken) {
        return Read.nothing(Complaint.of(Complaint.IS_THERE, file, taken(file).says()));
      } catch (IOException failure) {
        return Read.nothing(Complaint.of(Complaint.NOT_SAVED, file, says(file, failure)));
      }
    });
  }

  private static Saved put(Path asked, Existing existing, Body body, Runnable lastLook)
      throws IOException {
    Path file = behindLinks(asked);
    refuseWhereNotToBeWritten(file, existing);
    Path part = file.resolveSibling(
        "." + Long.toHexString(ThreadLocalRandom.current().nextLong()) + ".part");
    try {
      write(part, body);
      takeOver(file, part);
      lastLook.run();
      Optional<Path> previous = existing == Existing.KEEP_COPY && Files.exists(file)
          ? Optional.of(keep(file))
          : Optional.empty();
      moveIn(part, file, existing);
      force(file.getParent());
      return new Saved(asked, previous);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** The file itself where a link leads to one, so that the link stays and leads to the new version. */
  private static Path behindLinks(Path asked) throws IOException {
    if (Files.exists(asked) || !Files.isSymbolicLink(asked)) {
      return Files.exists(asked) ? asked.toRealPath() : asked.toAbsolutePath();
    }
    Path target = asked.toAbsolutePath().resolveSibling(Files.readSymbolicLink(asked));
    if (Files.isSymbolicLink(target)) {
      throw new Refusal("'" + Complaint.name(asked) + "' is a link that leads nowhere");
    }
    return target;
  }

  private static void refuseWhereNotToBeWritten(Path file, Existing existing) {
    String name = "'" + Complaint.name(file) + "'";
    if (Files.isDirectory(file)) {
      throw new Refusal(name + " must be a file, but is a folder");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new Refusal(name + " must be a file, but is a device or a pipe; nothing was changed");
    }
    if (!Files.isDirectory(file.getParent())) {
      throw new Refusal("the folder '" + file.getParent() + "' must be there, but is not");
    }
    if (Files.exists(file) && existing == Existing.REFUSE) {
      throw taken(file);
    }
    if (Files.exists(file) && !Files.isWritable(file)) {
      throw new Refusal(name + " must be writable, but is read-only; nothing was changed");
    }
    LockFile.of(file).ifPresent(lock -> {
      throw new Refusal(name + " must be closed in other programs first, but one has it open ('"
          + Complaint.name(lock) + "' is there); nothing was changed");
    });
  }

  private static Refusal taken(Path file) {
    return Refusal.of(
        Complaint.IS_THERE,
        "'" + Complaint.name(file) + "' is there already and was left alone; choose another name");
  }

  static void write(Path part, Body body) throws IOException {
    try (FileChannel channel =
            FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16)) {
      body.writeTo(out);
      out.flush();
      channel.force(true);
    }
  }

  /** Gives the new file the permissions of the old one, where the system knows such. */
  private static void takeOver(Path file, Path part) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    if (old != null && Files.exists(file)) {
      Files.setPosixFilePermissions(part, old.readAttributes().permissions());
    }
  }

  /** Keeps the file under the first free name; an older copy is never overwritten. */
  private static Path keep(Path file) throws IOException {
    for (int n = 1; ; n++) {
      Path copy = file.resolveSibling(copyName(Complaint.name(file), n));
      if (Files.exists(copy, LinkOption.NOFOLLOW_LINKS)) {
        continue;
      }
      try {
        link(file, copy);
        return copy;
      } catch (FileAlreadyExistsException taken) {
        // Somebody was faster; the next number may be free.
      }
    }
  }

  static String copyName(String name, int n) {
    int dot = name.lastIndexOf('.');
    int end = dot > 0 ? dot : name.length();
    String added = " (previous " + n + ")" + name.substring(end);
    int room = LONGEST_NAME - added.getBytes(StandardCharsets.UTF_8).length;
    return cut(name.substring(0, end), room) + added;
  }

  /** As much of a name as fits into so many bytes, in whole characters. */
  static String cut(String name, int bytes) {
    String cut = name;
    while (cut.getBytes(StandardCharsets.UTF_8).length > bytes) {
      cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
    }
    return cut;
  }

  private static void link(Path file, Path copy) throws IOException {
    try {
      Files.createLink(copy, file);
    } catch (UnsupportedOperationException | AccessDeniedException noLinks) {
      Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
      force(copy);
    } catch (FileAlreadyExistsException taken) {
      throw taken;
    } catch (java.nio.file.FileSystemException noLinks) {
      Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
      force(copy);
    }
  }

  private static void moveIn(Path part, Path file, Existing existing) throws IOException {
    if (existing == Existing.REFUSE) {
      moveWhereNothingIs(part, file);
    } else {
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A link fails where a file came up in the meantime; a move would replace it. */
  private static void moveWhereNothingIs(Path part, Path file) throws IOException {
    try {
      Files.createLink(file, part);
    } catch (FileAlreadyExistsException taken) {
      throw taken;
    } catch (UnsupportedOperationException | java.nio.file.FileSystemException noLinks) {
      Files.move(part, file);
    }
  }

  /** Forces a file or a folder's list of names to the disk, where the system lets one. */
  static void force(Path path) {
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notHere) {
      // Some systems do not open folders; there the move itself is all one can do.
    }
  }

  static String says(Path file, IOException failure) {
    String name = "'" + Complaint.name(file) + "'";
    if (failure instanceof AccessDeniedException) {
      return name
          + " must be writable, but access to it or its folder is denied; nothing was changed";
    }
    return name + " could not be saved (" + Unwritable.why(failure) + "); nothing was changed";
  }
}
