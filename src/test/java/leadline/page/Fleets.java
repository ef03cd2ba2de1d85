package leadline.page;

import java.time.Instant;
import leadline.summary.ComponentRates;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;

/** Rows of tables, written by hand. */
final class Fleets {

  static final Instant KNOWN_AT = Instant.parse("2025-01-10T12:00:00Z");

  private Fleets() {}

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

  /** The valve spring of the compressor valve over twelve months. */
  static TableRow.Builder spring(long overhauled, long opened, long broken) {
    return SpringBreakage.SPEC
        .row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(SharedColumns.COMPONENT, "compressor-valve")
        .with(SharedColumns.PART, "valve-spring")
        .with(SharedColumns.LEVEL, "fleet")
        .with(SharedColumns.STRATUM, "all")
        .with(SharedColumns.WINDOW, "12-months")
        .with(SpringBreakage.HOURS_BAND, "all")
        .with(SpringBreakage.OVERHAULED, overhauled)
        .with(SpringBreakage.OPENED, opened)
        .with(SpringBreakage.BROKEN, broken)
        .with(EvidenceColumns.EVENTS, broken)
        .with(EvidenceColumns.INSPECTED, opened)
        .with(EvidenceColumns.ELIGIBLE, overhauled);
  }

  /** The same part's findings since records began. */
  static TableRow.Builder finding(long overhauled, long opened) {
    return PartFindings.SPEC
        .row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(SharedColumns.COMPONENT, "compressor-valve")
        .with(SharedColumns.PART, "valve-spring")
        .with(SharedColumns.LEVEL, "fleet")
        .with(SharedColumns.STRATUM, "all")
        .with(SharedColumns.WINDOW, "since-start")
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
}
