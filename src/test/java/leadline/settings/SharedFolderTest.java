package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedFolderTest {

  @TempDir Path folder;

  @Test
  void cautionsAreOneALineWithBlankLinesBetween() throws IOException {
    Files.writeString(folder.resolve("cautions.txt"), "Hot.\n\nKeep clear.\n");

    assertEquals(List.of("Hot.", "Keep clear."), new SharedFolder(folder).cautions());
  }

  @Test
  void aProgramWithoutItsCautionsDoesNotGoOn() throws IOException {
    Path file = folder.resolve("cautions.txt");
    assertEquals(List.of(new SettingError(file, "$", "there is no such file")), errors());

    Files.writeString(file, "\n \n");
    assertEquals(
        List.of(new SettingError(file, "$", "no caution is written here, one a line")), errors());
  }

  private List<SettingError> errors() {
    return assertThrows(SettingsException.class, () -> new SharedFolder(folder).cautions())
        .errors();
  }
}
