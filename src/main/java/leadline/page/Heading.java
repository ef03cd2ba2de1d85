package leadline.page;

import java.util.Map;
import leadline.summary.TableColumn;

/** The heads of a page's tables. */
final class Heading {

  /** Of those columns whose name says too little to a reader who knows the trade only. */
  private static final Map<String, String> PLAIN =
      Map.ofEntries(
          Map.entry("stratum", "fleet, model or vessel"),
          Map.entry("endpoint", "reason"),
          Map.entry("since", "counted from"),
          Map.entry("due_early", "due,\u00a0early"),
          Map.entry("due_on", "due,\u00a0about"),
          Map.entry("due_late", "due,\u00a0late"),
          Map.entry("shut_part", "part shut longest"),
          Map.entry("opened_on", "last opened"),
          Map.entry("shut_h", "not opened for"),
          Map.entry("due_unknown", "hours unknown"),
          Map.entry("km_median_h", "median, Kaplan-Meier"),
          Map.entry("restricted_mean_h", "mean, up to a limit"),
          Map.entry("restricted_to_h", "that limit"),
          Map.entry("naive_mean_h", "mean of completed only"),
          Map.entry("aic_above_best", "AIC above best"),
          Map.entry("fit_check_p", "p of the fit's check"),
          Map.entry("b10_h", "age of 10 % failed"),
          Map.entry("failed_by_8000_h_share", "failed by 8,000 h"),
          Map.entry("failed_by_interval_share", "failed by policy interval"),
          Map.entry("broken_by", "broken by that age"));

  private Heading() {}

  /** A column's name without its unit, and the unit. */
  static String of(TableColumn<?> column) {
    String unit = column.unit();
    String name =
        PLAIN.getOrDefault(
            column.name(), column.name().replaceFirst("_(h|per_million_h)$", "").replace('_', ' '));
    return unit.isEmpty() || unit.equals("1") ? name : name + ",\u00a0" + unit;
  }
}
