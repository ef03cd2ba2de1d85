package leadline.study;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import leadline.fleet.Action;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Finding;
import leadline.fleet.FoundWord;
import leadline.fleet.MachineEntry;
import leadline.fleet.Part;
import leadline.fleet.Statement;
import leadline.history.LifeEnd;
import leadline.history.Observation;
import leadline.history.PartLife;
import leadline.history.VesselHistory;
import leadline.history.VesselRecords;
import leadline.quantity.ReportMonth;
import leadline.sample.ErrorRates;
import leadline.sample.FleetPlan;
import leadline.sample.HabitMix;
import leadline.sample.Influences;
import leadline.sample.OpeningHabit;
import leadline.sample.PartModel;
import leadline.sample.PartModels;
import leadline.sample.Practice;
import leadline.sample.ReadingHabit;
import leadline.settings.CatalogueFile;
import leadline.settings.SharedFolder;
import leadline.summary.SpringLives;

/** A fleet to draw, and how its non-return-valve springs are estimated: by the rules, or bent. */
enum Scenario {
  ALIKE("vessels alike, by the rules"),
  UNLIKE("vessels unlike (variance 1/6), by the rules"),
  UNOPENED_SOUND("vessels alike; unopened springs counted as sound") {
    @Override
    VesselRecords written(VesselRecords records) {
      return withFindings(records, Scenario::unopenedAsSound);
    }
  },
  FOUND_IS_JUST("vessels alike; found broken taken for just broken") {
    @Override
    List<PartLife> bent(List<PartLife> lives) {
      return lives.stream().map(Scenario::brokenWhenFound).toList();
    }
  },
  RUNNING_OUT("vessels alike; springs still fitted left out") {
    @Override
    List<PartLife> bent(List<PartLife> lives) {
      return lives.stream().filter(life -> !isStillRunning(life)).toList();
    }
  },
  ORIGIN_UNKNOWN("no ages stated, origins unknown: by the rules"),
  ORIGIN_TAKEN_NEW("the same; springs of unknown origin taken for new") {
    @Override
    VesselRecords written(VesselRecords records) {
      return takenForNew(records);
    }
  },
  SUSPECTS("half of the vessels open what looks suspect: by the rules"),
  SUSPECTS_IN("the same; with the vessels that open what looks suspect") {
    @Override
    SpringLives lives(List<VesselHistory> fleet) {
      return SpringLives.ofAll(injector(), part(), MONTH, fleet, UnaryOperator.identity());
    }
  },
  REPLACED_UNOPENED(
      "openings by the toss of a coin, 3 in 10 unopened springs renewed: by the rules of lives") {
    @Override
    SpringLives lives(List<VesselHistory> fleet) {
      return SpringLives.ofAll(injector(), part(), MONTH, fleet, UnaryOperator.identity());
    }
  },
  REPLACED_SOUND("the same; springs renewed unopened counted as sound") {
    @Override
    SpringLives lives(List<VesselHistory> fleet) {
      return SpringLives.ofAll(injector(), part(), MONTH, fleet, UnaryOperator.identity());
    }

    @Override
    VesselRecords written(VesselRecords records) {
      return withFindings(records, Scenario::renewedUnopenedAsSound);
    }
  },
  MAIN_SPRING("the main spring, of which half of the failures show in service: by the rules") {
    @Override
    String spring() {
      return "main-spring";
    }
  };

  private static final ReportMonth MONTH = ReportMonth.parse("2024-12");
  private static final double AGE = 8_000;

  private final String words;

  Scenario(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  FleetPlan plan() {
    return switch (this) {
      case ALIKE, UNOPENED_SOUND, FOUND_IS_JUST, RUNNING_OUT, MAIN_SPRING -> plain();
      case UNLIKE -> unlike();
      case ORIGIN_UNKNOWN, ORIGIN_TAKEN_NEW -> plain().withPractice(unstated());
      case SUSPECTS, SUSPECTS_IN -> suspects();
      case REPLACED_UNOPENED, REPLACED_SOUND -> replacing();
    };
  }

  /** The spring in question, the only part of the fleet. */
  String spring() {
    return "nrv-spring";
  }

  /** The records as the estimate takes them. */
  VesselRecords written(VesselRecords records) {
    return records;
  }

  /** The lives as the estimate takes them. */
  List<PartLife> bent(List<PartLife> lives) {
    return lives;
  }

  SpringLives lives(List<VesselHistory> fleet) {
    return SpringLives.routine(injector(), part(), MONTH, fleet, this::bent);
  }

  /**
   * What a figure is to estimate: the fleet's marginal distribution. With vessels' factors of mean
   * 1 and variance v it is 1 - (1 + v H(t)) to the power -1/v, H the cumulative hazard at factor 1.
   * None where vessels are unlike and the figure is a parameter: the marginal is no Weibull.
   */
  OptionalDouble truth(String figure) {
    PartModel model = PartModels.of(injector(), part());
    double variance = plan().influences().vesselVariance();
    return switch (figure) {
      case "failed_by_8000_h_share" ->
          OptionalDouble.of(failedBy(Math.pow(AGE / model.scale(), model.shape()), variance));
      case "shape" -> variance == 0 ? OptionalDouble.of(model.shape()) : OptionalDouble.empty();
      case "scale_h" -> variance == 0 ? OptionalDouble.of(model.scale()) : OptionalDouble.empty();
      default -> OptionalDouble.empty();
    };
  }

  Component injector() {
    return plan().catalogue().components().get(0);
  }

  Part part() {
    return injector().part(spring()).orElseThrow();
  }

  private static double failedBy(double hazard, double variance) {
    return variance == 0
        ? -Math.expm1(-hazard)
        : -Math.expm1(-Math.log1p(variance * hazard) / variance);
  }

  private FleetPlan plain() {
    return FleetPlan.usual(catalogue(), RecoveryStudy.YEARS)
        .withComponents(Set.of("fuel-injector"))
        .withReadings(ReadingHabit.WEEKLY)
        .withErrors(ErrorRates.NONE)
        .withHabits(HabitMix.USUAL.withSuspect(0))
        .withPractice(new Practice(0, .02, .08, .30))
        .withInfluences(Influences.NONE);
  }

  private FleetPlan unlike() {
    return plain().withInfluences(Influences.NONE.withVesselVariance(1 / 6.0));
  }

  private FleetPlan suspects() {
    return plain().withHabits(new HabitMix(.5, 0, 0, .5));
  }

  private FleetPlan replacing() {
    return plain()
        .withHabits(HabitMix.all(OpeningHabit.SOMETIMES))
        .withPractice(new Practice(0, .3, .08, .30));
  }

  private static Practice unstated() {
    return new Practice(0, .02, .08, 0);
  }

  private Catalogue catalogue() {
    SharedFolder shared =
        new SharedFolder(Path.of(System.getProperty("leadline.home", ".")).resolve("shared"));
    return new Catalogue(
        CatalogueFile.read(shared.catalogue(), shared).components().stream()
            .filter(component -> component.name().equals("fuel-injector"))
            .map(
                component ->
                    new Component(
                        component.name(),
                        component.per(),
                        component.machineKinds(),
                        component.interval(),
                        component.parts().stream()
                            .filter(part -> part.name().equals(spring()))
                            .toList()))
            .toList());
  }

  private static VesselRecords withFindings(VesselRecords records, UnaryOperator<Finding> written) {
    return new VesselRecords(
        records.vessel(),
        records.machines(),
        records.readings(),
        records.overhauls(),
        records.findings().stream().map(written).toList());
  }

  private static Finding unopenedAsSound(Finding finding) {
    return finding.opened().equals(Optional.of(Statement.NO)) ? sound(finding) : finding;
  }

  private static Finding renewedUnopenedAsSound(Finding finding) {
    return finding.action().equals(Optional.of(Action.RENEWED))
        ? unopenedAsSound(finding)
        : finding;
  }

  private static Finding sound(Finding finding) {
    return new Finding(
        finding.overhaul(),
        finding.part(),
        finding.modeNumber(),
        Optional.of(Statement.YES),
        Optional.of(FoundWord.SOUND),
        finding.action(),
        finding.revealed(),
        finding.hoursSinceNew(),
        finding.origin());
  }

  private static VesselRecords takenForNew(VesselRecords records) {
    LocalDate first =
        records.readings().stream()
            .map(reading -> LocalDate.ofInstant(reading.at().minusSeconds(1), ZoneOffset.UTC))
            .min(Comparator.naturalOrder())
            .orElseThrow();
    return new VesselRecords(
        records.vessel(),
        records.machines().stream().map(machine -> newOn(machine, first)).toList(),
        records.readings(),
        records.overhauls(),
        records.findings());
  }

  private static MachineEntry newOn(MachineEntry machine, LocalDate day) {
    return new MachineEntry(
        machine.id(),
        machine.kind(),
        machine.model(),
        machine.cylinders(),
        machine.placesPerCylinder(),
        machine.counterDigits(),
        Optional.of(day),
        machine.validFrom(),
        machine.validTo(),
        Optional.empty(),
        machine.formerly(),
        machine.origin());
  }

  private static PartLife brokenWhenFound(PartLife life) {
    return life.observation() instanceof Observation.Within within
        ? new PartLife(
            life.component(),
            life.item(),
            life.part(),
            life.number(),
            life.origin(),
            life.entry(),
            new Observation.Exact(within.upper()),
            life.until(),
            life.endedBy())
        : life;
  }

  private static boolean isStillRunning(PartLife life) {
    return Set.of(LifeEnd.STILL_FITTED, LifeEnd.ON_SHELF, LifeEnd.LOST_SIGHT)
        .contains(life.endedBy());
  }
}
