package leadline.history;

import java.util.EnumSet;
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
import leadline.fleet.TestResult;
import leadline.quantity.RunningHours;

/**
 * The fuel injector and the exhaust valve of a two-stroke engine. Which part may fail unseen, what
 * a stand test proves and the intervals are common practice, no source.
 */
final class TestCatalogue {

  private static final Set<FoundWord> BROKEN = EnumSet.of(FoundWord.BROKEN, FoundWord.CRACKED);
  private static final Set<FoundWord> NOT_WORKING =
      EnumSet.of(
          FoundWord.STUCK,
          FoundWord.LEAKING,
          FoundWord.BLOCKED,
          FoundWord.BROKEN,
          FoundWord.CRACKED);
  private static final Set<FoundWord> WORN_OUT =
      EnumSet.of(
          FoundWord.WORN,
          FoundWord.SCORED,
          FoundWord.CORRODED,
          FoundWord.ERODED,
          FoundWord.DEFORMED);

  static final Component FUEL_INJECTOR =
      new Component(
          "fuel-injector",
          PositionsPer.PLACE,
          Set.of("main-engine"),
          RunningHours.ofHours(8000),
          List.of(
              tested("nozzle", PartShape.FIT),
              shown("spindle-guide"),
              tested("cutoff-slide", PartShape.FIT),
              shown("thrust-piece"),
              shown("foot"),
              tested("main-spring", PartShape.SPRING),
              unseen("nrv-spring", PartShape.SPRING),
              unseen("nrv-seat", PartShape.FIT),
              shown("shims"),
              shown("head-bore"),
              part("o-rings", PartShape.FIT, FailureShows.ALWAYS, Set.of(), Renewal.ROUTINE)));

  static final Component EXHAUST_VALVE =
      new Component(
          "exhaust-valve",
          PositionsPer.UNIT,
          Set.of("main-engine"),
          RunningHours.ofHours(12000),
          List.of(
              shown("spindle"),
              shown("seat"),
              shown("guide-bush"),
              shown("air-piston-seal"),
              unseen("safety-valve-spring", PartShape.SPRING)));

  static final Catalogue CATALOGUE = new Catalogue(List.of(FUEL_INJECTOR, EXHAUST_VALVE));

  private TestCatalogue() {}

  private static Part shown(String name) {
    return part(name, PartShape.FIT, FailureShows.ALWAYS, Set.of(), Renewal.ON_CONDITION);
  }

  private static Part unseen(String name, PartShape shape) {
    return part(name, shape, FailureShows.MAY_STAY_UNSEEN, Set.of(), Renewal.ON_CONDITION);
  }

  private static Part tested(String name, PartShape shape) {
    return part(
        name, shape, FailureShows.MAY_STAY_UNSEEN, Set.of(TestResult.PASSED), Renewal.ON_CONDITION);
  }

  private static Part part(
      String name, PartShape shape, FailureShows shows, Set<TestResult> provenBy, Renewal renewal) {
    return new Part(
        name,
        shape,
        shows,
        shape == PartShape.SPRING ? BROKEN : NOT_WORKING,
        WORN_OUT,
        provenBy,
        renewal,
        Clock.HOURS,
        "fuel");
  }
}
