package leadline.estimate;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.StreamSupport;
import leadline.stats.Confidence;

/**
 * What the user chose, as written; a setting that a method has no use for does no harm.
 *
 * @param chosen the values of each setting, one or several
 */
public record EstimateSettings(Map<Setting, List<String>> chosen) {

  private static final JsonMapper STRICT =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final Confidence USUAL = Confidence.of(0.95);

  public EstimateSettings {
    Map<Setting, List<String>> copy = new EnumMap<>(Setting.class);
    copy.putAll(chosen);
    chosen = copy;
  }

  /** Every setting left to its default. */
  public static EstimateSettings none() {
    return new EstimateSettings(Map.of());
  }

  /**
   * Reads a JSON object of settings.
   *
   * @throws UnusableData where the file cannot be read, is no JSON object, or names another setting
   */
  public static EstimateSettings read(Path file) {
    try {
      return of(file.toString(), STRICT.readTree(Files.readString(file)));
    } catch (NoSuchFileException e) {
      throw new UnusableData(file + ": there is no such file.");
    } catch (JsonProcessingException e) {
      throw new UnusableData(
          file + ", line " + e.getLocation().getLineNr() + ": no JSON: " + e.getOriginalMessage());
    } catch (IOException e) {
      throw new UnusableData(file + ": the file cannot be read: " + e.getMessage() + ".");
    }
  }

  /** Of an object of settings that was read from a source of this name. */
  static EstimateSettings of(String source, JsonNode json) {
    if (!json.isObject()) {
      throw new UnusableData(source + ": settings must be a JSON object.");
    }
    EstimateSettings settings = none();
    for (Map.Entry<String, JsonNode> entry : json.properties()) {
      Setting setting =
          Setting.of(entry.getKey())
              .orElseThrow(
                  () ->
                      new UnusableData(
                          "%s: there is no setting %s; there are %s."
                              .formatted(source, entry.getKey(), Setting.words())));
      settings = settings.with(setting, values(entry.getValue()));
    }
    return settings;
  }

  private static List<String> values(JsonNode value) {
    return value.isArray()
        ? StreamSupport.stream(value.spliterator(), false).map(JsonNode::asText).toList()
        : List.of(value.asText());
  }

  /** The same with another choice for one setting. */
  public EstimateSettings with(Setting setting, List<String> values) {
    Map<Setting, List<String>> copy = new EnumMap<>(Setting.class);
    copy.putAll(chosen);
    copy.put(setting, List.copyOf(values));
    return new EstimateSettings(copy);
  }

  /**
   * Of all limits that say no other.
   *
   * @throws UnusableData if it was chosen, and does not lie between 0 and 1
   */
  Confidence confidence() {
    return level(Setting.CONF);
  }

  /**
   * The chance with which spares are to suffice.
   *
   * @throws UnusableData if it was chosen, and does not lie between 0 and 1
   */
  Confidence assurance() {
    return level(Setting.ASSURANCE);
  }

  private Confidence level(Setting setting) {
    OptionalDouble level = number(setting);
    if (level.isEmpty()) {
      return USUAL;
    }
    if (!(level.getAsDouble() > 0 && level.getAsDouble() < 1)) {
      throw unusable(setting, "must lie between 0 and 1");
    }
    return Confidence.of(level.getAsDouble());
  }

  /** The confidence of a row's limits: its own {@code conf}, where it states one. */
  Confidence confidence(DataRow row) {
    Confidence usual = confidence();
    if (!row.states(Setting.CONF.word())) {
      return usual;
    }
    double level = row.number(Setting.CONF.word());
    if (!(level > 0 && level < 1)) {
      throw row.impossible(Setting.CONF.word(), "must lie between 0 and 1: " + level);
    }
    return Confidence.of(level);
  }

  /** The one number of a setting; empty where it was not chosen. */
  OptionalDouble number(Setting setting) {
    Optional<List<Double>> numbers = numbers(setting);
    if (numbers.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (numbers.get().size() != 1) {
      throw unusable(setting, "must be one number");
    }
    return OptionalDouble.of(numbers.get().get(0));
  }

  /** The finite numbers of a setting; empty where it was not chosen. */
  Optional<List<Double>> numbers(Setting setting) {
    return words(setting).map(words -> words.stream().map(word -> parse(setting, word)).toList());
  }

  /** The words of a setting; empty where it was not chosen. */
  Optional<List<String>> words(Setting setting) {
    return Optional.ofNullable(chosen.get(setting));
  }

  private double parse(Setting setting, String word) {
    try {
      double number = Double.parseDouble(word);
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException e) {
      throw unusable(setting, "no number: " + word);
    }
    throw unusable(setting, "no finite number: " + word);
  }

  UnusableData unusable(Setting setting, String why) {
    return new UnusableData("The setting " + setting.word() + ": " + why + ".");
  }
}
