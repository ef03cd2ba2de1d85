package leadline.summary;

import leadline.stats.Confidence;

/** The counts behind a row's figures, and what the figures may be used for. */
record Evidence(long events, long inspected, long eligible, Verdict verdict) {

  /** That of all published limits. */
  static final Confidence CONFIDENCE = Confidence.of(0.95);

  TableRow.Builder in(TableRow.Builder row) {
    return row.with(EvidenceColumns.EVENTS, events)
        .with(EvidenceColumns.INSPECTED, inspected)
        .with(EvidenceColumns.ELIGIBLE, eligible)
        .with(EvidenceColumns.VERDICT, verdict.word());
  }
}
