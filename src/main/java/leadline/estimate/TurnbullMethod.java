package leadline.estimate;

import java.util.List;
import leadline.stats.LifeTable;
import leadline.stats.ObservedInterval;
import leadline.stats.Turnbull;

/** Survival of lives whose ends inspections confine to intervals. */
final class TurnbullMethod implements Method {

  @Override
  public String word() {
    return "turnbull";
  }

  @Override
  public List<String> prints() {
    return List.of("npmle.");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight[,group]; no entry";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<ObservedInterval> lives = InspectedLives.of(file);
    Turnbull estimate = Turnbull.of(lives);
    List<Turnbull.Support> support = estimate.support();
    EstimateResults results =
        new EstimateResults()
            .number("npmle.n_support_candidates", estimate.candidates())
            .numbers("npmle.left", support, Turnbull.Support::left)
            .numbers("npmle.right", support, Turnbull.Support::right)
            .truths("npmle.left_closed", support.stream().map(Turnbull.Support::isPoint).toList())
            .numbers("npmle.mass", support, Turnbull.Support::mass)
            .numbers("npmle.surv_after_right", support, Turnbull.Support::survival)
            .number("npmle.loglik", estimate.logLikelihood())
            .number("npmle.loglik_shortfall_at_most", estimate.shortfall());
    LifeTable.points(lives)
        .ifPresent(
            points -> results.numbers("npmle.F_actuarial", points, LifeTable.Point::endedBy));
    return results;
  }
}
