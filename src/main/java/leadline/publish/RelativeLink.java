package leadline.publish;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A relative symbolic link that changes its target in one step. */
record RelativeLink(Path link) {

  boolean leadsTo(Path target) throws IOException {
    return Files.isSymbolicLink(link) && Files.readSymbolicLink(link).equals(target);
  }

  /**
   * Points the link to the target. A reader finds the old target or the new one at any moment.
   *
   * @param target relative to the link's folder
   * @param staging an existing folder on the same file system for the link while it is made
   */
  void swapTo(Path target, Path staging, Boundary boundary) throws IOException {
    requireNothingElseInPlace();
    Path staged = staging.resolve(name());
    createLink(staged, target);
    boundary.reached("link staged: " + name());
    Files.move(staged, link, StandardCopyOption.ATOMIC_MOVE);
    boundary.reached("link in place: " + name());
  }

  private void requireNothingElseInPlace() throws FileSystemException {
    if (Files.exists(link, LinkOption.NOFOLLOW_LINKS) && !Files.isSymbolicLink(link)) {
      throw new FileSystemException(
          link.toString(), null, "is no link of a publication; move it away and publish again");
    }
  }

  private static void createLink(Path staged, Path target) throws IOException {
    try {
      Files.createSymbolicLink(staged, target);
    } catch (UnsupportedOperationException | IOException e) {
      FileSystemException refused =
          new FileSystemException(
              staged.toString(),
              target.toString(),
              "no symbolic link could be made here ("
                  + e.getMessage()
                  + "); months are published by symbolic links: choose a folder on a file system"
                  + " that has them");
      refused.initCause(e);
      throw refused;
    }
  }

  private String name() {
    return link.getFileName().toString();
  }
}
