package leadline.settings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The program's folder of what all jobs share: the catalogue, the schemas, the cautions. */
public record SharedFolder(Path folder) {

  public Path catalogue() {
    return folder.resolve("catalogue.json");
  }

  /**
   * The cautions that every published month carries, one paragraph each.
   *
   * @throws SettingsException where they cannot be read or there are none
   */
  public List<String> cautions() {
    Path file = folder.resolve("cautions.txt");
    SettingErrors errors = new SettingErrors(file);
    try {
      List<String> cautions =
          Files.readAllLines(file).stream().filter(line -> !line.isBlank()).toList();
      if (cautions.isEmpty()) {
        errors.add(SettingErrors.ROOT, "no caution is written here, one a line");
      }
      errors.throwIfAny();
      return cautions;
    } catch (IOException e) {
      errors.add(SettingErrors.ROOT, JsonFile.unreadable(e));
      throw errors.exception();
    }
  }

  SettingsSchema schema(String name) {
    Path file = folder.resolve("schemas").resolve(name + ".schema.json");
    return new SettingsSchema(JsonFile.read(file, new SettingErrors(file)));
  }
}
