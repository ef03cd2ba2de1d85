package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Data from elsewhere, written as vessels' exports, through the whole pipeline: the published
 * figures are those that others got from the same data.
 */
@Tag("long")
class OpenDataTest {

  private static final Path REFERENCE = GoldenFleet.HOME.resolve("src/test/resources/reference");
  private static final String INJECTOR = "fuel-injector";

  /** Published limits allow for few lives: with 432 by a thousandth or two. */
  private static final double FEW_LIVES = 2e-3;

  @TempDir Path folder;

  /**
   * 432 turbine wheels, each opened once, at 400 to 4,600 h: Nelson 1982, Applied Life Data
   * Analysis, chapter 9. Fits by R: reference case {@code mle_turbine_current_status}. Isotonic
   * shares by pooling adjacent violators, to the four digits of the trade's table.
   */
  @Test
  void turbineWheelsOpenedOnce() throws IOException {
    Exports exports =
        new Exports(LocalDate.parse("2023-01-01"), 20)
            .newEngine("wheels-1", 18, 12, 6_000)
            .newEngine("wheels-2", 18, 12, 6_000);
    int wheel = 0;
    for (Map<String, String> row : data("mle_turbine_current_status")) {
      boolean cracked = !row.get("upper").isEmpty();
      int hours = Integer.parseInt(cracked ? row.get("upper") : row.get("lower"));
      for (int times = Integer.parseInt(row.get("weight")); times > 0; times--) {
        exports.overhaul(
            "wheels-" + (wheel / 216 + 1),
            INJECTOR,
            place(wheel % 216),
            hours,
            "planned",
            "nrv-spring,yes,%s,renewed,,".formatted(cracked ? "cracked" : "sound"));
        wheel++;
      }
    }
    assertEquals(432, wheel);
    Published month = publish(exports, 1_600);

    JsonNode reference = reference("mle_turbine_current_status");
    Map<String, String> weibull = month.life("nrv-spring", "weibull");
    assertEquals("864", weibull.get("lives"));
    assertEquals("432", weibull.get("unverified"));
    assertNear(value(reference, "weibull.shape"), weibull.get("shape"));
    assertNear(value(reference, "weibull.scale"), weibull.get("scale_h"));
    assertNear(value(reference, "weibull.b10"), weibull.get("b10_h"));
    assertLimits(reference, "weibull.shape_lr", weibull, "shape");
    assertLimits(reference, "weibull.scale_lr", weibull, "scale_h");
    assertLimits(reference, "weibull.b10_lr", weibull, "b10_h");
    Map<String, String> lognormal = month.life("nrv-spring", "lognormal");
    assertNear(1 / value(reference, "lognormal.sigma"), lognormal.get("shape"));
    assertNear(Math.exp(value(reference, "lognormal.mu")), lognormal.get("scale_h"));
    assertNear(
        value(reference, "lognormal.aic") - value(reference, "weibull.aic"),
        lognormal.get("aic_above_best"));
    assertNear(
        value(reference, "exponential.mean"),
        month.life("nrv-spring", "exponential").get("scale_h"));

    int[] ages = {400, 1000, 1400, 1800, 2200, 2600, 3000, 3400, 3800, 4200, 4600};
    double[] shares = {0, .0698, .0698, .0959, .1667, .2222, .2222, .4615, .5811, .5811, .5833};
    for (int index = 0; index < ages.length; index++) {
      Map<String, String> row = month.curve("nrv-spring", ages[index]);
      assertEquals(shares[index], number(row, "broken_by_least"), 5e-5, row::toString);
      assertEquals(shares[index], number(row, "broken_by"), 5e-5, row::toString);
    }
  }

  /**
   * 46 patients' times to cosmetic deterioration, known between visits: Finkelstein and Wolfe 1985,
   * Biometrics 41:933; one month as 100 h. Masses: reference case {@code turnbull_breast_rt}.
   */
  @Test
  void cosmesisIntervalsAsOpenings() throws IOException {
    Exports exports =
        new Exports(LocalDate.parse("2023-01-01"), 20).newEngine("clinic", 4, 12, 6_000);
    int patient = 0;
    for (Map<String, String> row : data("turnbull_breast_rt")) {
      for (int times = Integer.parseInt(row.get("weight")); times > 0; times--) {
        int seenWell = 100 * Integer.parseInt(row.get("lower"));
        if (seenWell > 0) {
          exports.overhaul(
              "clinic",
              INJECTOR,
              place(patient),
              seenWell,
              "planned",
              "nrv-spring,yes,sound,none,,");
        }
        if (!row.get("upper").isEmpty()) {
          int seenIll = 100 * Integer.parseInt(row.get("upper"));
          exports.overhaul(
              "clinic",
              INJECTOR,
              place(patient),
              seenIll,
              "planned",
              "nrv-spring,yes,broken,renewed,,");
        }
        patient++;
      }
    }
    assertEquals(46, patient);
    Published month = publish(exports, 800);

    JsonNode reference = reference("turnbull_breast_rt");
    JsonNode right = check(reference, "npmle.right");
    JsonNode left = check(reference, "npmle.left");
    JsonNode surviving = check(reference, "npmle.surv_after_right");
    double before = 0;
    for (int index = 0; index < right.size(); index++) {
      double broken = 1 - surviving.get(index).doubleValue();
      Map<String, String> atLeft = month.curve("nrv-spring", 100 * left.get(index).intValue());
      Map<String, String> atRight = month.curve("nrv-spring", 100 * right.get(index).intValue());
      assertEquals(before, number(atLeft, "broken_by_most"), 1e-8);
      assertEquals(broken, number(atRight, "broken_by_least"), 1e-8);
      before = broken;
    }
    assertEquals("21", month.life("nrv-spring", "weibull").get("interval"));
    assertEquals("25", month.life("nrv-spring", "weibull").get("right_censored"));
  }

  /**
   * Valve seats of 41 diesel engines, 48 renewals, some two on a day: Nelson and Doganaksoy 1989,
   * in Nelson 2003, Recurrent Events Data Analysis; one day as one hour, each engine a vessel with
   * one seat. Fits to the times between renewals by R 4.2.2, survival 3.5-3, {@code survreg} and
   * {@code survfit(conf.type = "log-log")}.
   */
  @Test
  void valveSeatsAsOverhauls() throws IOException {
    Exports exports = new Exports(LocalDate.parse("2022-11-01"), 1);
    Map<String, Integer> watchedTo = new TreeMap<>();
    for (Map<String, String> row : data("mcf_valve_seats")) {
      watchedTo.merge("engine-" + row.get("unit"), Integer.parseInt(row.get("time")), Math::max);
      if (row.get("event").equals("1")) {
        exports.overhaul(
            "engine-" + row.get("unit"),
            "exhaust-valve",
            "1,",
            Integer.parseInt(row.get("time")),
            "breakdown",
            "seat,yes,leaking,renewed,in-service,");
      }
    }
    watchedTo.forEach((engine, days) -> exports.newEngine(engine, 1, 2, days));
    assertEquals(41, watchedTo.size());
    Published month = publish(exports, 400);

    Map<String, String> rate =
        month.only(
            "component_rates", Map.of("component", "exhaust-valve", "endpoint", "breakdown"));
    assertEquals("48", rate.get("events"));
    assertEquals("25363", rate.get("exposure_h"));
    Map<String, String> between =
        month.only("overhaul_intervals", Map.of("component", "exhaust-valve", "clock", "position"));
    assertEquals("48", between.get("completed"));
    assertEquals("41", between.get("running"));
    assertEquals("342", between.get("km_median_h"));
    assertEquals("249", between.get("km_median_h_lo95"));
    assertEquals("478", between.get("km_median_h_hi95"));
    Map<String, String> weibull = month.life("seat", "weibull");
    assertEquals("46", weibull.get("exact"));
    assertNear(1.06527830704, weibull.get("shape"));
    assertNear(542.130342383, weibull.get("scale_h"));
    Map<String, String> lognormal = month.life("seat", "lognormal");
    assertNear(Math.exp(5.88821362885), lognormal.get("scale_h"));
    assertNear(1 / 1.32553700061, lognormal.get("shape"));
    assertNear(551.369565217, month.life("seat", "exponential").get("scale_h"));
  }

  /**
   * Non-return-valve springs: 6 broken of 40 opened at 8,000 h, and 20 unopened on a vessel that
   * never opens. The exponential rate is -log(1 - 6/40) / 8,000 h, limits by Clopper and Pearson;
   * unopened counted as sound gives the known wrong 13.2 per million hours.
   */
  @Test
  void unopenedSpringsAreNoSoundOnes() throws IOException {
    Exports exports =
        new Exports(LocalDate.parse("2023-01-01"), 20)
            .newEngine("opens", 20, 2, 9_000)
            .newEngine("never-opens", 10, 2, 9_000);
    for (int spring = 0; spring < 40; spring++) {
      exports.overhaul(
          "opens",
          INJECTOR,
          place(spring, 2),
          8_000,
          "planned",
          "nrv-spring,yes,%s,renewed,,".formatted(spring < 6 ? "broken" : "sound"));
    }
    for (int spring = 0; spring < 20; spring++) {
      exports.overhaul(
          "never-opens", INJECTOR, place(spring, 2), 8_000, "planned", "nrv-spring,no,,none,,");
    }
    Published month = publish(exports, 8_000);

    Map<String, String> exponential = month.life("nrv-spring", "weibull-shape-1");
    assertEquals(20.3, 1e6 / number(exponential, "scale_h"), 0.05);
    assertEquals("20", exponential.get("selective"));
    Map<String, String> shares =
        month.only("spring_breakage", Map.of("part", "nrv-spring", "hours_band", "all"));
    assertEquals(13.2, millionHourRate(number(shares, "share_if_unopened_sound")), 0.05);
    Map<String, String> opened =
        month.only(
            "spring_breakage",
            Map.of("part", "nrv-spring", "hours_band", "all", "stratum", "opens"));
    assertEquals(7.3, millionHourRate(number(opened, "broken_share_lo95")), 0.05);
    assertEquals(44.3, millionHourRate(number(opened, "broken_share_hi95")), 0.05);
  }

  /**
   * Few failures, the shape assumed: broken at 6,000 and 9,500 h in service, eight intact at 8,000
   * h. Scales worked out from (sum of ages to the shape / 2) to 1 / shape: Nelson 1985, J. Qual.
   * Technol. 17:140.
   */
  @ParameterizedTest
  @CsvSource({"1, 39_750", "1.5, 23_304", "2, 17_864", "3, 13_724"})
  void fewFailuresOverAssumedShapes(String shape, String scale) throws IOException {
    Exports exports = new Exports(LocalDate.parse("2023-01-01"), 20).newEngine("few", 5, 2, 9_500);
    exports.overhaul(
        "few", INJECTOR, "1,1", 6_000, "breakdown", "main-spring,yes,broken,renewed,in-service,");
    exports.overhaul(
        "few", INJECTOR, "1,2", 9_500, "breakdown", "main-spring,yes,broken,renewed,in-service,");
    for (int spring = 2; spring < 10; spring++) {
      exports.overhaul(
          "few", INJECTOR, place(spring, 2), 8_000, "planned", "main-spring,yes,sound,renewed,,");
    }
    Published month = publish(exports, 8_000);

    Map<String, String> row = month.life("main-spring", "weibull-shape-" + shape);
    assertEquals(Double.parseDouble(scale.replace("_", "")), number(row, "scale_h"), 0.5);
    assertEquals("too-few", row.get("verdict"));
  }

  /**
   * Records that begin in mid-life: known from 5,000, 0, 3,000, 6,000 h to 9,000, 7,000, 8,000,
   * 12,000 h, the first and third failed. Exponential 2 / 22,000 h = 90.9 per million hours; with
   * shape 2 the scale is 11,576 h: Meeker and Escobar 1998, chapter 11.
   */
  @Test
  void recordsThatBeginInMidLife() throws IOException {
    Exports exports =
        new Exports(LocalDate.parse("2023-01-01"), 20)
            .oldEngine("first", 1, 1, 4_000)
            .oldEngine("second", 1, 1, 7_000)
            .oldEngine("third", 1, 1, 5_000)
            .oldEngine("fourth", 1, 1, 6_000)
            .overhaul("first", INJECTOR, "1,1", 4_000, "breakdown", footAt(9_000, "cracked"))
            .overhaul("second", INJECTOR, "1,1", 7_000, "planned", footAt(7_000, "sound"))
            .overhaul("third", INJECTOR, "1,1", 5_000, "breakdown", footAt(8_000, "cracked"))
            .overhaul("fourth", INJECTOR, "1,1", 6_000, "planned", footAt(12_000, "sound"));
    Published month = publish(exports, 8_000);

    assertEquals(90.9, 1e6 / number(month.life("foot", "weibull-shape-1"), "scale_h"), 0.05);
    assertEquals(11_576, number(month.life("foot", "weibull-shape-2"), "scale_h"), 0.5);
    assertEquals("3", month.life("foot", "weibull-shape-2").get("delayed_entry"));
  }

  private static String footAt(int hoursSinceNew, String found) {
    return "foot,yes,%s,renewed,,%d".formatted(found, hoursSinceNew);
  }

  private Published publish(Exports exports, int policyInterval) throws IOException {
    exports.writeTo(folder.resolve("inbox"));
    return Published.of(folder, policyInterval);
  }

  private static double millionHourRate(double brokenShare) {
    return -1e6 * Math.log1p(-brokenShare) / 8_000;
  }

  private static String place(int position) {
    return place(position, 12);
  }

  private static String place(int position, int places) {
    return "%d,%d".formatted(position / places + 1, position % places + 1);
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static void assertNear(double expected, String published) {
    assertEquals(expected, Double.parseDouble(published), 1e-6 * Math.abs(expected));
  }

  private static void assertLimits(
      JsonNode reference, String name, Map<String, String> row, String column) {
    JsonNode limits = check(reference, name);
    assertEquals(
        limits.get(0).doubleValue(),
        number(row, column + "_lo95"),
        FEW_LIVES * limits.get(0).doubleValue());
    assertEquals(
        limits.get(1).doubleValue(),
        number(row, column + "_hi95"),
        FEW_LIVES * limits.get(1).doubleValue());
  }

  private static List<Map<String, String>> data(String referenceCase) {
    return Expected.read(REFERENCE.resolve(referenceCase).resolve("data.csv"));
  }

  private static JsonNode reference(String referenceCase) throws IOException {
    return new ObjectMapper()
        .readTree(REFERENCE.resolve(referenceCase).resolve("expected.json").toFile());
  }

  private static double value(JsonNode reference, String name) {
    return check(reference, name).doubleValue();
  }

  private static JsonNode check(JsonNode reference, String name) {
    for (JsonNode check : reference.required("checks")) {
      if (check.required("name").textValue().equals(name)) {
        return check.required("value");
      }
    }
    throw new AssertionError("no reference value " + name);
  }
}
