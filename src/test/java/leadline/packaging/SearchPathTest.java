package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;

class SearchPathTest {

  @TempDir private Path folder;

  @Test
  void theFirstFolderThatHasACommandGivesIt() throws IOException {
    Path first = folder.resolve("first");
    Path second = folder.resolve("second");
    FakeTools.script(first.resolve("soffice"), "exit 0");
    FakeTools.script(second.resolve("soffice"), "exit 0");
    FakeTools.script(second.resolve("node"), "exit 0");
    Files.writeString(second.resolve("npm"), "not executable");
    SearchPath path = new SearchPath(List.of(first, second));

    assertEquals(Optional.of(first.resolve("soffice")), path.find("soffice"));
    assertEquals(Optional.of(second.resolve("node")), path.find("node"));
    assertEquals(Optional.empty(), path.find("npm"));
  }

  @Test
  void aTestWhoseProgramIsMissingFailsAndSaysWhatToInstall() {
    SearchPath path = new SearchPath(List.of(folder));

    AssertionFailedError missing =
        assertThrows(AssertionFailedError.class, () -> path.need("soffice", "LibreOffice Calc"));

    assertEquals(
        "This test needs LibreOffice Calc, and there is no 'soffice' on the search path: install"
            + " it (on Debian, .ci/run does).",
        missing.getMessage());
  }
}
