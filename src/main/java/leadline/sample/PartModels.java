package leadline.sample;

import java.util.Map;
import java.util.Set;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.sample.PartModel.Access;
import leadline.sample.PartModel.Change;

/**
 * The lives drawn for each part. All values are invented for the sample: no engine's parts are
 * known to live so.
 */
public final class PartModels {

  private static final Map<String, PartModel> FUEL_INJECTOR =
      Map.ofEntries(
          Map.entry(
              "nozzle",
              new PartModel(
                  2.5, 17_000, .10, Access.DISMANTLED, Set.of(Change.FUEL, Change.NOZZLE_TYPE))),
          Map.entry("spindle-guide", laidBare(2.8, 26_000, .80)),
          Map.entry(
              "cutoff-slide",
              new PartModel(2.2, 30_000, .10, Access.DISMANTLED, Set.of(Change.FUEL))),
          Map.entry("thrust-piece", laidBare(2.5, 60_000, .50)),
          Map.entry("foot", laidBare(2.0, 80_000, .50)),
          Map.entry("main-spring", laidBare(1.8, 60_000, .50)),
          Map.entry("nrv-spring", leftShut(2.0, 21_000, .03)),
          Map.entry("nrv-seat", leftShut(2.2, 28_000, .03)),
          Map.entry("shims", laidBare(1.5, 90_000, .50)),
          Map.entry("head-bore", laidBare(2.0, 120_000, .50)),
          Map.entry("o-rings", laidBare(1.2, 150_000, .30)));

  private static final Map<String, Map<String, PartModel>> BY_COMPONENT =
      Map.of(
          "fuel-injector",
          FUEL_INJECTOR,
          "exhaust-valve",
          Map.of(
              "spindle", laidBare(2.5, 45_000, .50),
              "seat", laidBare(2.5, 50_000, .50),
              "guide-bush", laidBare(2.2, 60_000, .50),
              "air-piston-seal", laidBare(1.6, 70_000, .50),
              "safety-valve-spring", leftShut(1.8, 60_000, .05)),
          "starting-air-valve",
          Map.of(
              "spindle-seat", laidBare(2.0, 70_000, .50),
              "piston", laidBare(2.0, 80_000, .50),
              "valve-spring", leftShut(1.8, 70_000, .10)),
          "generator-injector",
          Map.of(
              "nozzle", laidBare(2.4, 9_000, .15),
              "nozzle-spring", laidBare(1.9, 25_000, .50),
              "o-rings", laidBare(1.2, 60_000, .30)),
          "compressor-valve",
          Map.of(
              "plate", laidBare(1.8, 6_000, .50),
              "valve-spring", laidBare(2.0, 5_500, .40),
              "seat", laidBare(2.2, 12_000, .50)));

  private PartModels() {}

  /** A part that is not in the tables lasts eight intervals of its component. */
  public static PartModel of(Component component, Part part) {
    return BY_COMPONENT
        .getOrDefault(component.name(), Map.of())
        .getOrDefault(part.name(), laidBare(2.0, 8 * component.interval().hours(), .10));
  }

  private static PartModel laidBare(double shape, double scale, double revealed) {
    return new PartModel(shape, scale, revealed, Access.DISMANTLED, Set.of());
  }

  private static PartModel leftShut(double shape, double scale, double revealed) {
    return new PartModel(shape, scale, revealed, Access.BY_HABIT, Set.of());
  }
}
