package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EnvironmentTest {

  private static final Environment ENVIRONMENT =
      new Environment(
          Map.of("LAKE", "/data/our lake", "EMPTY", "", "NESTED", "${LAKE}", "PRICE", "$1\\2"));

  private final SettingErrors errors = new SettingErrors(Path.of("job.json"));

  /** IEEE Std 1003.1-2017, Shell Command Language, section 2.6.2, from memory: {@code :-}. */
  @ParameterizedTest
  @CsvSource({
    "plain text, plain text",
    "${LAKE}, /data/our lake",
    "${LAKE:-other}/2024, /data/our lake/2024",
    "${NONE:-../target/a lake}/x, ../target/a lake/x",
    "${EMPTY:-default}, default",
    "a${NONE:-}b, ab",
    "${LAKE}:${NONE:-y}, /data/our lake:y",
    "${NESTED}, ${LAKE}",
    "${PRICE}, $1\\2",
    "$LAKE costs $5, $LAKE costs $5",
  })
  void aTextIsExpanded(String written, String expanded) {
    assertEquals(expanded, expand(written).textValue());
    errors.throwIfAny();
  }

  @ParameterizedTest
  @ValueSource(strings = {"${NONE}", "a/${NONE}/b"})
  void aVariableWithoutValueAndDefaultIsAnError(String written) {
    expand(written);

    assertEquals(
        List.of(
            "$: the environment variable `NONE` is not set; set it, or write a default:"
                + " `${NONE:-default}`"),
        Fixtures.lines(errors.exception().errors()));
  }

  @Test
  void anEmptyVariableWithoutDefaultIsAnErrorSoThatNoPathBecomesTheJobsOwnFolder() {
    expand("${EMPTY}");

    assertEquals(1, errors.exception().errors().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"${LAKE", "${}", "${2}", "${LAKE-x}", "${LAKE:-${EMPTY}", "${LA KE}"})
  void aReferenceThatIsNotUnderstoodIsAnError(String written) {
    expand(written);

    assertEquals(
        "`${` is not closed or not understood; allowed are `${NAME}` and `${NAME:-default}`",
        errors.exception().errors().get(0).sentence());
  }

  @Test
  void textsAreExpandedAtAnyDepthAndErrorsSayWhere() {
    JsonNode tree =
        JsonNodeFactory.instance
            .objectNode()
            .put("lake", "${LAKE}")
            .put("hours", 24)
            .set(
                "steps",
                JsonNodeFactory.instance
                    .arrayNode()
                    .add("${LAKE}")
                    .add(JsonNodeFactory.instance.objectNode().put("in box", "${NONE}")));

    JsonNode expanded = ENVIRONMENT.expand(tree, SettingErrors.ROOT, errors);

    assertEquals("/data/our lake", expanded.at("/lake").textValue());
    assertEquals(24, expanded.at("/hours").intValue());
    assertEquals("/data/our lake", expanded.at("/steps/0").textValue());
    assertEquals("$.steps[1]['in box']", errors.exception().errors().get(0).path());
  }

  private JsonNode expand(String text) {
    return ENVIRONMENT.expand(JsonNodeFactory.instance.textNode(text), SettingErrors.ROOT, errors);
  }
}
