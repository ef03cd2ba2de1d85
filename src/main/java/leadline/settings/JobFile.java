package leadline.settings;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.ItemExchange;
import leadline.quantity.RunningHours;

/** Reads a job file. */
public final class JobFile {

  private JobFile() {}

  /**
   * The job of a file.
   *
   * @param environment the variables that the file may use
   * @param shared where the job files' schema is, and the catalogue unless the file names another
   * @param now the moment by which a month must have ended
   * @throws SettingsException with everything that is wrong with the file and its catalogue
   */
  public static Job read(
      Path file, Map<String, String> environment, SharedFolder shared, Instant now) {
    SettingErrors errors = new SettingErrors(file);
    JsonNode written = JsonFile.read(file, errors);
    JsonNode tree = new Environment(environment).expand(written, SettingErrors.ROOT, errors);
    shared.schema("job").check(tree, errors);
    Setting root = new Setting(tree, SettingErrors.ROOT, errors);
    SettingMeanings meanings = new SettingMeanings(file, now);
    Optional<Path> lake = meanings.path(root.at("lake"));
    StepSettings reader = new StepSettings(meanings);
    List<Step> steps =
        root.at("steps").items().stream().flatMap(step -> reader.read(step).stream()).toList();
    Optional<Catalogue> catalogue = catalogue(root, meanings, shared);
    ItemExchange exchange = new ExchangeGroups(root.at("item_exchange")).read();
    errors.throwIfAny();
    return new Job(
        lake.orElseThrow(),
        catalogue.orElseThrow(),
        root.at("hours_tolerance_h")
            .wholeNumber()
            .map(RunningHours::ofHours)
            .orElse(Job.DEFAULT_HOURS_TOLERANCE),
        exchange,
        root.at("lock_wait_s").wholeNumber().map(Duration::ofSeconds).orElse(Job.DEFAULT_LOCK_WAIT),
        steps);
  }

  private static Optional<Catalogue> catalogue(
      Setting root, SettingMeanings meanings, SharedFolder shared) {
    Setting named = root.at("catalogue");
    Optional<Path> file =
        named.value().isMissingNode() ? Optional.of(shared.catalogue()) : meanings.path(named);
    try {
      return file.map(path -> CatalogueFile.read(path, shared))
          .map(catalogue -> new PolicyIntervals(root.at("policy_interval_h")).in(catalogue));
    } catch (SettingsException e) {
      root.errors().addAll(e);
      return Optional.empty();
    }
  }
}
