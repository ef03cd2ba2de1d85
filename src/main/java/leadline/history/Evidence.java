package leadline.history;

/** What a visit proves of a part's function at the removal. */
enum Evidence {
  FAILED_IN_SERVICE,
  FOUND_FAILED,
  WORKING,
  /** Still working, in a condition that is cause for renewal. */
  WORKING_BEYOND_LIMIT,
  NOTHING;

  static Evidence of(PlacedVisit visit, PartFinding finding) {
    if (finding.isFailedInService()) {
      return FAILED_IN_SERVICE;
    }
    if (finding.inspection() instanceof Inspection.Opened opened) {
      return switch (opened.verdict()) {
        case FAILED -> FOUND_FAILED;
        case WORKING -> WORKING;
        case BEYOND_LIMIT -> WORKING_BEYOND_LIMIT;
        case MISSING -> NOTHING;
      };
    }
    // Of a part renewed at the visit, the test may have been of the new one.
    return visit.provesByTest(finding.part()) && !finding.isRenewed() ? WORKING : NOTHING;
  }
}
