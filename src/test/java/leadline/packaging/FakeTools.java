package leadline.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

/** Programs that stand in for Java and Maven and write down how they were called. */
final class FakeTools {

  /** What the launcher itself calls, beside Java and Maven. */
  private static final List<String> NEEDED = List.of("bash", "readlink", "dirname", "sed", "find");

  private FakeTools() {}

  /** A search path of a new folder with nothing but what the launcher itself calls. */
  static Path searchPath(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (String tool : NEEDED) {
      Files.createSymbolicLink(folder.resolve(tool), SearchPath.own().need(tool, tool));
    }
    return folder;
  }

  /**
   * A JDK of which only {@code bin/java} and {@code release} exist.
   *
   * @param version as {@code release} has it
   * @param exit what its Java exits with, having written its arguments a line each
   */
  static Path jdk(Path folder, String version, int exit) throws IOException {
    script(folder.resolve("bin/java"), "printf '%s\\n' \"$@\"", "exit " + exit);
    Files.writeString(
        folder.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\n");
    return folder;
  }

  static void script(Path file, String... lines) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, Stream.concat(Stream.of("#!/usr/bin/env bash"), Stream.of(lines)).toList());
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }
}
