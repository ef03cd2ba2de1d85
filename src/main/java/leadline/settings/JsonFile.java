package leadline.settings;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file of JSON, read strictly: no name twice in one object, nothing behind the end. */
final class JsonFile {

  private static final ObjectMapper STRICT =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private JsonFile() {}

  /**
   * @throws SettingsException where the file cannot be read or is not JSON
   */
  static JsonNode read(Path file, SettingErrors errors) {
    try {
      JsonNode tree = STRICT.readTree(Files.readAllBytes(file));
      if (!tree.isMissingNode()) {
        return tree;
      }
      errors.add(SettingErrors.ROOT, "the file is empty");
    } catch (JsonProcessingException e) {
      errors.add(SettingErrors.ROOT, notJson(e));
    } catch (IOException e) {
      errors.add(SettingErrors.ROOT, unreadable(e));
    }
    throw errors.exception();
  }

  static String unreadable(IOException e) {
    return e instanceof NoSuchFileException
        ? "there is no such file"
        : "the file cannot be read: " + e.getMessage();
  }

  private static String notJson(JsonProcessingException e) {
    JsonLocation location = e.getLocation();
    return "not JSON at line %d, column %d: %s"
        .formatted(location.getLineNr(), location.getColumnNr(), e.getOriginalMessage());
  }
}
