package leadline.settings;

import java.util.List;
import java.util.stream.Collectors;

/** Settings that cannot be used, with everything that is wrong with them; one error a line. */
public final class SettingsException extends RuntimeException {

  private final List<SettingError> errors;

  SettingsException(List<SettingError> errors) {
    super(errors.stream().map(SettingError::toString).collect(Collectors.joining("\n")));
    this.errors = List.copyOf(errors);
  }

  /** At least one error. */
  public List<SettingError> errors() {
    return errors;
  }
}
