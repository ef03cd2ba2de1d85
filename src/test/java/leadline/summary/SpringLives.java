package leadline.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.history.MachineHistory;
import leadline.history.PartLife;
import leadline.history.VesselHistory;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import leadline.stats.Confidence;
import leadline.stats.FittedLife;
import leadline.stats.LifeDistribution;
import leadline.stats.Limits;

/**
 * What the published figures of a spring rest on, limit by limit, for studies of how good they are.
 */
public final class SpringLives {

  /**
   * A figure of the Weibull distribution fitted.
   *
   * @param vessels by bootstrap of vessels; empty with fewer than ten
   * @param published the wider of the two, as far as it has both ends
   */
  public record Figure(
      String name, double value, Limits profile, Optional<Limits> vessels, Limits published) {}

  private final RoutineLives lives;
  private final RunningHours interval;

  private SpringLives(RoutineLives lives, RunningHours interval) {
    this.lives = lives;
    this.interval = interval;
  }

  /**
   * Only of vessels that open the spring as a routine.
   *
   * @param bent how lives are changed first; not at all by the rules
   */
  public static SpringLives routine(
      Component component,
      Part part,
      ReportMonth month,
      List<VesselHistory> vessels,
      UnaryOperator<List<PartLife>> bent) {
    return of(component, part, month, vessels, bent, RoutineLives::of);
  }

  /** Of all vessels, whatever they open. */
  public static SpringLives ofAll(
      Component component,
      Part part,
      ReportMonth month,
      List<VesselHistory> vessels,
      UnaryOperator<List<PartLife>> bent) {
    return of(component, part, month, vessels, bent, (stratum, its) -> everything(stratum));
  }

  private interface Choice {
    RoutineLives of(Stratum<LifeCounts> stratum, Part part);
  }

  private static SpringLives of(
      Component component,
      Part part,
      ReportMonth month,
      List<VesselHistory> vessels,
      UnaryOperator<List<PartLife>> bent,
      Choice choice) {
    PartSubject subject = new PartSubject(component, part, Window.SINCE_START);
    SortedMap<VesselModel, LifeCounts> members = new TreeMap<>();
    for (VesselHistory vessel : vessels) {
      for (MachineHistory machine : vessel.machines()) {
        MachineHistory its =
            new MachineHistory(
                machine.machine(),
                machine.hours(),
                machine.observed(),
                machine.visits(),
                machine.intervals(),
                bent.apply(machine.lives()),
                machine.positions());
        members.merge(
            VesselModel.of(machine.machine()),
            LifeCounts.of(its, subject, subject.window().endingWith(month)),
            LifeCounts::plus);
      }
    }
    return new SpringLives(
        choice.of(new Stratum<>(Level.FLEET, "all", members), part), component.interval());
  }

  private static RoutineLives everything(Stratum<LifeCounts> stratum) {
    SortedMap<String, LifeCounts> byVessel = new TreeMap<>();
    stratum
        .members()
        .forEach((member, counts) -> byVessel.merge(member.vessel(), counts, LifeCounts::plus));
    return new RoutineLives(byVessel, stratum.total(), 0);
  }

  public long failures() {
    return lives.total().failures();
  }

  /** Shape, scale, B10, and the chances by the ages published; none without a maximum. */
  public List<Figure> figures() {
    List<LifeFigure> figures = LifeFigure.all(interval);
    Optional<? extends FittedLife> fit = LifeDistribution.WEIBULL.fit(lives.total().data()).fit();
    FittedLives fits = new FittedLives(lives, figures);
    List<Optional<Limits>> vessels = fits.limitsByVessels(FittedLives.WEIBULL);
    Confidence confidence = fits.confidence(FittedLives.WEIBULL);
    List<Figure> all = new ArrayList<>();
    fit.ifPresent(
        found -> {
          for (int index = 0; index < figures.size(); index++) {
            all.add(figure(figures.get(index), found, confidence, vessels.get(index)));
          }
        });
    return all;
  }

  private static Figure figure(
      LifeFigure figure, FittedLife fit, Confidence confidence, Optional<Limits> vessels) {
    HeadlineFigure headline = HeadlineFigure.of(figure, fit, confidence, vessels);
    return new Figure(
        figure.columns().estimate().name(),
        figure.value(fit),
        figure.profileLimits(fit, confidence),
        vessels,
        new Limits(headline.lower().orElse(0), headline.upper().orElse(Double.POSITIVE_INFINITY)));
  }
}
