package leadline.packaging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;

/** A copy of what the launcher needs of the project, at another place. */
record ProjectCopy(Path home) {

  /** Launcher, settings and sources (none, but their folder), not yet built. */
  static ProjectCopy unbuilt(Path home) throws IOException {
    for (String part : List.of("jobs", "shared", "sample-data", "pom.xml")) {
      copy(Build.HOME.resolve(part), home.resolve(part));
    }
    Files.createDirectories(home.resolve("src/main"));
    return new ProjectCopy(home);
  }

  /** The same with the program, newer than its sources. */
  static ProjectCopy built(Path home) throws IOException {
    ProjectCopy copy = unbuilt(home);
    Files.createDirectories(home.resolve("target"));
    Files.copy(Build.JAR, copy.jar());
    Files.createSymbolicLink(home.resolve("target/lib"), Build.TARGET.resolve("lib"));
    return copy;
  }

  Path launcher() {
    return home.resolve("jobs/leadline");
  }

  Path jar() {
    return home.resolve("target/leadline.jar");
  }

  /** As if one of its parts had been written a minute after the program. */
  void edit(String part) throws IOException {
    FileTime later = FileTime.from(Files.getLastModifiedTime(jar()).toInstant().plusSeconds(60));
    Files.setLastModifiedTime(home.resolve(part), later);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> parts = Files.walk(from)) {
      parts.forEach(part -> copyOne(part, to.resolve(from.relativize(part).toString())));
    }
  }

  private static void copyOne(Path from, Path to) {
    try {
      Files.createDirectories(to.getParent());
      Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
