package leadline.publish;

import java.util.Optional;
import java.util.function.Function;
import leadline.fleet.Written;
import leadline.summary.ComponentRates;
import leadline.summary.EstimateColumns;
import leadline.summary.EvidenceColumns;
import leadline.summary.OverhaulIntervals;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.SpringSurvival;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.Verdict;

/** A row of a published table as a line for people. */
final class FigureInWords {

  private static final String NOT_KNOWN = "not known";

  private FigureInWords() {}

  static String ofBreakdowns(TableRow row) {
    return "breakdowns per million h: %s; %s in %s; %s"
        .formatted(
            estimate(row, ComponentRates.RATE, Numbers::rate),
            count(row, EvidenceColumns.EVENTS),
            real(row, EvidenceColumns.EXPOSURE, Numbers::hours),
            verdict(row));
  }

  static String ofIntervals(TableRow row) {
    return "MTBO: median %s; mean up to %s: %s; naive mean %s; %s completed, %s running; %s"
        .formatted(
            estimate(row, OverhaulIntervals.KM_MEDIAN, Numbers::hours),
            real(row, OverhaulIntervals.RESTRICTED_TO, Numbers::hours),
            estimate(row, OverhaulIntervals.RESTRICTED_MEAN, Numbers::hours),
            real(row, OverhaulIntervals.NAIVE_MEAN, Numbers::hours),
            count(row, OverhaulIntervals.COMPLETED),
            count(row, OverhaulIntervals.RUNNING),
            verdict(row));
  }

  static String ofSpring(TableRow row) {
    String shares =
        row.find(SpringBreakage.BROKEN_SHARE.estimate()).map(share -> shares(row)).orElse("");
    return "%s: opened at %s of %s overhauls, %s broken; %s%s"
        .formatted(
            row.need(SharedColumns.PART),
            count(row, SpringBreakage.OPENED),
            count(row, SpringBreakage.OVERHAULED),
            count(row, SpringBreakage.BROKEN),
            shares,
            verdict(row));
  }

  static String ofSpringLife(TableRow row) {
    return "%s broken by %s since new: %s, by %s; %s springs known to have broken; %s"
        .formatted(
            row.need(SharedColumns.PART),
            real(row, SpringSurvival.AGE, Numbers::hours),
            estimate(row, SpringSurvival.BROKEN_BY, Numbers::share),
            row.need(SpringSurvival.METHOD),
            count(row, SpringSurvival.FAILURES),
            verdict(row));
  }

  private static String shares(TableRow row) {
    return "of those opened %s; of all %s if the unopened were sound, %s if broken; "
        .formatted(
            estimate(row, SpringBreakage.BROKEN_SHARE, Numbers::share),
            real(row, SpringBreakage.SHARE_IF_UNOPENED_SOUND, Numbers::share),
            real(row, SpringBreakage.SHARE_IF_UNOPENED_BROKEN, Numbers::share));
  }

  private static String estimate(
      TableRow row, EstimateColumns columns, Function<Double, String> inWords) {
    Optional<String> limits =
        row.find(columns.lower()).map(lower -> inWords.apply(lower) + upper(row, columns, inWords));
    return row.find(columns.estimate())
        .map(inWords)
        .map(value -> value + " (" + limits.orElse("no limits") + ")")
        .orElse(NOT_KNOWN);
  }

  private static String upper(
      TableRow row, EstimateColumns columns, Function<Double, String> inWords) {
    return row.find(columns.upper()).map(inWords).map(upper -> " to " + upper).orElse(" or more");
  }

  private static String real(
      TableRow row, TableColumn<Double> column, Function<Double, String> inWords) {
    return row.find(column).map(inWords).orElse(NOT_KNOWN);
  }

  private static String count(TableRow row, TableColumn<Long> column) {
    return Numbers.count(row.need(column));
  }

  private static String verdict(TableRow row) {
    String word = row.need(EvidenceColumns.VERDICT);
    return Written.read(Verdict.class, word)
        .map(verdict -> word + meaning(verdict))
        .orElseThrow(() -> new IllegalStateException("no verdict: " + word));
  }

  private static String meaning(Verdict verdict) {
    String words = VerdictInWords.of(verdict);
    return words.isEmpty() ? "" : ": " + words;
  }
}
