package leadline.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Java's own exceptions often say no more than a path. */
class FileTroubleTest {

  @TempDir Path folder;

  @Test
  void aPathAloneIsGivenItsReason() {
    assertEquals("a: it is not there", FileTrouble.inWords(new NoSuchFileException("a")));
    assertEquals(
        "a: the right to it is missing", FileTrouble.inWords(new AccessDeniedException("a")));
    assertEquals(
        "a: something else is in its place",
        FileTrouble.inWords(new FileAlreadyExistsException("a")));
    assertEquals(
        "a: a link that leads back to its own folder",
        FileTrouble.inWords(new FileSystemLoopException("a")));
    assertEquals("it is not there", FileTrouble.inWords(new FileNotFoundException("a")));
  }

  @Test
  void aReasonOfTheSystemIsKept() {
    assertEquals(
        "a: Read-only file system",
        FileTrouble.inWords(new FileSystemException("a", null, "Read-only file system")));
    assertEquals("Input/output error", FileTrouble.inWords(new IOException("Input/output error")));
    assertEquals("IOException", FileTrouble.inWords(new IOException()));
  }

  @Test
  void whatTheSystemThrowsIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "text");

    IOException below =
        Assertions.assertThrows(
            IOException.class, () -> Files.createDirectories(file.resolve("below")));
    assertEquals(file.resolve("below") + ": Not a directory", FileTrouble.inWords(below));
    IOException there =
        Assertions.assertThrows(IOException.class, () -> Files.createDirectory(file));
    assertEquals("something else is in its place", FileTrouble.reason(there));
  }
}
