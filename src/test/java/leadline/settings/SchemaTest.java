package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import leadline.fleet.Clock;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.Renewal;
import leadline.fleet.TestResult;
import leadline.fleet.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemaTest {

  /** JSON Schema 2020-12, the meta-schema, as the validator library carries it. */
  @ParameterizedTest
  @ValueSource(strings = {"job", "catalogue", "source"})
  void aSchemaIsValidJsonSchema(String name) {
    JsonNode schema = schema(name);
    String metaSchema = schema.path("$schema").textValue();

    assertEquals("https://json-schema.org/draft/2020-12/schema", metaSchema);
    assertEquals(
        List.of(),
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of(metaSchema))
            .validate(schema));
  }

  @ParameterizedTest
  @ValueSource(strings = {"job", "catalogue", "source"})
  void theFixturesUseEverySettingWellAndBadly(String name) {
    Set<String> settings = settingsOf(schema(name));
    JsonNode good = read(Fixtures.FOLDER.resolve(name + "-good.json"));
    List<String> faultyPaths = new ArrayList<>();
    bad(name).forEach(error -> faultyPaths.add(error.path()));

    assertTrue(settings.size() > 10, settings::toString);
    for (String setting : settings) {
      assertTrue(!good.findValues(setting).isEmpty(), setting);
      Pattern segment = Pattern.compile("(?<!\\w)" + Pattern.quote(setting) + "(?!\\w)");
      assertTrue(faultyPaths.stream().anyMatch(path -> segment.matcher(path).find()), setting);
    }
  }

  @Test
  void theWordsOfTheCatalogueAreThoseOfTheTrade() {
    JsonNode definitions = schema("catalogue").path("$defs");
    assertWords(PositionsPer.class, definitions.at("/component/properties/per"));
    assertWords(PartShape.class, definitions.at("/part/properties/shape"));
    assertWords(FailureShows.class, definitions.at("/part/properties/failure_shows"));
    assertWords(Renewal.class, definitions.at("/part/properties/renewal"));
    assertWords(Clock.class, definitions.at("/part/properties/clock"));
    assertEquals(
        List.of(TestResult.PASSED.word()),
        enumOf(definitions.at("/part/properties/proven_by/items")));
    assertEquals(
        EnumSet.complementOf(EnumSet.of(FoundWord.SOUND, FoundWord.MISSING)).stream()
            .map(Written::word)
            .toList(),
        enumOf(definitions.at("/found_words/items")));
  }

  @Test
  void theDefaultsThatTheSchemasStateAreTheOnesInForce() {
    JsonNode job = schema("job").path("properties");
    JsonNode tidy = schema("job").at("/$defs/tidy/properties");
    JsonNode part = schema("catalogue").at("/$defs/part/properties");

    assertEquals(
        Job.DEFAULT_HOURS_TOLERANCE.toString(), job.at("/hours_tolerance_h/default").toString());
    assertEquals(Job.DEFAULT_LOCK_WAIT.toSeconds(), job.at("/lock_wait_s/default").longValue());
    assertEquals(Step.Tidy.DEFAULT_OLDER_THAN, tidy.at("/older_than/default").textValue());
    assertEquals(Step.Tidy.DEFAULT_RUNS_KEPT, tidy.at("/keep_runs/default").intValue());
    assertEquals(Renewal.ON_CONDITION.word(), part.at("/renewal/default").textValue());
    assertEquals(Clock.HOURS.word(), part.at("/clock/default").textValue());
  }

  private static <E extends Enum<E> & Written> void assertWords(Class<E> words, JsonNode schema) {
    assertEquals(Set.copyOf(Written.words(words)), Set.copyOf(enumOf(schema)));
  }

  private static List<String> enumOf(JsonNode schema) {
    List<String> words = new ArrayList<>();
    schema.path("enum").forEach(word -> words.add(word.textValue()));
    return words;
  }

  private static Set<String> settingsOf(JsonNode schema) {
    Set<String> names = new TreeSet<>();
    schema
        .findValues("properties")
        .forEach(properties -> properties.fieldNames().forEachRemaining(names::add));
    return names;
  }

  private static List<SettingError> bad(String name) {
    Path file = Fixtures.FOLDER.resolve(name + "-bad.json");
    return switch (name) {
      case "job" -> Fixtures.jobErrors(file, Map.of());
      case "catalogue" -> Fixtures.catalogueErrors(file);
      default -> Fixtures.sourceErrors(file);
    };
  }

  private static JsonNode schema(String name) {
    return read(Fixtures.SHARED.folder().resolve("schemas").resolve(name + ".schema.json"));
  }

  private static JsonNode read(Path file) {
    return JsonFile.read(file, new SettingErrors(file));
  }
}
