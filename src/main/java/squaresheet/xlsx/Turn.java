package squaresheet.xlsx;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * A turn at changing a file: whoever comes while it is being changed waits, in this program and in others of its kind on the
 * machine. Kept from the reading of what is there until the new version is in place, so that no change is lost.
 */
final class Turn {

  /** Files share as many locks, because a lock for each would have to be cleared away again. */
  private static final int LOCKS = 64;

  private static final ReentrantLock[] HERE =
      IntStream.range(0, LOCKS).mapToObj(lock -> new ReentrantLock()).toArray(ReentrantLock[]::new);

  private Turn() {}

  /** Does the work when it is its turn at a file or folder, there yet or not; whoever has the turn already goes on at once. */
  static <T> T at(Path file, Supplier<T> work) {
    int lock = Math.floorMod(real(file).hashCode(), LOCKS);
    HERE[lock].lock();
    try {
      return HERE[lock].getHoldCount() > 1 ? work.get() : amongPrograms(lock, work);
    } finally {
      HERE[lock].unlock();
    }
  }

  /** The same for every path that leads to the file. */
  private static Path real(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    try {
      return whole.toRealPath();
    } catch (IOException notThere) {
      Path folder = whole.getParent();
      return folder == null ? whole : real(folder).resolve(whole.getFileName());
    }
  }

  private static <T> T amongPrograms(int lock, Supplier<T> work) {
    Optional<FileChannel> turn = turn(lock);
    try {
      return work.get();
    } finally {
      turn.ifPresent(Turn::over);
    }
  }

  /** The turn among programs; where nothing can be written for it, this program alone is kept in order. */
  private static Optional<FileChannel> turn(int lock) {
    Path file = Path.of(System.getProperty("java.io.tmpdir"), "squaresheet-" + lock + ".lock");
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      return locked(channel);
    } catch (IOException notHere) {
      return Optional.empty();
    }
  }

  private static Optional<FileChannel> locked(FileChannel channel) throws IOException {
    try {
      channel.lock();
      return Optional.of(channel);
    } catch (IOException | OverlappingFileLockException notLockedHere) {
      channel.close();
      return Optional.empty();
    }
  }

  private static void over(FileChannel turn) {
    try {
      turn.close();
    } catch (IOException alreadyOver) {
      // The system gives the turn on when the program ends, if not before.
    }
  }
}
