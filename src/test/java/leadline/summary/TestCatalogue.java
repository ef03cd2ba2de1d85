package leadline.summary;

import java.util.List;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.Renewal;
import leadline.quantity.RunningHours;

/** Few components, each for a rule: places, units, machines; a spring by hours, one by starts. */
final class TestCatalogue {

  static final Part NOZZLE = part("nozzle", PartShape.FIT, Renewal.ON_CONDITION, Clock.HOURS);
  static final Part NRV_SPRING =
      part("nrv-spring", PartShape.SPRING, Renewal.ON_CONDITION, Clock.HOURS);
  static final Part O_RINGS = part("o-rings", PartShape.FIT, Renewal.ROUTINE, Clock.HOURS);
  static final Part STARTING_SPRING =
      part("valve-spring", PartShape.SPRING, Renewal.ON_CONDITION, Clock.STARTS);
  static final Part PLATE = part("plate", PartShape.FIT, Renewal.ON_CONDITION, Clock.HOURS);

  static final Component INJECTOR =
      new Component(
          "fuel-injector",
          PositionsPer.PLACE,
          Set.of("main-engine"),
          RunningHours.ofHours(8_000),
          List.of(NOZZLE, NRV_SPRING, O_RINGS));
  static final Component STARTING_VALVE =
      new Component(
          "starting-air-valve",
          PositionsPer.UNIT,
          Set.of("main-engine"),
          RunningHours.ofHours(12_000),
          List.of(STARTING_SPRING));
  static final Component COMPRESSOR_VALVE =
      new Component(
          "compressor-valve",
          PositionsPer.MACHINE,
          Set.of("air-compressor"),
          RunningHours.ofHours(1_500),
          List.of(PLATE));

  static final Catalogue CATALOGUE =
      new Catalogue(List.of(INJECTOR, STARTING_VALVE, COMPRESSOR_VALVE));

  private TestCatalogue() {}

  static Component withInterval(Component component, long hours) {
    return new Component(
        component.name(),
        component.per(),
        component.machineKinds(),
        RunningHours.ofHours(hours),
        component.parts());
  }

  private static Part part(String name, PartShape shape, Renewal renewal, Clock clock) {
    return new Part(
        name,
        shape,
        FailureShows.MAY_STAY_UNSEEN,
        Set.of(FoundWord.BROKEN, FoundWord.CRACKED),
        Set.of(FoundWord.WORN),
        Set.of(),
        renewal,
        clock,
        "injection");
  }
}
