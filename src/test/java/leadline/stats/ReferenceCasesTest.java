package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Source of every value: the README.md and expected.json beside the data of each case. */
class ReferenceCasesTest {

  static List<ReferenceCase> cases() throws IOException, URISyntaxException {
    return ReferenceCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyResultIsWithinItsTolerance(ReferenceCase reference) {
    assertEquals(List.of(), reference.differences(results(reference)));
  }

  @Test
  void thereAreCasesToMeet() throws IOException, URISyntaxException {
    assertFalse(cases().isEmpty());
  }

  private static Map<String, Supplier<double[]>> results(ReferenceCase reference) {
    return switch (reference.method()) {
      case "poisson-exact" -> rates(reference);
      case "binomial-limits" -> proportions(reference);
      case "two-poisson-rates" -> ratios(reference);
      case "kaplan-meier" -> curves(reference);
      default -> throw new IllegalArgumentException("no such method: " + reference.method());
    };
  }

  private static Map<String, Supplier<double[]>> rates(ReferenceCase reference) {
    Function<NamedCsvRecord, PoissonRate> rate = row -> rate(row, "failures", "exposure");
    Function<NamedCsvRecord, Limits> mean = row -> rate.apply(row).meanTimeLimits(confidence(row));
    Function<NamedCsvRecord, Limits> endedByEvent =
        row -> rate.apply(row).meanTimeLimitsEndedByEvent(confidence(row)).orElseThrow();
    return Map.of(
        "rate.mle", each(reference, row -> rate.apply(row).rate()),
        "rate.lower", each(reference, row -> rate.apply(row).limits(confidence(row)).lower()),
        "rate.upper", each(reference, row -> rate.apply(row).limits(confidence(row)).upper()),
        "rate.lower_one_sided95",
            each(reference, row -> rate.apply(row).lowerLimit(confidence(row))),
        "rate.upper_one_sided95",
            each(reference, row -> rate.apply(row).upperLimit(confidence(row))),
        "mtbf.estimate", each(reference, row -> rate.apply(row).meanTime()),
        "mtbf.time_lower", each(reference, row -> mean.apply(row).lower()),
        "mtbf.time_upper", each(reference, row -> mean.apply(row).upper()),
        "mtbf.failure_lower", each(reference, row -> endedByEvent.apply(row).lower()),
        "mtbf.failure_upper", each(reference, row -> endedByEvent.apply(row).upper()));
  }

  private static Map<String, Supplier<double[]>> proportions(ReferenceCase reference) {
    Function<NamedCsvRecord, Limits> exact = row -> proportion(row).clopperPearson(confidence(row));
    Function<NamedCsvRecord, Limits> score = row -> proportion(row).wilson(confidence(row));
    return Map.of(
        "clopper_pearson.lower", each(reference, row -> exact.apply(row).lower()),
        "clopper_pearson.upper", each(reference, row -> exact.apply(row).upper()),
        "wilson.lower", each(reference, row -> score.apply(row).lower()),
        "wilson.upper", each(reference, row -> score.apply(row).upper()));
  }

  private static Map<String, Supplier<double[]>> ratios(ReferenceCase reference) {
    Function<NamedCsvRecord, RateRatio> ratio =
        row -> new RateRatio(rate(row, "x1", "t1"), rate(row, "x2", "t2"));
    Function<NamedCsvRecord, Limits> limits =
        row -> ratio.apply(row).limits(reference.confidence());
    return Map.of(
        "ratio.ratio", each(reference, row -> ratio.apply(row).ratio().orElseThrow()),
        "ratio.p_less", each(reference, row -> ratio.apply(row).pLess()),
        "ratio.p_greater", each(reference, row -> ratio.apply(row).pGreater()),
        "ratio.p_central", each(reference, row -> ratio.apply(row).pCentral()),
        "ratio.p_mid", each(reference, row -> ratio.apply(row).pMid()),
        "ratio.p_minlike", each(reference, row -> ratio.apply(row).pMinimumLikelihood()),
        "ratio.lo", each(reference, row -> limits.apply(row).lower()),
        "ratio.hi", each(reference, row -> limits.apply(row).upper()));
  }

  private static Map<String, Supplier<double[]>> curves(ReferenceCase reference) {
    SurvivalTally<String> tally = new SurvivalTally<>();
    reference.rows().forEach(row -> tally.add(observed(row), count(row, "weight")));
    KaplanMeier curve = KaplanMeier.of(tally);
    List<SurvivalPoint> points = curve.points();
    List<NelsonAalen.Point> hazard = NelsonAalen.of(tally).points();
    Function<SurvivalPoint, Limits> plain =
        point -> point.plainLimits(reference.confidence()).orElseThrow();
    Function<SurvivalPoint, Limits> logLog =
        point -> point.logLogLimits(reference.confidence()).orElseThrow();
    return Map.ofEntries(
        Map.entry("km.time", all(points, SurvivalPoint::time)),
        Map.entry("km.n_risk", all(points, SurvivalPoint::atRisk)),
        Map.entry("km.n_event", all(points, SurvivalPoint::events)),
        Map.entry("km.surv", all(points, SurvivalPoint::survival)),
        Map.entry("km.se_greenwood", all(points, point -> point.standardError().orElseThrow())),
        Map.entry("km.plain_lo", all(points, point -> plain.apply(point).lower())),
        Map.entry("km.plain_hi", all(points, point -> plain.apply(point).upper())),
        Map.entry("km.loglog_lo", all(points, point -> logLog.apply(point).lower())),
        Map.entry("km.loglog_hi", all(points, point -> logLog.apply(point).upper())),
        Map.entry("na.cumhaz", all(hazard, NelsonAalen.Point::cumulativeHazard)),
        Map.entry("na.var_poisson", all(hazard, NelsonAalen.Point::variance)),
        Map.entry("km.median_first", () -> new double[] {curve.median().orElseThrow()}),
        Map.entry("km.median_R", () -> new double[] {curve.medianAtMidpoint().orElseThrow()}));
  }

  private static ObservedTime<String> observed(NamedCsvRecord row) {
    String upper = row.getField("upper");
    if (!upper.isEmpty() && !upper.equals(row.getField("lower"))) {
      throw new IllegalArgumentException("neither exact nor right-censored: " + row);
    }
    double time = number(row, "lower");
    ObservedTime<String> observed =
        upper.isEmpty() ? ObservedTime.censored(time) : ObservedTime.ended(time, "ended");
    return row.getField("entry").isEmpty() ? observed : observed.enteredAt(number(row, "entry"));
  }

  private static PoissonRate rate(NamedCsvRecord row, String events, String exposure) {
    return new PoissonRate(count(row, events), number(row, exposure));
  }

  private static Proportion proportion(NamedCsvRecord row) {
    return new Proportion(count(row, "x"), count(row, "n"));
  }

  private static Confidence confidence(NamedCsvRecord row) {
    return Confidence.of(number(row, "conf"));
  }

  private static long count(NamedCsvRecord row, String field) {
    return Long.parseLong(row.getField(field));
  }

  private static double number(NamedCsvRecord row, String field) {
    return Double.parseDouble(row.getField(field));
  }

  private static Supplier<double[]> each(
      ReferenceCase reference, ToDoubleFunction<NamedCsvRecord> result) {
    return all(reference.rows(), result);
  }

  private static <T> Supplier<double[]> all(List<T> elements, ToDoubleFunction<T> result) {
    return () -> elements.stream().mapToDouble(result).toArray();
  }
}
