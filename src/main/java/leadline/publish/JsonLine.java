package leadline.publish;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.Map;

/** One line of JSON, for the program that called this one. */
public final class JsonLine {

  private JsonLine() {}

  /**
   * Writes an object.
   *
   * @param fields texts, numbers, lists and maps of these, by name
   */
  public static String of(Map<String, ?> fields) {
    try {
      return StableJson.MAPPER.writeValueAsString(fields);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("cannot be written as JSON: " + fields, e);
    }
  }
}
