package leadline.sample;

import java.time.LocalDate;
import java.util.Optional;
import leadline.fleet.Written;
import org.hipparchus.distribution.continuous.GammaDistribution;

/**
 * What sets a vessel apart, hidden from its records or only hinted at.
 *
 * @param vessel the identifier
 * @param name for people
 * @param hazardFactor on all its parts
 * @param renewalLeaning added to the logit of renewing a part on its condition
 * @param inServiceOn the day on which it was new, if within the time of the records
 * @param recordsFrom the first day of its overhaul records, if they begin after its hours do
 */
public record VesselCharacter(
    String vessel,
    String name,
    EngineType engineType,
    double hazardFactor,
    OpeningHabit openingHabit,
    double renewalLeaning,
    Care care,
    Ages ages,
    ReadingHabit readings,
    Optional<LocalDate> inServiceOn,
    Optional<LocalDate> recordsFrom) {

  private static final double CARELESS = .25;
  private static final double RECORDS_BEGIN_LATER = 1 / 3.0;
  private static final double LEANING_DEVIATION = .7;

  /** Whether a part left shut may be written down as sound. */
  public enum Care implements Written {
    CAREFUL,
    CARELESS
  }

  /** Whether the vessel writes the ages of the parts it opens. */
  public enum Ages implements Written {
    STATED,
    UNSTATED
  }

  static VesselCharacter drawn(FleetPlan plan, VesselName name, Draw draw) {
    EngineType type = draw.oneOf(plan.influences().engineTypes());
    double factor = hazardFactor(plan.influences().vesselVariance(), draw.uniform());
    OpeningHabit habit = plan.habits().habit(draw);
    double leaning = draw.normal(0, LEANING_DEVIATION);
    Care care = draw.chance(CARELESS) ? Care.CARELESS : Care.CAREFUL;
    Ages ages = draw.chance(plan.practice().statedAges()) ? Ages.STATED : Ages.UNSTATED;
    ReadingHabit readings = draw.oneOf(plan.readings());
    int half = (int) (plan.days() / 2);
    LocalDate delivered = plan.firstDay().plusDays(1 + draw.below(half));
    LocalDate complete = plan.firstDay().plusDays(1 + draw.below((int) plan.days() / 6));
    boolean isNew = draw.chance(plan.practice().newInService());
    boolean isLater = draw.chance(RECORDS_BEGIN_LATER);
    return new VesselCharacter(
        name.identifier(),
        name.inFull(),
        type,
        factor,
        habit,
        leaning,
        care,
        ages,
        readings,
        isNew ? Optional.of(delivered) : Optional.empty(),
        isLater && !isNew ? Optional.of(complete) : Optional.empty());
  }

  private static double hazardFactor(double variance, double uniform) {
    return variance == 0
        ? 1
        : new GammaDistribution(1 / variance, variance).inverseCumulativeProbability(uniform);
  }

  /** The first day whose overhauls are on record. */
  LocalDate overhaulsFrom(FleetPlan plan) {
    return inServiceOn.or(() -> recordsFrom).orElse(plan.firstDay());
  }
}
