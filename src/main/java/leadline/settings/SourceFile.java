package leadline.settings;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;

/** Reads the file in which the source of an inbox says what its exports hold. */
public final class SourceFile {

  public static final String NAME = "source.json";

  private SourceFile() {}

  /** What an export says of records that it lacks. */
  private enum Exports implements Written {
    /** Nothing. */
    CHANGES,
    /** They were deleted. */
    SNAPSHOT
  }

  /**
   * The source of an inbox; without the file an unnamed one, whose exports hold changes.
   *
   * @param shared where the file's schema is
   * @throws SettingsException with everything that is wrong with the file
   */
  public static Source read(Path inbox, SharedFolder shared) {
    Path file = inbox.resolve(NAME);
    return Files.exists(file) ? source(file, shared) : Source.UNNAMED;
  }

  static Source source(Path file, SharedFolder shared) {
    SettingErrors errors = new SettingErrors(file);
    JsonNode tree = JsonFile.read(file, errors);
    shared.schema("source").check(tree, errors);
    Setting root = new Setting(tree, SettingErrors.ROOT, errors);
    Map<String, String> renamed = renamed(root.at("renamed"));
    errors.throwIfAny();
    return new Source(root.at("source").text().orElseThrow(), snapshots(root), renamed);
  }

  private static Set<RecordKind> snapshots(Setting root) {
    Exports exports = root.at("exports").word(Exports.class).orElse(Exports.CHANGES);
    Set<RecordKind> snapshots = EnumSet.noneOf(RecordKind.class);
    for (RecordKind kind : RecordKind.values()) {
      Setting own = root.at("exports_by_kind").at(kind.word());
      if (own.word(Exports.class).orElse(exports) == Exports.SNAPSHOT) {
        snapshots.add(kind);
      }
    }
    return snapshots;
  }

  /** In a chain within one file it would be open which name is the newest. */
  private static Map<String, String> renamed(Setting names) {
    Map<String, String> renamed = new LinkedHashMap<>();
    names.members().forEach(each -> each.text().ifPresent(now -> renamed.put(each.name(), now)));
    names
        .members()
        .filter(each -> each.text().filter(renamed::containsKey).isPresent())
        .forEach(
            each ->
                each.error(
                    "`%s` is itself renamed here; give each former identifier the newest one"
                        .formatted(each.text().orElseThrow())));
    return renamed;
  }
}
