package leadline.golden;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.quantity.RunningHours;
import leadline.settings.Step;

/** A month's published tables, as a reader of the CSV files sees them. */
record Published(Path tables) {

  /**
   * Reads the inbox of a folder, computes and publishes.
   *
   * @param policyInterval of every component, in hours
   */
  static Published of(Path folder, int policyInterval) {
    Path out = folder.resolve("out");
    new Pipeline(folder.resolve("lake"), catalogue(policyInterval))
        .run(
            new Step.Ingest(folder.resolve("inbox")),
            new Step.Compute(GoldenFleet.MONTH, Optional.empty()),
            new Step.Publish(GoldenFleet.MONTH, out, new Step.RunChoice.Newest()));
    return new Published(out.resolve(GoldenFleet.MONTH.toString()).resolve("tables"));
  }

  /** The whole fleet's row of a part for a distribution. */
  Map<String, String> life(String part, String distribution) {
    return only("part_life", Map.of("part", part, "distribution", distribution));
  }

  /** The whole fleet's row of the curve by openings at an age. */
  Map<String, String> curve(String spring, int age) {
    return only(
        "spring_survival",
        Map.of("part", spring, "method", "npmle", "age_h", Integer.toString(age)));
  }

  /** The one row since the start that has these values; of the whole fleet unless they say. */
  Map<String, String> only(String table, Map<String, String> values) {
    List<Map<String, String>> rows =
        Expected.read(tables.resolve(table + ".csv")).stream()
            .filter(row -> row.get("window").equals("since-start"))
            .filter(row -> row.get("stratum").equals(values.getOrDefault("stratum", "all")))
            .filter(row -> row.entrySet().containsAll(values.entrySet()))
            .toList();
    if (rows.size() != 1) {
      throw new AssertionError(values + " has " + rows.size() + " rows in " + table);
    }
    return rows.get(0);
  }

  private static Catalogue catalogue(int policyInterval) {
    Stream<Component> components = GoldenFleet.catalogue().components().stream();
    return new Catalogue(
        components
            .map(
                component ->
                    new Component(
                        component.name(),
                        component.per(),
                        component.machineKinds(),
                        RunningHours.ofHours(policyInterval),
                        component.parts()))
            .toList());
  }
}
