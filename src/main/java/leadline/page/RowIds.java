package leadline.page;

import leadline.publish.VesselFile;

/** What the rows are called that sentences stand on: by the rule that asks, and by the table. */
final class RowIds {

  /** Rows that no sentence stands on. */
  static final String NONE = "";

  static final String REFUSED = "refused-rows";

  private RowIds() {}

  static String overdue(String component) {
    return "overdue-" + component;
  }

  /** The fleet's rows of the month and of twelve months. */
  static String breakdowns(String component) {
    return "breakdowns-" + component;
  }

  /** The rows of the vessels that had them. */
  static String brokenDown(String component) {
    return "broken-down-" + component;
  }

  static String spring(String component, String part) {
    return "spring-" + component + "-" + part;
  }

  static String part(String component, String part) {
    return "part-" + component + "-" + part;
  }

  static String vessel(String vessel) {
    return "vessel-" + VesselFile.name(vessel);
  }
}
