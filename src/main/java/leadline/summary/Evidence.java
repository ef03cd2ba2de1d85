package leadline.summary;

import leadline.stats.Confidence;

/**
 * What every row shows beside its figures, but for its exposure.
 *
 * @param hours the stratum's in the window, of which some may rest on repaired readings
 */
record Evidence(long events, long inspected, long eligible, ComponentHours hours, Verdict verdict) {

  /** That of all published limits. */
  static final Confidence CONFIDENCE = Confidence.of(0.95);

  TableRow.Builder in(TableRow.Builder row) {
    return row.with(EvidenceColumns.EVENTS, events)
        .with(EvidenceColumns.INSPECTED, inspected)
        .with(EvidenceColumns.ELIGIBLE, eligible)
        .with(EvidenceColumns.REPAIRED_HOURS_SHARE, hours.repairedShare())
        .with(EvidenceColumns.VERDICT, verdict.word());
  }
}
