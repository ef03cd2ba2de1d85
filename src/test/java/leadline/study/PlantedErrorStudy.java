package leadline.study;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.RecordKind;
import leadline.history.FindingProblem.AgesDisagree;
import leadline.history.OverhaulProblem.HoursDisagree;
import leadline.problem.Problem;
import leadline.quantity.ReportMonth;
import leadline.sample.ErrorRates;
import leadline.sample.FleetPlan;
import leadline.sample.PlantedError;
import leadline.sample.RecordError;
import leadline.sample.SampleFleet;
import leadline.settings.CatalogueFile;
import leadline.settings.SharedFolder;

/**
 * How well errors are found: each kind planted alone, more often than usual, in a fleet otherwise
 * without errors, and the records rebuilt in memory.
 */
final class PlantedErrorStudy {

  static final ReportMonth MONTH = ReportMonth.parse("2024-12");

  private static final int YEARS = 6;
  private static final int SEED = 1;

  /** Slips of single readings are rare. */
  private static final double MORE_READINGS = 10;

  private static final Set<RecordError> OF_HOURS =
      Set.of(RecordError.HOURS_OFF, RecordError.DIGITS_TRANSPOSED);

  private static final double MORE = 3;
  private static final double MOST = .5;

  private final int vessels;

  /** The vessels without errors, each of them made once. */
  private final List<StudiedVessel> clean = new ArrayList<>();

  private PlantedErrorStudy(int vessels) {
    this.vessels = vessels;
  }

  /** Prints the tables; the argument is the number of vessels. */
  public static void main(String[] arguments) {
    PlantedErrorStudy study = new PlantedErrorStudy(Integer.parseInt(arguments[0]));
    study.printClean();
    print(
        "| error | share | planted | repaired rightly | repaired wrongly | asked | not found, harmless | not found |%n");
    print("|---|---|---|---|---|---|---|---|%n");
    for (RecordError kind : RecordError.values()) {
      if (kind != RecordError.SEPARATOR_FAULT
          && (arguments.length == 1 || arguments[1].equals(kind.word()))) {
        study.print(kind);
      }
    }
    if (arguments.length == 1) {
      study.printUsual();
      new ErrorEffects(study.vessels).print();
    }
  }

  private void printClean() {
    FleetPlan plan = plan(ErrorRates.NONE);
    long questions = 0;
    long notes = 0;
    for (int number = 1; number <= vessels; number++) {
      StudiedVessel vessel = vessel(plan, number);
      clean.add(vessel);
      questions += vessel.questions().size();
      notes +=
          vessel.history().machines().stream()
              .mapToLong(machine -> machine.hours().notes().size())
              .sum();
    }
    print(
        "Without errors: %d questions, %d notes on hours, %d vessels%n%n",
        questions, notes, vessels);
  }

  private void printUsual() {
    FleetPlan plan = plan(ErrorRates.usual());
    Map<String, Long> asked = new TreeMap<>();
    long needless = 0;
    long followed = 0;
    long older = 0;
    long rows = 0;
    for (int number = 1; number <= vessels; number++) {
      StudiedVessel vessel = vessel(plan, number);
      rows +=
          Stream.of(RecordKind.values()).mapToLong(kind -> vessel.sample().rows(kind).size()).sum();
      Set<String> wrong =
          vessel.sample().errors().stream()
              .filter(error -> error.file().equals(RecordKind.OVERHAULS.word()))
              .map(PlantedError::record)
              .collect(Collectors.toSet());
      needless +=
          vessel.questions().stream()
              .filter(question -> question.kind().equals("hours-disagree"))
              .filter(question -> !wrong.contains(question.record()))
              .count();
      Set<String> wrongHours =
          vessel.sample().errors().stream()
              .filter(error -> OF_HOURS.contains(error.kind()))
              .map(PlantedError::record)
              .collect(Collectors.toSet());
      followed +=
          vessel.questions().stream()
              .filter(HoursDisagree.class::isInstance)
              .flatMap(question -> ((HoursDisagree) question).following().stream())
              .filter(overhaul -> wrongHours.contains(overhaul.overhaul()))
              .count();
      older +=
          vessel.questions().stream()
              .filter(AgesDisagree.class::isInstance)
              .map(AgesDisagree.class::cast)
              .filter(ages -> ages.written().isAbove(ages.rebuilt()))
              .count();
      vessel.questions().stream()
          .collect(Collectors.groupingBy(Problem::kind, Collectors.counting()))
          .forEach((kind, count) -> asked.merge(kind, count, Long::sum));
    }
    print(
        "%nUsual errors: %s of %d rows; hours-disagree of overhauls without an error: %d;"
            + " with wrong hours, taken for the shift of another: %d;"
            + " ages-disagree of parts stated older than rebuilt: %d%n%n",
        asked, rows, needless, followed, older);
  }

  private void print(RecordError kind) {
    double share =
        switch (kind.counted()) {
          case "vessels" -> MOST;
          case "readings" -> kind.usual() * MORE_READINGS;
          default -> Math.min(MOST, kind.usual() * MORE);
        };
    Map<Outcome, Long> outcomes = new EnumMap<>(Outcome.class);
    for (Outcome outcome : outcomes(kind, share)) {
      outcomes.merge(outcome, 1L, Long::sum);
    }
    long planted = outcomes.values().stream().mapToLong(count -> count).sum();
    print("| `%s` | %.4g of %s | %d |", kind.word(), share, kind.counted(), planted);
    for (Outcome outcome : Outcome.values()) {
      print(" %.1f |", 100.0 * outcomes.getOrDefault(outcome, 0L) / planted);
    }
    print("%n");
  }

  private List<Outcome> outcomes(RecordError kind, double share) {
    FleetPlan spoiled = plan(ErrorRates.NONE.with(kind, share));
    List<Outcome> outcomes = new ArrayList<>();
    for (int number = 1; number <= vessels; number++) {
      StudiedVessel seen = vessel(spoiled, number);
      List<PlantedError> errors = seen.sample().errors();
      if (!errors.isEmpty()) {
        PlantedErrorVerdict verdict = new PlantedErrorVerdict(seen, clean.get(number - 1));
        for (PlantedError error : errors) {
          outcomes.add(verdict.of(error));
        }
      }
    }
    return outcomes;
  }

  static FleetPlan plan(ErrorRates errors) {
    SharedFolder shared =
        new SharedFolder(Path.of(System.getProperty("leadline.home", ".")).resolve("shared"));
    return FleetPlan.usual(CatalogueFile.read(shared.catalogue(), shared), YEARS)
        .withErrors(errors);
  }

  private static StudiedVessel vessel(FleetPlan plan, int number) {
    return StudiedVessel.of(new SampleFleet(plan, SEED).vessel(number), plan, MONTH);
  }

  private static void print(String format, Object... figures) {
    System.out.printf(Locale.ROOT, format, figures);
  }
}
