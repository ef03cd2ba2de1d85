package leadline.settings;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assertions;

/** The program's own files, the fixtures, and the errors that they raise. */
final class Fixtures {

  static final Path HOME = Path.of(System.getProperty("leadline.home", ""));
  static final SharedFolder SHARED = new SharedFolder(HOME.resolve("shared"));
  static final Path FOLDER = HOME.resolve("src/test/resources/settings");
  static final Instant NOW = Instant.parse("2025-02-03T04:05:06Z");

  private Fixtures() {}

  static Job job(Path file, Map<String, String> environment) {
    return JobFile.read(file, environment, SHARED, NOW);
  }

  static List<SettingError> jobErrors(Path file, Map<String, String> environment) {
    return Assertions.assertThrows(SettingsException.class, () -> job(file, environment)).errors();
  }

  static List<SettingError> catalogueErrors(Path file) {
    return Assertions.assertThrows(SettingsException.class, () -> CatalogueFile.read(file, SHARED))
        .errors();
  }

  static List<SettingError> sourceErrors(Path file) {
    return Assertions.assertThrows(SettingsException.class, () -> SourceFile.source(file, SHARED))
        .errors();
  }

  static List<String> lines(List<SettingError> errors) {
    return errors.stream().map(error -> error.path() + ": " + error.sentence()).toList();
  }
}
