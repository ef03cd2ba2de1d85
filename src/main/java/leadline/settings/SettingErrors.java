package leadline.settings;

import com.networknt.schema.path.NodePath;
import com.networknt.schema.path.PathType;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The errors of one settings file, as they are found. */
final class SettingErrors {

  static final NodePath ROOT = new NodePath(PathType.JSON_PATH);

  private final Path file;
  private final List<SettingError> errors = new ArrayList<>();
  private final Set<String> faultyPaths = new HashSet<>();

  SettingErrors(Path file) {
    this.file = file;
  }

  void add(NodePath path, String sentence) {
    faultyPaths.add(path.toString());
    errors.add(new SettingError(file, path.toString(), sentence));
  }

  void addAll(SettingsException ofAnotherFile) {
    errors.addAll(ofAnotherFile.errors());
  }

  boolean isFaulty(NodePath path) {
    return faultyPaths.contains(path.toString());
  }

  SettingsException exception() {
    return new SettingsException(errors);
  }

  void throwIfAny() {
    if (!errors.isEmpty()) {
      throw exception();
    }
  }
}
