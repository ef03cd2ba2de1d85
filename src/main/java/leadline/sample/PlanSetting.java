package leadline.sample;

import java.util.Optional;
import leadline.fleet.Written;

/** A number of a plan that has a name of its own, beside the shares of the record errors. */
public enum PlanSetting implements Written {
  WORKMANSHIP("overhauls after which a part soon fails", Practice.USUAL.workmanship()),
  UNOPENED_RENEWAL("parts left shut that are renewed", Practice.USUAL.unopenedRenewal()),
  NEW_IN_SERVICE("vessels new within the time", Practice.USUAL.newInService()),
  STATED_AGES("vessels that state ages", Practice.USUAL.statedAges()),
  SUSPECT("vessels that open what looks suspect", HabitMix.USUAL.suspect()),
  VESSEL_VARIANCE("of the vessels' factors on the hazard", Influences.USUAL.vesselVariance());

  private final String meaning;
  private final double usual;

  PlanSetting(String meaning, double usual) {
    this.meaning = meaning;
    this.usual = usual;
  }

  public String meaning() {
    return meaning;
  }

  public double usual() {
    return usual;
  }

  public static Optional<PlanSetting> named(String word) {
    return Written.read(PlanSetting.class, word);
  }

  /**
   * The plan with another value.
   *
   * @throws IllegalArgumentException if the plan cannot have it
   */
  public FleetPlan in(FleetPlan plan, double value) {
    Practice practice = plan.practice();
    return switch (this) {
      case WORKMANSHIP -> plan.withPractice(practice.withWorkmanship(value));
      case UNOPENED_RENEWAL -> plan.withPractice(practice.withUnopenedRenewal(value));
      case NEW_IN_SERVICE -> plan.withPractice(practice.withNewInService(value));
      case STATED_AGES -> plan.withPractice(practice.withStatedAges(value));
      case SUSPECT -> plan.withHabits(plan.habits().withSuspect(value));
      case VESSEL_VARIANCE -> plan.withInfluences(plan.influences().withVesselVariance(value));
    };
  }
}
