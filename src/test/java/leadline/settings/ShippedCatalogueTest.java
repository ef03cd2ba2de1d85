package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.Renewal;
import leadline.fleet.TestResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The catalogue that the program brings. All of it is common practice, no source. */
class ShippedCatalogueTest {

  private static final Catalogue CATALOGUE =
      CatalogueFile.read(Fixtures.SHARED.catalogue(), Fixtures.SHARED);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fuel-injector      | PLACE | 8000  | main-engine      | nozzle spindle-guide cutoff-slide thrust-piece foot main-spring nrv-spring nrv-seat shims head-bore o-rings
          exhaust-valve      | UNIT  | 12000 | main-engine      | spindle seat guide-bush air-piston-seal safety-valve-spring
          starting-air-valve | UNIT  | 12000 | main-engine      | spindle-seat piston valve-spring
          generator-injector | PLACE | 4000  | generator-engine | nozzle nozzle-spring o-rings
          compressor-valve   | PLACE | 1500  | air-compressor   | plate valve-spring seat
          """)
  void aComponentHasItsPositionsIntervalAndParts(
      String name, String per, String hours, String machineKind, String parts) {
    Component component = CATALOGUE.component(name).orElseThrow();
    assertEquals(per, component.per().name());
    assertEquals(hours, component.interval().toString());
    assertEquals(Set.of(machineKind), component.machineKinds());
    assertEquals(
        List.of(parts.split(" ", -1)), component.parts().stream().map(Part::name).toList());
  }

  @Test
  void thereIsNoOtherComponent() {
    assertEquals(5, CATALOGUE.components().size());
  }

  @Test
  void theFailureOfThesePartsMayStayUnseen() {
    assertEquals(
        Set.of(
            "fuel-injector nozzle",
            "fuel-injector cutoff-slide",
            "fuel-injector main-spring",
            "fuel-injector nrv-spring",
            "fuel-injector nrv-seat",
            "exhaust-valve safety-valve-spring",
            "starting-air-valve valve-spring",
            "generator-injector nozzle",
            "generator-injector nozzle-spring",
            "compressor-valve valve-spring"),
        partsThat(part -> part.failureShows() == FailureShows.MAY_STAY_UNSEEN));
  }

  @Test
  void thesePartsAreSpringsAndFailByBreaking() {
    assertEquals(
        Set.of(
            "fuel-injector main-spring",
            "fuel-injector nrv-spring",
            "exhaust-valve safety-valve-spring",
            "starting-air-valve valve-spring",
            "generator-injector nozzle-spring",
            "compressor-valve valve-spring"),
        partsThat(Part::isSpring));
    Set<FoundWord> breaking = EnumSet.of(FoundWord.BROKEN, FoundWord.CRACKED);
    assertEquals(partsThat(Part::isSpring), partsThat(part -> part.failed().equals(breaking)));
  }

  @Test
  void allOtherPartsFailByAnyLossOfFunction() {
    Set<FoundWord> lossOfFunction =
        EnumSet.of(
            FoundWord.STUCK,
            FoundWord.LEAKING,
            FoundWord.BLOCKED,
            FoundWord.BROKEN,
            FoundWord.CRACKED);
    assertEquals(
        partsThat(part -> !part.isSpring()),
        partsThat(part -> part.failed().equals(lossOfFunction)));
  }

  @Test
  void theSameConditionsAreBeyondLimitForEveryPart() {
    Set<FoundWord> beyondLimit =
        EnumSet.of(
            FoundWord.WORN,
            FoundWord.SCORED,
            FoundWord.CORRODED,
            FoundWord.ERODED,
            FoundWord.DEFORMED);
    assertEquals(Set.of(), partsThat(part -> !part.beyondLimit().equals(beyondLimit)));
  }

  @Test
  void aPassedTestOnTheStandProvesTheseParts() {
    assertEquals(
        Set.of(
            "fuel-injector nozzle",
            "fuel-injector main-spring",
            "fuel-injector cutoff-slide",
            "generator-injector nozzle",
            "generator-injector nozzle-spring"),
        partsThat(part -> part.provenBy().equals(EnumSet.of(TestResult.PASSED))));
    assertEquals(Set.of(), partsThat(part -> part.provenBy().contains(TestResult.FAILED)));
  }

  @Test
  void onlySealRingsAreRenewedRoutinely() {
    assertEquals(
        Set.of("fuel-injector o-rings", "generator-injector o-rings"),
        partsThat(part -> part.renewal() == Renewal.ROUTINE));
  }

  @Test
  void onlyTheSpringOfTheStartingAirValveAgesByStarts() {
    assertEquals(
        Set.of("starting-air-valve valve-spring"), partsThat(part -> part.clock() == Clock.STARTS));
    assertEquals(Set.of(), partsThat(part -> part.clock() == Clock.MONTHS));
  }

  private static Set<String> partsThat(Predicate<Part> holds) {
    return CATALOGUE.components().stream()
        .flatMap(
            component ->
                component.parts().stream()
                    .filter(holds)
                    .map(part -> component.name() + " " + part.name()))
        .collect(Collectors.toSet());
  }
}
