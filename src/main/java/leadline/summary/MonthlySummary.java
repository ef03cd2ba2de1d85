package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.fleet.Catalogue;
import leadline.history.MachineHistory;
import leadline.history.VesselHistory;
import leadline.quantity.ReportMonth;

/**
 * What the published tables of a month count: vessels are added in any order, on as many summaries
 * as there are tasks, and the summaries merged in any order, with the same rows. Its size grows
 * with strata, components, parts and distinct interval lengths, not with records.
 *
 * <p>Adding and merging change this summary and nothing else. Not safe for use by several threads
 * at once.
 */
public final class MonthlySummary implements Serializable {

  private final Scope scope;
  private final ComponentRates componentRates;
  private final OverhaulIntervals overhaulIntervals;
  private final PartFindings partFindings;
  private final SpringBreakage springBreakage;
  private final FindingsByHours findingsByHours;
  private final LifeTables lifeTables;

  private MonthlySummary(Scope scope) {
    this.scope = scope;
    this.componentRates = new ComponentRates(scope);
    this.overhaulIntervals = new OverhaulIntervals(scope);
    this.partFindings = new PartFindings(scope);
    this.springBreakage = new SpringBreakage(scope);
    this.findingsByHours = new FindingsByHours(scope);
    this.lifeTables = new LifeTables(scope);
  }

  /**
   * A summary without a vessel.
   *
   * @param catalogue the components and parts to report, with the policy intervals in force
   */
  public static MonthlySummary start(Catalogue catalogue, ReportMonth month) {
    return new MonthlySummary(new Scope(catalogue, month));
  }

  /**
   * Counts a vessel; each machine of it must be added once only.
   *
   * @param vessel its history up to the end of the month
   */
  public MonthlySummary add(VesselHistory vessel) {
    vessel.machines().stream().flatMap(machine -> machine.byModel().stream()).forEach(this::add);
    return this;
  }

  private void add(MachineHistory machine) {
    componentRates.add(machine);
    overhaulIntervals.add(machine);
    partFindings.add(machine);
    springBreakage.add(machine);
    findingsByHours.add(machine);
    lifeTables.add(machine);
  }

  /**
   * Counts all vessels of the other summary.
   *
   * @throws IllegalArgumentException if the other reports another month or by another catalogue
   */
  public MonthlySummary merge(MonthlySummary other) {
    if (!scope.equals(other.scope)) {
      throw new IllegalArgumentException(
          "summaries of one month and catalogue merge, not of "
              + scope.month()
              + " and "
              + other.scope.month());
    }
    componentRates.merge(other.componentRates);
    overhaulIntervals.merge(other.overhaulIntervals);
    partFindings.merge(other.partFindings);
    springBreakage.merge(other.springBreakage);
    findingsByHours.merge(other.findingsByHours);
    lifeTables.merge(other.lifeTables);
    return this;
  }

  /**
   * The lives of each part and stratum, each to be worked out apart, in the order of publication.
   *
   * @param knownAt when the last batch was committed that the histories rest on
   */
  public List<LifeGroup> lifeGroups(Instant knownAt) {
    return lifeTables.groups(knownAt);
  }

  /**
   * The rows of every table about machines, in the order of publication.
   *
   * @param knownAt when the last batch was committed that the histories rest on
   * @param lives of each of the life groups, in their order
   */
  public Map<TableSpec, List<TableRow>> rows(Instant knownAt, List<LifeRows> lives) {
    Map<TableSpec, List<TableRow>> tables = new LinkedHashMap<>();
    tables.put(ComponentRates.SPEC, componentRates.rows(knownAt));
    tables.put(OverhaulIntervals.SPEC, overhaulIntervals.rows(knownAt));
    tables.put(PartFindings.SPEC, partFindings.rows(knownAt));
    tables.put(SpringBreakage.SPEC, springBreakage.rows(knownAt));
    tables.put(FindingsByHours.SPEC, findingsByHours.rows(knownAt));
    tables.put(
        PartLifetimes.SPEC, lives.stream().flatMap(rows -> rows.partLife().stream()).toList());
    tables.put(
        SpringSurvival.SPEC,
        lives.stream().flatMap(rows -> rows.springSurvival().stream()).toList());
    return Collections.unmodifiableMap(tables);
  }
}
