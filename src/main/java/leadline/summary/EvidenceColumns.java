package leadline.summary;

import java.util.List;

/** The columns by which every row shows what its figures rest on. */
public final class EvidenceColumns {

  public static final TableColumn<Long> EVENTS =
      TableColumn.count(
          "events",
          "what the row's figures count, observed in the window: overhauls for the endpoint's"
              + " reason, completed intervals, or parts found failed or in a condition");
  public static final TableColumn<Double> EXPOSURE =
      TableColumn.real(
          "exposure_h",
          "h",
          "positions of the component times hours that their machine ran under observation in the"
              + " window; empty where hours cannot be laid to the row");
  public static final TableColumn<Long> INSPECTED =
      TableColumn.count(
          "inspected",
          "eligible overhauls at which the part, or of a component at least one part, was opened"
              + " and its condition stated");
  public static final TableColumn<Long> ELIGIBLE =
      TableColumn.count(
          "eligible",
          "overhauls observed in the window, at which parts could have been inspected; a test only"
              + " is no overhaul");
  public static final TableColumn<Double> REPAIRED_HOURS_SHARE =
      TableColumn.real(
          "repaired_hours_share",
          "1",
          "share of the exposure that rests on repaired counter readings; empty without exposure");
  public static final TableColumn<String> VERDICT =
      TableColumn.text(
          "verdict",
          "what the row's figures may be used for: " + SharedColumns.words(Verdict.class));

  static final List<TableColumn<?>> ALL =
      List.of(EVENTS, EXPOSURE, INSPECTED, ELIGIBLE, REPAIRED_HOURS_SHARE, VERDICT);

  private EvidenceColumns() {}
}
