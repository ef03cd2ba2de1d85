package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadline.stats.Confidence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EstimateSettingsTest {

  @TempDir private Path folder;

  @Test
  void aSettingIsOneValueOrAList() throws IOException {
    EstimateSettings settings =
        read("{\"conf\": 0.9, \"families\": \"weibull\", \"fixed_shapes\": [1.5, 3]}");
    assertEquals(Confidence.of(0.9), settings.confidence());
    assertEquals(Optional.of(List.of("weibull")), settings.words(Setting.FAMILIES));
    assertEquals(Optional.of(List.of(1.5, 3.0)), settings.numbers(Setting.FIXED_SHAPES));
    assertEquals(OptionalDouble.empty(), settings.number(Setting.CONDITIONAL_ON));
    assertEquals(Optional.empty(), settings.words(Setting.TRUNCATION));
  }

  @Test
  void aLaterChoiceStandsAboveTheFile() throws IOException {
    EstimateSettings settings = read("{\"conf\": 0.9}").with(Setting.CONF, List.of("0.8"));
    assertEquals(Confidence.of(0.8), settings.confidence());
    assertEquals(Confidence.of(0.95), EstimateSettings.none().confidence());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "[]", "{\"konf\": 0.9}", "{\"conf\": 0.9", "{\"conf\": 1, \"conf\": 2}"})
  void whatIsNoObjectOfSettingsIsRefused(String json) {
    assertThrows(UnusableData.class, () -> read(json));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "0", "-0.5", "95", "\"NaN\"", "\"high\"", "[0.9, 0.8]", "null"})
  void aConfidenceThatIsNoneIsRefused(String value) throws IOException {
    EstimateSettings settings = read("{\"conf\": " + value + "}");
    assertThrows(UnusableData.class, settings::confidence);
  }

  @Test
  void aMissingFileIsRefused() {
    assertThrows(UnusableData.class, () -> EstimateSettings.read(folder.resolve("none.json")));
  }

  private EstimateSettings read(String json) throws IOException {
    return EstimateSettings.read(Files.writeString(folder.resolve("settings.json"), json));
  }
}
