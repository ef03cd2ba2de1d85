package leadline.lake;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import leadline.problem.FileTrouble;

/**
 * The right to write to a lake, held by one process at a time. The operating system releases it
 * when the process ends, however it ends.
 */
final class WriterLock {

  private static final Duration BETWEEN_TRIES = Duration.ofMillis(200);

  private final FileChannel channel;

  private WriterLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Waits for the lock.
   *
   * @param patience how long to wait for another writer to end
   * @param tell is told once if there is a wait
   * @throws LakeInUseException when the other writer outlasts the patience
   */
  static WriterLock acquire(Path file, Duration patience, Consumer<String> tell) {
    long deadline = System.nanoTime() + patience.toNanos();
    boolean told = false;
    while (true) {
      Optional<WriterLock> lock = tryAcquire(file);
      if (lock.isPresent()) {
        return lock.get();
      }
      if (System.nanoTime() >= deadline) {
        throw new LakeInUseException(
            "Another job is writing to the lake "
                + file.getParent()
                + ": try again when it has ended.");
      }
      if (!told) {
        tell.accept("waiting for another job that writes to the lake " + file.getParent());
        told = true;
      }
      pause();
    }
  }

  private static Optional<WriterLock> tryAcquire(Path file) {
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      try {
        FileLock lock = channel.tryLock();
        if (lock != null) {
          return Optional.of(new WriterLock(channel));
        }
      } catch (OverlappingFileLockException e) {
        // held by another job of this very process
      }
      channel.close();
      return Optional.empty();
    } catch (IOException e) {
      throw new LakeException(
          "Cannot write to the lake folder "
              + file.getParent()
              + ": "
              + FileTrouble.inWords(e)
              + ".",
          e);
    }
  }

  private static void pause() {
    try {
      Thread.sleep(BETWEEN_TRIES.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LakeException("Interrupted while waiting for the lake.", e);
    }
  }

  void release() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new LakeException("Cannot release the lake's lock: " + FileTrouble.inWords(e) + ".", e);
    }
  }
}
