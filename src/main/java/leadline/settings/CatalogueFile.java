package leadline.settings;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.LimitBy;
import leadline.fleet.OverhaulLimit;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.Renewal;
import leadline.fleet.TestResult;
import leadline.quantity.RunningHours;

/** Reads a catalogue file. */
public final class CatalogueFile {

  private CatalogueFile() {}

  /**
   * The catalogue of a file.
   *
   * @param shared where the catalogue's schema is
   * @throws SettingsException with everything that is wrong with the file
   */
  public static Catalogue read(Path file, SharedFolder shared) {
    SettingErrors errors = new SettingErrors(file);
    JsonNode tree = JsonFile.read(file, errors);
    shared.schema("catalogue").check(tree, errors);
    Setting root = new Setting(tree, SettingErrors.ROOT, errors);
    List<Setting> components = root.at("components").items();
    refuseRepeatedNames(components);
    components.forEach(component -> refuseRepeatedNames(component.at("parts").items()));
    refuseFailedBeyondLimit(root.at("found_words"));
    errors.throwIfAny();
    return new Catalogue(
        components.stream().map(each -> component(each, root.at("found_words"))).toList());
  }

  private static void refuseRepeatedNames(List<Setting> entries) {
    Set<String> names = new HashSet<>();
    for (Setting entry : entries) {
      Setting name = entry.at("name");
      name.text()
          .filter(text -> !names.add(text))
          .ifPresent(text -> name.error("`%s` is in this list already".formatted(text)));
    }
  }

  private static void refuseFailedBeyondLimit(Setting foundWords) {
    Set<String> failed =
        foundWords
            .at("failed")
            .members()
            .flatMap(shape -> shape.items().stream())
            .flatMap(word -> word.text().stream())
            .collect(Collectors.toSet());
    for (Setting word : foundWords.at("beyond_limit").items()) {
      word.text()
          .filter(failed::contains)
          .ifPresent(
              text ->
                  word.error(
                      "`%s` already means failed; a word is allowed in one of the two meanings"
                          .formatted(text)));
    }
  }

  private static Component component(Setting component, Setting foundWords) {
    String isoSubunit = component.at("iso_14224_subunit").text().orElseThrow();
    return new Component(
        component.at("name").text().orElseThrow(),
        component.at("per").word(PositionsPer.class).orElseThrow(),
        component.at("machine_kinds").items().stream()
            .map(kind -> kind.text().orElseThrow())
            .collect(Collectors.toSet()),
        new OverhaulLimit<>(
            LimitBy.CATALOGUE,
            RunningHours.ofHours(component.at("interval_h").wholeNumber().orElseThrow()),
            component.at("interval_source").text().orElseThrow()),
        limits(component, "hours", RunningHours::ofHours),
        limits(component, "months", Long::intValue),
        component.at("parts").items().stream()
            .map(each -> part(each, foundWords, isoSubunit))
            .toList());
  }

  private static <T extends Comparable<T> & Serializable> List<OverhaulLimit<T>> limits(
      Setting component, String unit, Function<Long, T> length) {
    return component.at("limits").items().stream()
        .flatMap(
            limit ->
                limit.at(unit).wholeNumber().stream()
                    .map(length)
                    .map(
                        given ->
                            new OverhaulLimit<>(
                                limit.at("by").word(LimitBy.class).orElseThrow(),
                                given,
                                limit.at("source").text().orElseThrow())))
        .toList();
  }

  private static Part part(Setting part, Setting foundWords, String isoSubunit) {
    PartShape shape = part.at("shape").word(PartShape.class).orElseThrow();
    return new Part(
        part.at("name").text().orElseThrow(),
        shape,
        part.at("failure_shows").word(FailureShows.class).orElseThrow(),
        foundWords.at("failed").at(shape.word()).words(FoundWord.class),
        foundWords.at("beyond_limit").words(FoundWord.class),
        part.at("proven_by").words(TestResult.class),
        part.at("renewal").word(Renewal.class).orElse(Renewal.ON_CONDITION),
        part.at("clock").word(Clock.class).orElse(Clock.HOURS),
        isoSubunit);
  }
}
