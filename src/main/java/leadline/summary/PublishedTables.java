package leadline.summary;

import java.util.List;

/** The tables that are published, in the order of publication. */
public final class PublishedTables {

  private static final List<TableSpec> ALL =
      List.of(
          ComponentRates.SPEC,
          OverhaulIntervals.SPEC,
          PartFindings.SPEC,
          SpringBreakage.SPEC,
          FindingsByHours.SPEC,
          PartLifetimes.SPEC,
          SpringSurvival.SPEC,
          DueList.SPEC,
          FleetMonth.SPEC,
          HoursReconciliation.SPEC,
          VesselQueries.SPEC,
          IntakeLog.SPEC,
          UnmappedWords.SPEC);

  private PublishedTables() {}

  public static List<TableSpec> all() {
    return ALL;
  }
}
