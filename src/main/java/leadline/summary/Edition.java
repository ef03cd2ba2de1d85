package leadline.summary;

import java.io.Serializable;
import java.time.Instant;
import leadline.fleet.Component;
import leadline.quantity.ReportMonth;

/**
 * The month that rows report, from the records known at a moment.
 *
 * @param knownAt when the last batch was committed that the rows rest on
 */
record Edition(ReportMonth month, Instant knownAt) implements Serializable {

  /** A row begun with the month and what was known. */
  TableRow.Builder row(TableSpec spec) {
    return spec.row()
        .with(SharedColumns.MONTH, month.toString())
        .with(SharedColumns.KNOWN_AT, knownAt);
  }

  /** A row begun with the columns that all tables about machines share. */
  TableRow.Builder row(TableSpec spec, Window window, Stratum<?> stratum, Component component) {
    return row(spec)
        .with(SharedColumns.WINDOW, window.word())
        .with(SharedColumns.LEVEL, stratum.level().word())
        .with(SharedColumns.STRATUM, stratum.name())
        .with(SharedColumns.COMPONENT, component.name());
  }

  /** A row begun with the columns that all tables of parts share. */
  TableRow.Builder row(TableSpec spec, PartSubject subject, Stratum<?> stratum) {
    return row(spec, subject.window(), stratum, subject.component())
        .with(SharedColumns.PART, subject.part().name());
  }
}
