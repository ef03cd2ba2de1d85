package leadline.problem;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;

/** Why the system let a file or folder not be used, in words. */
public final class FileTrouble {

  private FileTrouble() {}

  /** The reason with the path it is about, where the system names one. */
  public static String inWords(IOException trouble) {
    return trouble instanceof FileSystemException file && file.getFile() != null
        ? file.getFile() + ": " + reason(trouble)
        : reason(trouble);
  }

  /** The reason alone. */
  public static String reason(IOException trouble) {
    if (trouble instanceof NoSuchFileException || trouble instanceof FileNotFoundException) {
      return "it is not there";
    } else if (trouble instanceof AccessDeniedException) {
      return "the right to it is missing";
    } else if (trouble instanceof FileAlreadyExistsException) {
      return "something else is in its place";
    } else if (trouble instanceof FileSystemLoopException) {
      return "a link that leads back to its own folder";
    }
    return Optional.ofNullable(said(trouble)).orElse(trouble.getClass().getSimpleName());
  }

  private static @org.jspecify.annotations.Nullable String said(IOException trouble) {
    return trouble instanceof FileSystemException file && file.getReason() != null
        ? file.getReason()
        : trouble.getMessage();
  }
}
