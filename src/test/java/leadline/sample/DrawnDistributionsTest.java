package leadline.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadline.fleet.Column;
import leadline.fleet.FindingLayout;
import leadline.fleet.MachineLayout;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.Statement;
import leadline.history.OverhaulInterval;
import leadline.quantity.RunningHours;
import leadline.stats.Life;
import leadline.stats.LifeData;
import leadline.stats.LifeFamily;
import leadline.stats.LifeFit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn has the distributions that the guide and the tables of the sample state. */
@Tag("long")
class DrawnDistributionsTest {

  private static final int VESSELS = 150;

  private static final FleetPlan ALIKE =
      SampleCatalogue.clean(6)
          .withInfluences(Influences.NONE)
          .withPractice(new Practice(0, .02, 0, 0));

  private static List<SampleVessel> alike = List.of();
  private static List<SampleVessel> usual = List.of();

  @BeforeAll
  static void makeThem() {
    alike = vessels(ALIKE, 11);
    usual = vessels(SampleCatalogue.injectors(SampleCatalogue.usual(6)), 12);
  }

  private static List<SampleVessel> vessels(FleetPlan plan, long seed) {
    SampleFleet fleet = new SampleFleet(plan, seed);
    return IntStream.rangeClosed(1, VESSELS).mapToObj(fleet::vessel).toList();
  }

  /** Within five standard errors, so that one draw of a fleet decides and chance hardly ever. */
  private static void assertShare(double expected, long count, long of) {
    double error = Math.sqrt(expected * (1 - expected) / of);
    assertEquals(expected, count / (double) of, 5 * error, count + " of " + of);
  }

  @ParameterizedTest
  @CsvSource({
    "fuel-injector, nozzle, 2.5, 17000",
    "fuel-injector, spindle-guide, 2.8, 26000",
    "fuel-injector, cutoff-slide, 2.2, 30000",
    "fuel-injector, thrust-piece, 2.5, 60000",
    "fuel-injector, foot, 2.0, 80000",
    "fuel-injector, main-spring, 1.8, 60000",
    "fuel-injector, nrv-spring, 2.0, 21000",
    "fuel-injector, nrv-seat, 2.2, 28000",
    "fuel-injector, shims, 1.5, 90000",
    "fuel-injector, o-rings, 1.2, 150000",
    "exhaust-valve, safety-valve-spring, 1.8, 60000",
    "generator-injector, nozzle-spring, 1.9, 25000",
    "compressor-valve, plate, 1.8, 6000"
  })
  void theTrueLivesAreWeibull(String component, String part, double shape, double scale) {
    List<Life> lives =
        lives(alike)
            .filter(life -> life.component().equals(component) && life.part().equals(part))
            .filter(life -> life.bornOn().isAfter(ALIKE.firstDay()))
            .filter(life -> life.endedAt().isAbove(RunningHours.ZERO))
            .map(
                life ->
                    life.failure()
                        .map(failure -> Life.failedAt(failure.age()))
                        .orElseGet(() -> Life.outlived(life.endedAt().hours())))
            .toList();
    LifeFit fit = LifeFit.of(LifeFamily.WEIBULL, LifeData.of(lives)).fit().orElseThrow();
    double errorOfShape = fit.standardErrorOfLogSigma();
    assertEquals(0, Math.log(1 / fit.sigma() / shape) / errorOfShape, 4, "shape");
    assertEquals(0, (fit.mu() - Math.log(scale)) / fit.standardErrorOfMu(), 4, "scale");
  }

  @Test
  void theFuelAndTheVesselsFactorsActOnTheHazard() {
    double before = nozzlesFailedPerHour(new Influences(0, List.of(EngineType.A), 1, 1, 1));
    double later = nozzlesFailedPerHour(new Influences(0, List.of(EngineType.A), 10, 1, 1));
    double longer = nozzlesFailedPerHour(new Influences(0, List.of(EngineType.A), 1, 3, 1));
    assertTrue(later > 1.5 * before, before + " " + later);
    assertTrue(longer < before, before + " " + longer);
  }

  private static double nozzlesFailedPerHour(Influences influences) {
    FleetPlan plan = SampleCatalogue.injectors(ALIKE).withInfluences(influences);
    List<TrueLife> nozzles =
        lives(vessels(plan, 5)).filter(life -> life.part().equals("nozzle")).toList();
    return nozzles.stream().filter(life -> life.failure().isPresent()).count()
        / nozzles.stream().mapToDouble(life -> life.endedAt().hours()).sum();
  }

  @Test
  void vesselsFactorsAreGammaWithMeanOneAndShapeSix() {
    double[] factors =
        usual.stream().mapToDouble(vessel -> vessel.character().hazardFactor()).toArray();
    double mean = Arrays.stream(factors).average().orElse(0);
    double variance =
        Arrays.stream(factors).map(factor -> (factor - mean) * (factor - mean)).sum()
            / (VESSELS - 1);
    assertEquals(1, mean, 5 * Math.sqrt(1 / 6.0 / VESSELS));
    assertEquals(1 / 6.0, variance, .08);
  }

  /** A harmed part fails within some hundreds of hours, unless something else comes before. */
  @Test
  void workmanshipHarmsAsManyAsItShould() {
    FleetPlan plan =
        SampleCatalogue.injectors(ALIKE).withPractice(Practice.USUAL.withWorkmanship(.2));
    List<SampleVessel> vessels = vessels(plan, 8);
    long overhauls =
        vessels.stream().mapToLong(vessel -> vessel.rows(RecordKind.OVERHAULS).size()).sum();
    long harmed =
        lives(vessels)
            .flatMap(life -> life.failure().stream())
            .filter(failure -> failure.cause() == TrueLife.Cause.WORKMANSHIP)
            .count();
    assertEquals(.2, harmed / (double) overhauls, .02);
    assertEquals(
        0,
        lives(alike)
            .flatMap(life -> life.failure().stream())
            .filter(failure -> failure.cause() == TrueLife.Cause.WORKMANSHIP)
            .count());
  }

  @Test
  void withoutRevelationOnlyWhatAlwaysShowsIsSeenInService() {
    FleetPlan plan =
        SampleCatalogue.injectors(ALIKE).withInfluences(Influences.NONE.withRevelation(0));
    assertEquals(
        List.of("foot", "head-bore", "o-rings", "shims", "spindle-guide", "thrust-piece"),
        lives(vessels(plan, 6))
            .filter(life -> life.end() == TrueLife.End.FAILED_IN_SERVICE)
            .map(TrueLife::part)
            .distinct()
            .sorted()
            .toList());
  }

  @Test
  void habitsHaveTheirSharesAndOpenAsOftenAsTheySay() {
    Map<OpeningHabit, Long> habits =
        usual.stream()
            .collect(
                Collectors.groupingBy(
                    vessel -> vessel.character().openingHabit(), Collectors.counting()));
    HabitMix mix = HabitMix.USUAL;
    assertShare(mix.always(), habits.getOrDefault(OpeningHabit.ALWAYS, 0L), VESSELS);
    assertShare(mix.sometimes(), habits.getOrDefault(OpeningHabit.SOMETIMES, 0L), VESSELS);
    assertShare(mix.never(), habits.getOrDefault(OpeningHabit.NEVER, 0L), VESSELS);
    assertOpened(OpeningHabit.ALWAYS, .95);
    assertOpened(OpeningHabit.SOMETIMES, .40);
  }

  private static void assertOpened(OpeningHabit habit, double share) {
    List<SampleRow> rows =
        alike.stream()
            .filter(vessel -> vessel.character().openingHabit() == habit)
            .flatMap(vessel -> vessel.rows(RecordKind.FINDINGS).stream())
            .filter(row -> row.cells().need(FindingLayout.PART).equals("nrv-spring"))
            .toList();
    long opened =
        rows.stream()
            .filter(
                row -> row.cells().find(FindingLayout.OPENED).equals(Optional.of(Statement.YES)))
            .count();
    // A valve whose failure showed in service is opened whatever the habit: a little more.
    assertEquals(share, opened / (double) rows.size(), .03);
  }

  @Test
  void suspectVesselsFindMoreBrokenThanOthers() {
    assertTrue(brokenOfOpened(OpeningHabit.SUSPECT) > 1.5 * brokenOfOpened(OpeningHabit.ALWAYS));
  }

  private static double brokenOfOpened(OpeningHabit habit) {
    FleetPlan plan = SampleCatalogue.injectors(ALIKE).withHabits(HabitMix.all(habit));
    List<SampleRow> opened =
        vessels(plan, 21).stream()
            .flatMap(vessel -> vessel.rows(RecordKind.FINDINGS).stream())
            .filter(row -> row.cells().need(FindingLayout.PART).equals("nrv-spring"))
            .filter(row -> row.cells().find(FindingLayout.FOUND).isPresent())
            .toList();
    return opened.stream()
            .filter(row -> row.cells().find(FindingLayout.REVEALED).isPresent())
            .count()
        / (double) opened.size();
  }

  @Test
  void enginesHaveTheirCylindersAndInjectors() {
    assertEngines(MachineLayout.CYLINDERS, 5, .15);
    assertEngines(MachineLayout.CYLINDERS, 6, .50);
    assertEngines(MachineLayout.CYLINDERS, 7, .25);
    assertEngines(MachineLayout.CYLINDERS, 8, .10);
    assertEngines(MachineLayout.PLACES_PER_CYLINDER, 2, .6);
    assertShare(
        .25,
        usual.stream().filter(vessel -> vessel.character().engineType() == EngineType.C).count(),
        VESSELS);
  }

  private static void assertEngines(Column<Long> column, long value, double share) {
    assertShare(
        share,
        usual.stream()
            .filter(vessel -> vessel.rows(RecordKind.MACHINES).get(0).cells().need(column) == value)
            .count(),
        VESSELS);
  }

  /** An engine runs 4,300 to 7,000 h a year: common practice, no source. */
  @Test
  void mainEnginesRunAsManyHoursAYearAsTheyShould() {
    List<Double> hours = new ArrayList<>();
    for (SampleVessel vessel : alike) {
      RebuiltVessel rebuilt = RebuiltVessel.of(ALIKE, vessel);
      hours.add(
          rebuilt.machines().stream()
                  .filter(machine -> machine.machine().kind().equals("main-engine"))
                  .mapToDouble(machine -> rebuilt.ran(machine).hours())
                  .sum()
              / (vessel.character().recordsFrom().isPresent() ? 0 : 6));
    }
    List<Double> whole = hours.stream().filter(Double::isFinite).toList();
    assertTrue(whole.stream().allMatch(year -> year > 4300 && year < 7000), whole::toString);
    assertEquals(
        5600,
        whole.stream().mapToDouble(year -> year).average().orElse(0),
        5 * 700 / Math.sqrt(600));
  }

  /** Of planned intervals 4 % are above 10,500 h, and half of them below 8,400 h or so. */
  @Test
  void plannedIntervalsSpreadAsTheyShould() {
    List<Double> planned =
        alike.stream()
            .flatMap(vessel -> RebuiltVessel.of(ALIKE, vessel).machines().stream())
            .flatMap(machine -> machine.intervals().stream())
            .filter(interval -> interval.component().name().equals("fuel-injector"))
            .filter(interval -> interval.subject() == OverhaulInterval.Subject.POSITION)
            .filter(interval -> interval.endedBy().equals(Optional.of(Reason.PLANNED)))
            .flatMap(interval -> interval.length().stream())
            .map(RunningHours::hours)
            .sorted()
            .toList();
    double late =
        planned.stream().filter(hours -> hours > 10_500).count() / (double) planned.size();
    assertTrue(late > .01 && late < .06, "late " + late);
    double median = planned.get(planned.size() / 2);
    assertTrue(median > 7300 && median < 8600, "median " + median);
  }

  private static Stream<TrueLife> lives(Collection<SampleVessel> vessels) {
    return vessels.stream().flatMap(vessel -> vessel.lives().stream());
  }
}
