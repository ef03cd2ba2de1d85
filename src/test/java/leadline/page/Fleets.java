package leadline.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.Renewal;
import leadline.publish.PublishedTable;
import leadline.quantity.RunningHours;
import leadline.summary.ComponentRates;
import leadline.summary.DueList;
import leadline.summary.EvidenceColumns;
import leadline.summary.FindingsByHours;
import leadline.summary.IntakeLog;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.VesselColumns;
import leadline.summary.VesselQueries;

/** Rows of tables, written by hand. */
final class Fleets {

  static final Instant KNOWN_AT = Instant.parse("2025-01-10T12:00:00Z");

  private Fleets() {}

  /** The compressor valve, of which these rows tell the spring only. */
  static Component valve(Clock ofSpring) {
    return new Component(
        "compressor-valve",
        PositionsPer.PLACE,
        Set.of("air-compressor"),
        RunningHours.ofHours(1_500),
        List.of(
            new Part(
                "valve-spring",
                PartShape.SPRING,
                FailureShows.MAY_STAY_UNSEEN,
                Set.of(FoundWord.BROKEN, FoundWord.CRACKED),
                Set.of(),
                Set.of(),
                Renewal.ON_CONDITION,
                ofSpring,
                "compressor unit")));
  }

  /** Breakdowns, without limits. */
  static TableRow.Builder rate(
      String component, String level, String stratum, String window, long events, double hours) {
    return ComponentRates.SPEC
        .row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(SharedColumns.COMPONENT, component)
        .with(SharedColumns.LEVEL, level)
        .with(SharedColumns.STRATUM, stratum)
        .with(SharedColumns.WINDOW, window)
        .with(ComponentRates.ENDPOINT, "breakdown")
        .with(EvidenceColumns.EVENTS, events)
        .with(EvidenceColumns.EXPOSURE, hours)
        .with(ComponentRates.RATE.estimate(), 1e6 * events / hours)
        .with(ComponentRates.VESSELS, 1L)
        .with(EvidenceColumns.INSPECTED, events)
        .with(EvidenceColumns.ELIGIBLE, events)
        .with(EvidenceColumns.VERDICT, "ok");
  }

  private static TableRow.Builder ofSpring(TableSpec spec, String window) {
    return spec.row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(SharedColumns.COMPONENT, "compressor-valve")
        .with(SharedColumns.PART, "valve-spring")
        .with(SharedColumns.LEVEL, "fleet")
        .with(SharedColumns.STRATUM, "all")
        .with(SharedColumns.WINDOW, window);
  }

  /** The valve spring of the compressor valve over twelve months. */
  static TableRow.Builder spring(long overhauled, long opened, long broken) {
    return ofSpring(SpringBreakage.SPEC, "12-months")
        .with(SharedColumns.HOURS_BAND, "all")
        .with(SpringBreakage.OVERHAULED, overhauled)
        .with(SpringBreakage.OPENED, opened)
        .with(SpringBreakage.BROKEN, broken)
        .with(EvidenceColumns.EVENTS, broken)
        .with(EvidenceColumns.INSPECTED, opened)
        .with(EvidenceColumns.ELIGIBLE, overhauled);
  }

  /** The same part's findings since records began. */
  static TableRow.Builder finding(long overhauled, long opened) {
    return ofSpring(PartFindings.SPEC, "since-start")
        .with(PartFindings.OVERHAULED, overhauled)
        .with(PartFindings.OPENED, opened)
        .with(PartFindings.OPENED_UNSTATED, 0L)
        .with(PartFindings.FAILED, 0L)
        .with(PartFindings.REJECTED, 0L)
        .with(PartFindings.RENEWED, 0L)
        .with(EvidenceColumns.EVENTS, 0L)
        .with(EvidenceColumns.INSPECTED, opened)
        .with(EvidenceColumns.ELIGIBLE, overhauled);
  }

  /** The compressor valve's spring found in a condition within a band of hours. */
  static TableRow.Builder found(String hours, String condition, long opened, long times) {
    return ofSpring(FindingsByHours.SPEC, "since-start")
        .with(SharedColumns.HOURS_BAND, hours)
        .with(FindingsByHours.FOUND, condition)
        .with(FindingsByHours.OVERHAULED, 60L)
        .with(FindingsByHours.OPENED, opened)
        .with(FindingsByHours.TIMES_FOUND, times)
        .with(EvidenceColumns.EVENTS, times)
        .with(EvidenceColumns.INSPECTED, opened)
        .with(EvidenceColumns.ELIGIBLE, 60L);
  }

  /** A compressor valve last overhauled as W7, with the limit of the catalogue. */
  static TableRow.Builder due(String vessel, String machine, String position, String standing) {
    return DueList.SPEC
        .row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(VesselColumns.VESSEL, vessel)
        .with(VesselColumns.MACHINE, machine)
        .with(DueList.MODEL, "QX-2")
        .with(SharedColumns.COMPONENT, "compressor-valve")
        .with(VesselColumns.POSITION, position)
        .with(DueList.UNIT, 1L)
        .with(DueList.PLACE, 1L)
        .with(DueList.COUNTED_TO, KNOWN_AT)
        .with(DueList.SINCE, "overhaul")
        .with(DueList.SINCE_ON, "2024-03-01")
        .with(DueList.OVERHAUL, "W7")
        .with(DueList.RUN, 1_234.4)
        .with(DueList.REPAIRED, 0.0)
        .with(DueList.LIMIT, 1_500.0)
        .with(DueList.LIMIT_BY, "catalogue")
        .with(DueList.LIMIT_SOURCE, "common practice, no source")
        .with(DueList.STANDING, standing)
        .with(DueList.GROUP, machine + " 1")
        .with(DueList.GROUP_SIZE, 1L);
  }

  /** A question to each of these vessels. */
  static PublishedTable queries(String... vessels) {
    List<TableRow> rows = new ArrayList<>();
    for (String vessel : vessels) {
      rows.add(
          VesselQueries.SPEC
              .row()
              .with(SharedColumns.MONTH, "2024-12")
              .with(SharedColumns.KNOWN_AT, KNOWN_AT)
              .with(VesselQueries.VESSEL, vessel)
              .with(VesselQueries.QUERY, "Q-" + rows.size())
              .with(VesselQueries.KIND, "broken-and-kept")
              .with(VesselQueries.RECORD, "W7")
              .with(VesselQueries.QUESTION, "Was it renewed?")
              .with(VesselQueries.EVIDENCE, "e")
              .with(VesselQueries.SETTLED_BY, "s")
              .with(VesselQueries.FIRST_ASKED, KNOWN_AT)
              .with(VesselQueries.AGE_DAYS, 1L)
              .build());
    }
    return new PublishedTable(VesselQueries.SPEC, rows);
  }

  /** An export of five rows. */
  static TableRow file(String name, long refused) {
    return IntakeLog.SPEC
        .row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(IntakeLog.BATCH, "b")
        .with(IntakeLog.COMMITTED_AT, KNOWN_AT)
        .with(IntakeLog.STANDING, "counts")
        .with(IntakeLog.FILE, name)
        .with(IntakeLog.DIGEST, "ab".repeat(32))
        .with(IntakeLog.ROWS_READ, 5L)
        .with(IntakeLog.ROWS_STORED, 5 - refused)
        .with(IntakeLog.ROWS_REFUSED, refused)
        .with(IntakeLog.RULES_BROKEN, "unknown-word " + refused)
        .build();
  }
}
