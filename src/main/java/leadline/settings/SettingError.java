package leadline.settings;

import java.nio.file.Path;

/**
 * One thing wrong with a settings file.
 *
 * @param file the file, as it was named
 * @param path the place in the file as a JSON path, such as {@code $.steps[1].month}
 * @param sentence what is wrong and what is allowed, for people
 */
public record SettingError(Path file, String path, String sentence) {

  @Override
  public String toString() {
    return file + ": " + path + ": " + sentence;
  }
}
