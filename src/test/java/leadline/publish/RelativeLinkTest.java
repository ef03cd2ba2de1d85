package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RelativeLinkTest {

  @TempDir Path temporary;

  /** The JDK's own file system inside a ZIP file has no symbolic links. */
  @Test
  void aFileSystemWithoutSymbolicLinksIsNamedAsTheReason() throws IOException {
    Path zip = temporary.resolve("no links.zip");
    try (FileSystem system = FileSystems.newFileSystem(zip, Map.of("create", "true"))) {
      Path root = system.getPath("/");
      Path target = Files.createDirectories(system.getPath("/.runs/run-1"));
      FileSystemException refused =
          assertThrows(
              FileSystemException.class,
              () ->
                  new RelativeLink(root.resolve("2024-12"))
                      .swapTo(root.relativize(target), root, Boundary.UNWATCHED));
      assertTrue(
          refused.toString().contains("choose a folder on a file system that has them"),
          refused.toString());
    }
  }

  @Test
  void aReaderNeverMissesTheTargetWhileTheLinkIsSwapped()
      throws IOException, InterruptedException, ExecutionException {
    Path staging = Files.createDirectory(temporary.resolve("staging"));
    Path[] runs = {Path.of("run-1"), Path.of("run-2")};
    for (Path run : runs) {
      Files.createFile(Files.createDirectory(temporary.resolve(run)).resolve("run.json"));
    }
    RelativeLink link = new RelativeLink(temporary.resolve("latest"));
    link.swapTo(runs[0], staging, Boundary.UNWATCHED);
    AtomicBoolean swapping = new AtomicBoolean(true);
    ExecutorService reader = Executors.newSingleThreadExecutor();
    try {
      Future<Boolean> alwaysThere =
          reader.submit(
              () -> {
                boolean there = true;
                while (swapping.get()) {
                  there &= Files.exists(temporary.resolve("latest/run.json"));
                }
                return there;
              });
      for (int swap = 1; swap <= 2_000; swap++) {
        link.swapTo(runs[swap % 2], staging, Boundary.UNWATCHED);
      }
      swapping.set(false);
      assertTrue(alwaysThere.get());
    } finally {
      swapping.set(false);
      reader.shutdown();
    }
  }
}
