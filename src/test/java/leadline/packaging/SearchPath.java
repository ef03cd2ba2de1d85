package leadline.packaging;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The folders in which commands are looked for. */
record SearchPath(List<Path> folders) {

  static SearchPath own() {
    return new SearchPath(Stream.of(System.getenv("PATH").split(":")).map(Path::of).toList());
  }

  Optional<Path> find(String command) {
    return folders.stream()
        .map(folder -> folder.resolve(command))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** The command of a program that a test cannot do without; the test fails where it is missing. */
  Path need(String command, String program) {
    return find(command)
        .orElseGet(
            () ->
                fail(
                    "This test needs %s, and there is no '%s' on the search path: install it (on"
                            .formatted(program, command)
                        + " Debian, .ci/run does)."));
  }
}
