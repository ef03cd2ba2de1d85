package leadline.summary;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leadline.quantity.RunningHours;
import leadline.stats.LifeData;
import leadline.stats.Limits;
import leadline.stats.Proportion;
import leadline.stats.Turnbull;
import leadline.stats.Turnbull.Support;

/**
 * The share of springs broken by an age as the openings alone tell it, without a distribution:
 * limits by bootstrap of vessels, or of lives with fewer than ten vessels. Springs known only from
 * a later age are left out, for the estimate has no place for them.
 */
final class BrokenByAge {

  /**
   * The share broken by an age.
   *
   * @param share those broken between two openings counted evenly over the hours between
   * @param edges the least and the most that may be broken by it, wherever between two openings
   */
  record Broken(RunningHours age, double share, Limits edges, Limits limits, LimitsBy limitsBy) {}

  private static final Limits ANYTHING = new Limits(0, 1);

  private final RoutineLives lives;

  BrokenByAge(RoutineLives lives) {
    this.lives = lives;
  }

  List<Broken> at(List<RunningHours> ages) {
    LifeData known = lives.total().data().knownFromNew();
    if (known.isEmpty()) {
      return List.of();
    }
    Turnbull curve = Turnbull.of(known);
    Optional<LifeBootstrap> vessels = LifeBootstrap.ofVessels(lives);
    LimitsBy limitsBy =
        vessels.isPresent() ? LimitsBy.BOOTSTRAP_OF_VESSELS : LimitsBy.BOOTSTRAP_OF_LIVES;
    List<Optional<Limits>> limits =
        vessels
            .orElseGet(() -> LifeBootstrap.ofLives(lives))
            .limits(data -> shares(data.knownFromNew(), ages));
    return IntStream.range(0, ages.size())
        .mapToObj(
            index ->
                broken(
                    curve,
                    ages.get(index),
                    limits.isEmpty() ? Optional.empty() : limits.get(index),
                    limitsBy))
        .toList();
  }

  /** Drawing anew cannot vary what is the same in all lives: there the binomial limit holds. */
  private Broken broken(
      Turnbull curve, RunningHours age, Optional<Limits> drawn, LimitsBy limitsBy) {
    double share = share(curve, age.hours());
    Limits survival = curve.survivalAt(age.hours());
    Limits edges = new Limits(1 - survival.upper(), 1 - survival.lower());
    boolean varies = drawn.isPresent() && drawn.get().lower() < drawn.get().upper();
    return varies
        ? new Broken(age, share, edges, LifeBootstrap.around(share, drawn.get()), limitsBy)
        : new Broken(
            age, share, edges, LifeBootstrap.around(share, binomial(age)), LimitsBy.BINOMIAL);
  }

  /** Of the springs whose state at the age is known. */
  private Limits binomial(RunningHours age) {
    long working = lives.total().count(life -> !age.isAbove(life.workedAt()));
    long broken = lives.total().count(life -> life.isFailure() && !life.failedBy().isAbove(age));
    return working + broken == 0
        ? ANYTHING
        : new Proportion(broken, working + broken).clopperPearson(Evidence.CONFIDENCE);
  }

  private static List<OptionalDouble> shares(LifeData known, List<RunningHours> ages) {
    if (known.isEmpty()) {
      return ages.stream().map(age -> OptionalDouble.empty()).toList();
    }
    Turnbull curve = Turnbull.of(known);
    return ages.stream().map(age -> OptionalDouble.of(share(curve, age.hours()))).toList();
  }

  private static double share(Turnbull curve, double age) {
    double broken = 0;
    for (Support support : curve.support()) {
      broken += support.mass() * shareBy(age, support);
    }
    return Math.min(1, broken);
  }

  private static double shareBy(double age, Support support) {
    if (support.right() <= age) {
      return 1;
    }
    return support.left() < age ? (age - support.left()) / (support.right() - support.left()) : 0;
  }
}
