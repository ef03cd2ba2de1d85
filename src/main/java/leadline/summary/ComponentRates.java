package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leadline.fleet.Component;
import leadline.fleet.Reason;
import leadline.history.MachineHistory;
import leadline.quantity.RunningHours;
import leadline.stats.Limits;
import leadline.stats.PoissonRate;

/** How often components break down, or are taken out for their condition. */
public final class ComponentRates implements Serializable {

  public static final TableColumn<String> ENDPOINT =
      TableColumn.key(
          "endpoint",
          "the reason of the overhauls counted: breakdown or condition; never to be added up");
  public static final EstimateColumns RATE =
      EstimateColumns.of(
          "rate_per_million_h",
          "per million h",
          "events per million hours of exposure; empty without exposure",
          "exact (Garwood)");
  public static final TableColumn<Double> RATE_AT_MOST_HOURS =
      TableColumn.real(
          "rate_at_most_hours_per_million_h",
          "per million h",
          "the same rate, had the machines run the most hours that their logs allow; only where more"
              + " than 2 % of the exposure rests on repaired readings or lies in stretches of more"
              + " than 45 days without one");
  public static final TableColumn<Double> RATE_AT_LEAST_HOURS =
      TableColumn.real(
          "rate_at_least_hours_per_million_h",
          "per million h",
          "the same rate, had they run the least hours that their logs allow; empty also where that"
              + " is none");
  public static final TableColumn<Long> VESSELS =
      TableColumn.count("vessels", "vessels with exposure in the window");

  public static final TableSpec SPEC =
      TableSpec.of(
          "component_rates",
          "How often components break down, or are taken out for their condition, per million"
              + " running hours.",
          SharedColumns.OF_COMPONENT,
          List.of(ENDPOINT, EvidenceColumns.EVENTS, EvidenceColumns.EXPOSURE),
          RATE.all(),
          List.of(
              RATE_AT_MOST_HOURS,
              RATE_AT_LEAST_HOURS,
              VESSELS,
              EvidenceColumns.INSPECTED,
              EvidenceColumns.ELIGIBLE,
              EvidenceColumns.REPAIRED_HOURS_SHARE,
              EvidenceColumns.VERDICT));

  private static final double MILLION = 1e6;

  private record Subject(String component, Window window) implements Serializable {}

  private final Scope scope;
  private final Strata<Subject, OverhaulCounts> strata = new Strata<>();

  ComponentRates(Scope scope) {
    this.scope = scope;
  }

  void add(MachineHistory history) {
    VesselModel member = VesselModel.of(history.machine());
    for (Component component : scope.carriedBy(history.machine())) {
      for (Window window : Window.values()) {
        strata.add(
            new Subject(component.name(), window),
            member,
            OverhaulCounts.of(history, component, window.endingWith(scope.month())));
      }
    }
  }

  void merge(ComponentRates other) {
    strata.merge(other.strata);
  }

  /** By component, window, level, stratum, endpoint. */
  List<TableRow> rows(Instant knownAt) {
    Edition edition = new Edition(scope.month(), knownAt);
    List<TableRow> rows = new ArrayList<>();
    for (Component component : scope.catalogue().components()) {
      for (Window window : Window.values()) {
        for (var stratum : strata.of(new Subject(component.name(), window))) {
          OverhaulCounts counts = stratum.total();
          long vessels = stratum.vesselsWith(member -> !member.hours().isNone());
          TableRow.Builder breakdowns = edition.row(SPEC, window, stratum, component);
          rows.add(row(breakdowns, Reason.BREAKDOWN, counts.breakdown(), counts, vessels));
          TableRow.Builder conditions = edition.row(SPEC, window, stratum, component);
          rows.add(row(conditions, Reason.CONDITION, counts.condition(), counts, vessels));
        }
      }
    }
    return rows;
  }

  private static OptionalDouble rate(long events, RunningHours hours) {
    return hours.isAbove(RunningHours.ZERO)
        ? OptionalDouble.of(new PoissonRate(events, hours.hours()).rate() * MILLION)
        : OptionalDouble.empty();
  }

  private static TableRow row(
      TableRow.Builder row, Reason endpoint, long events, OverhaulCounts counts, long vessels) {
    ComponentHours hours = counts.hours();
    if (!hours.isNone()) {
      PoissonRate rate = new PoissonRate(events, hours.run().hours());
      Limits limits = rate.limits(Evidence.CONFIDENCE);
      row.with(
          RATE,
          rate.rate() * MILLION,
          new Limits(limits.lower() * MILLION, limits.upper() * MILLION));
    }
    if (hours.isDoubtful()) {
      row.with(RATE_AT_MOST_HOURS, rate(events, hours.most()))
          .with(RATE_AT_LEAST_HOURS, rate(events, hours.least()));
    }
    Verdict verdict = Verdict.of(hours.run().tenths(), events);
    return new Evidence(events, counts.inspected(), counts.overhauls(), verdict)
        .in(hours.in(row))
        .with(ENDPOINT, endpoint.word())
        .with(VESSELS, vessels)
        .build();
  }
}
