package leadline.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leadline.fleet.RecordKind;
import leadline.quantity.Days;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SampleFleetTest {

  private static final FleetPlan PLAN = SampleCatalogue.usual(2);

  @ParameterizedTest
  @ValueSource(longs = {0, 1, -5, Long.MAX_VALUE})
  void aVesselIsTheSameWhateverElseWasMade(long seed) {
    SampleFleet fleet = new SampleFleet(PLAN, seed);
    fleet.vessel(1);
    fleet.vessel(40);
    assertEquals(new SampleFleet(PLAN, seed).vessel(3), fleet.vessel(3));
  }

  @Test
  void anotherNumberIsAnotherFleet() {
    assertNotEquals(
        new SampleFleet(PLAN, 1).vessel(1).lives(), new SampleFleet(PLAN, 2).vessel(1).lives());
  }

  @Test
  void noTwoVesselsBearOneName() {
    Set<String> names =
        IntStream.rangeClosed(1, 2000)
            .mapToObj(number -> VesselName.of(number, Draw.of(7)).identifier())
            .collect(Collectors.toSet());
    assertEquals(2000, names.size());
    names.forEach(name -> assertTrue(name.matches("[a-z]+(-[0-9]+)?"), name));
  }

  /** What the ships write down changes nothing of what happened. */
  @Test
  void errorsOfTheRecordsLeaveTheTruthAlone() {
    FleetPlan clean = PLAN.withErrors(ErrorRates.NONE);
    for (int number = 1; number <= 5; number++) {
      SampleVessel faulty = new SampleFleet(PLAN, 3).vessel(number);
      SampleVessel sound = new SampleFleet(clean, 3).vessel(number);
      assertEquals(sound.lives(), faulty.lives());
      assertFalse(faulty.errors().isEmpty());
      assertEquals(0, sound.errors().size());
      assertNotEquals(sound.rows(), faulty.rows());
    }
  }

  @Test
  void aPlanOfOneComponentHasTheSameLivesOfIt() {
    SampleVessel whole = new SampleFleet(PLAN, 3).vessel(2);
    SampleVessel part = new SampleFleet(SampleCatalogue.injectors(PLAN), 3).vessel(2);
    assertEquals(
        whole.lives().stream().filter(life -> life.component().equals("fuel-injector")).toList(),
        part.lives());
    assertEquals(1, part.rows(RecordKind.MACHINES).size());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void theRecordsLieWithinTheirTime(int number) {
    ErrorRates dated =
        ErrorRates.usual()
            .with(RecordError.READING_DAY_OFF, 0)
            .with(RecordError.READING_YEAR_OFF, 0);
    SampleRecords records = new SampleFleet(PLAN.withErrors(dated), 4).vessel(number).records();
    records
        .overhauls()
        .forEach(
            overhaul -> {
              assertFalse(overhaul.removedOn().isBefore(PLAN.firstDay()), overhaul::toString);
              assertFalse(overhaul.removedOn().isAfter(PLAN.lastDay()), overhaul::toString);
            });
    records
        .readings()
        .forEach(
            reading -> {
              assertFalse(reading.at().isBefore(Days.startOf(PLAN.firstDay())));
              assertFalse(reading.at().isAfter(Days.endOf(PLAN.lastDay())));
            });
    assertFalse(records.overhauls().isEmpty());
  }

  /** Written down from a first run: another platform must not draw otherwise. */
  @Test
  void theFirstDrawsAreTheseOnEveryMachine() {
    Draw draw = Draw.of(1).branch("vessel", 1);
    assertEquals(
        "0.687798671440539,0.717023451881580",
        String.format(Locale.ROOT, "%.15f,%.15f", draw.uniform(), draw.normal(0, 1)));
  }
}
