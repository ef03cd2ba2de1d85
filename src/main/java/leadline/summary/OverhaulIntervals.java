package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leadline.fleet.Component;
import leadline.fleet.Reason;
import leadline.history.MachineHistory;
import leadline.history.OverhaulInterval.Subject;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import leadline.stats.CumulativeIncidence;
import leadline.stats.KaplanMeier;
import leadline.stats.RestrictedMean;
import leadline.stats.SurvivalTally;

/** How long components run between overhauls, as practised: not how long they would last. */
public final class OverhaulIntervals implements Serializable {

  public static final TableColumn<String> CLOCK =
      TableColumn.key(
          "clock",
          "whose hours are counted from overhaul to overhaul: "
              + SharedColumns.words(Subject.class));
  public static final TableColumn<Long> COMPLETED =
      TableColumn.count("completed", "intervals from one overhaul seen to the next");
  public static final TableColumn<Long> RUNNING =
      TableColumn.count("running", "intervals from the last overhaul seen to the cut-off");
  public static final TableColumn<Long> START_UNKNOWN =
      TableColumn.count(
          "start_unknown",
          "intervals, ended or running, whose start was not seen; they enter no estimate");
  public static final TableColumn<Double> NAIVE_MEAN =
      TableColumn.real(
          "naive_mean_h",
          "h",
          "mean of the completed intervals only: the usual figure, too short while long intervals"
              + " still run");
  public static final EstimateColumns KM_MEDIAN =
      EstimateColumns.of(
          "km_median_h",
          "h",
          "Kaplan-Meier median: the shortest length that at most half of the intervals outlast;"
              + " empty where not reached",
          "approximate (Brookmeyer-Crowley, log(-log S); empty where open or where nothing varies)");
  public static final EstimateColumns RESTRICTED_MEAN =
      EstimateColumns.of(
          "restricted_mean_h",
          "h",
          "Kaplan-Meier mean of intervals cut off at restricted_to_h; empty where not known so far",
          "approximate (normal on the logit of its share of restricted_to_h, Greenwood's variance;"
              + " too narrow with fewer than 10 completed; empty where nothing varies)");
  public static final TableColumn<Double> RESTRICTED_TO =
      TableColumn.given(
          "restricted_to_h",
          "h",
          "1.5 times the policy interval, the same for all strata of a component");
  public static final TableColumn<Double> PLANNED_SHARE = endedShare(Reason.PLANNED);
  public static final TableColumn<Double> CONDITION_SHARE = endedShare(Reason.CONDITION);
  public static final TableColumn<Double> BREAKDOWN_SHARE = endedShare(Reason.BREAKDOWN);
  public static final TableColumn<Double> BEYOND_INTERVAL_SHARE =
      TableColumn.real(
          "beyond_interval_share",
          "1",
          "share of intervals longer than the policy interval; empty where not known so far");
  public static final TableColumn<Double> POLICY_INTERVAL =
      TableColumn.given("policy_interval_h", "h", "the policy interval between overhauls");

  public static final TableSpec SPEC =
      TableSpec.of(
          "overhaul_intervals",
          "How long components run between overhauls, as practised: not how long they would last.",
          SharedColumns.OF_COMPONENT,
          List.of(CLOCK, COMPLETED, RUNNING, START_UNKNOWN, NAIVE_MEAN),
          KM_MEDIAN.all(),
          RESTRICTED_MEAN.all(),
          List.of(
              RESTRICTED_TO,
              PLANNED_SHARE,
              CONDITION_SHARE,
              BREAKDOWN_SHARE,
              BEYOND_INTERVAL_SHARE,
              POLICY_INTERVAL),
          EvidenceColumns.ALL);

  private record ClockOf(Component component, Subject subject) implements Serializable {}

  private final Scope scope;
  private final Strata<ClockOf, IntervalCounts> strata = new Strata<>();

  OverhaulIntervals(Scope scope) {
    this.scope = scope;
  }

  void add(MachineHistory history) {
    Period sinceStart = Window.SINCE_START.endingWith(scope.month());
    for (Component component : scope.carriedBy(history.machine())) {
      for (Subject clock : Subject.values()) {
        strata.add(
            new ClockOf(component, clock),
            VesselModel.of(history.machine()),
            IntervalCounts.of(history, component, clock, sinceStart));
      }
    }
  }

  void merge(OverhaulIntervals other) {
    strata.merge(other.strata);
  }

  /** By component, clock, level, stratum. */
  List<TableRow> rows(Instant knownAt) {
    Edition edition = new Edition(scope.month(), knownAt);
    List<TableRow> rows = new ArrayList<>();
    for (Component component : scope.catalogue().components()) {
      for (Subject clock : Subject.values()) {
        for (var stratum : strata.of(new ClockOf(component, clock))) {
          TableRow.Builder row =
              edition.row(SPEC, Window.SINCE_START, stratum, component).with(CLOCK, clock.word());
          rows.add(row(row, stratum.total(), component.interval()));
        }
      }
    }
    return rows;
  }

  private static TableRow row(
      TableRow.Builder row, IntervalCounts counts, RunningHours policyInterval) {
    LengthCounts completed = counts.completed();
    OverhaulCounts overhauls = counts.overhauls();
    estimate(row, counts.survival(), policyInterval.hours());
    Verdict verdict = Verdict.of(completed.count() + counts.running().count(), completed.count());
    return new Evidence(completed.count(), overhauls.inspected(), overhauls.overhauls(), verdict)
        .in(overhauls.hours().in(row))
        .with(COMPLETED, completed.count())
        .with(RUNNING, counts.running().count())
        .with(START_UNKNOWN, counts.startUnknown())
        .with(NAIVE_MEAN, meanOf(completed))
        .build();
  }

  private static void estimate(
      TableRow.Builder row, SurvivalTally<Reason> intervals, double policyInterval) {
    double horizon = policyInterval * 1.5;
    KaplanMeier curve = KaplanMeier.of(intervals);
    row.with(KM_MEDIAN.estimate(), curve.median())
        .with(RESTRICTED_TO, horizon)
        .with(POLICY_INTERVAL, policyInterval);
    curve.quantileLimits(0.5, Evidence.CONFIDENCE).ifPresent(limits -> row.with(KM_MEDIAN, limits));
    curve.restrictedMean(horizon).ifPresent(mean -> addMean(row, mean));
    CumulativeIncidence.of(intervals)
        .at(policyInterval)
        .ifPresent(
            shares ->
                row.with(PLANNED_SHARE, shares.endedBy(Reason.PLANNED))
                    .with(CONDITION_SHARE, shares.endedBy(Reason.CONDITION))
                    .with(BREAKDOWN_SHARE, shares.endedBy(Reason.BREAKDOWN))
                    .with(BEYOND_INTERVAL_SHARE, shares.surviving()));
  }

  private static void addMean(TableRow.Builder row, RestrictedMean mean) {
    row.with(RESTRICTED_MEAN.estimate(), mean.mean());
    mean.logitLimits(Evidence.CONFIDENCE).ifPresent(limits -> row.with(RESTRICTED_MEAN, limits));
  }

  private static OptionalDouble meanOf(LengthCounts lengths) {
    return lengths.count() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(lengths.together().hours() / lengths.count());
  }

  private static TableColumn<Double> endedShare(Reason reason) {
    return TableColumn.real(
        reason.word() + "_share",
        "1",
        "share of intervals ended by an overhaul with the reason "
            + reason.word()
            + " by the policy interval (Aalen-Johansen); empty where not known so far");
  }
}
