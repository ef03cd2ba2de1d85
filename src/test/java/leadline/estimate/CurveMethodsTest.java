package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What survival from inspections, comparisons and recurrent events print, and what they refuse. */
class CurveMethodsTest {

  private static final String LIFE = "lower,upper,entry,weight";
  private static final String RECURRENT = "unit,time,event";

  @TempDir private Path folder;

  /** Source: Nelson 1995; Meeker and Escobar 1998: valve seats of 41 diesel engines. */
  @Test
  void valveSeatsRenewed() throws IOException, URISyntaxException {
    Path data =
        Path.of(
            Objects.requireNonNull(
                    CurveMethodsTest.class.getResource("/reference/mcf_valve_seats/data.csv"))
                .toURI());
    JsonNode results =
        new ObjectMapper()
            .readTree(Methods.run("mcf", DataFile.read(data), EstimateSettings.none()).json());
    assertEquals(.0244, mean(results, 61), 5e-5);
    assertEquals(.5122, mean(results, 326), 5e-5);
    assertEquals(.6835, mean(results, 404), 5e-5);
    assertEquals(1.5427, mean(results, 653), 5e-5);
  }

  private static double mean(JsonNode results, double time) {
    JsonNode times = results.get("mcf.time");
    for (int index = 0; index < times.size(); index++) {
      if (times.get(index).doubleValue() == time) {
        return results.get("mcf.mcf").get(index).doubleValue();
      }
    }
    throw new AssertionError("no event at " + time);
  }

  /** Source: the spread between units needs two of them. */
  @Test
  void oneUnitHasNoRobustError() throws IOException {
    JsonNode results = run("mcf", RECURRENT + ";a,4,1;a,9,0");
    assertEquals("[\"NaN\"]", results.get("mcf.se_robust").toString());
    assertEquals("[\"NaN\"]", results.get("mcf.log_hi").toString());
    assertEquals("insufficient", results.get("mcf.se_robust.status").textValue());
    assertFalse(results.has("mcf.se_nelson_variant"));
  }

  /**
   * Source: Crow 1974: with all events at the end the likelihood rises with the shape for ever; of
   * the limits, Garwood 1936, no event and one worked by hand.
   */
  @Test
  void aPowerLawWithoutMaximumSaysWhy() throws IOException {
    JsonNode end = run("power-law", RECURRENT + ";a,9,1;a,9,0");
    assertEquals("no-finite-maximum", end.get("crow.status").textValue());
    assertEquals(1, end.get("crow.n").doubleValue());
    assertFalse(end.has("crow.beta_mle"));
    JsonNode none = run("power-law", RECURRENT + ";a,9,0");
    assertEquals("insufficient", none.get("crow.status").textValue());
    assertEquals(
        -Math.log(0.05), none.get("crow.expected_events_upper95_one_sided").doubleValue(), 1e-12);
    assertEquals(0, none.get("crow.expected_events_lower95_one_sided").doubleValue());
    assertEquals(
        -Math.log(0.95), end.get("crow.expected_events_lower95_one_sided").doubleValue(), 1e-12);
    JsonNode early = run("power-law", "unit,time,event,start;a,1.1,1,1;a,1.2,1,1;a,999,0,1");
    assertEquals("boundary", early.get("crow.status").textValue());
    assertTrue(early.get("crow.beta_upper95_one_sided").doubleValue() > 0);
  }

  /** Source: limits at 95 % whatever was chosen, and at the chosen level. */
  @Test
  void powerLawLimitsAtTheChosenConfidenceToo() throws IOException {
    String repairs = RECURRENT + ";a,10,1;a,90,1;a,300,1;a,400,0;b,20,1;b,500,0";
    JsonNode usual = run("power-law", repairs);
    JsonNode wider =
        run("power-law", repairs, EstimateSettings.none().with(Setting.CONF, List.of("0.99")));
    assertEquals(usual.get("crow.beta_chi2_95"), wider.get("crow.beta_chi2_95"));
    assertTrue(
        wider.get("crow.beta_chi2_99").get(1).doubleValue()
            > wider.get("crow.beta_chi2_95").get(1).doubleValue());
    assertFalse(usual.has("crow.intensity_at_T"), "units that end at different ages");
    assertTrue(run("power-law", RECURRENT + ";a,10,1;a,90,1;a,99,0").has("crow.intensity_at_T"));
  }

  /** Source: MIL-HDBK-189 1981: what ended observation is the data's to tell where not stated. */
  @Test
  void anEventAtTheEndEndedObservationUnlessToldOtherwise() throws IOException {
    String repairs = RECURRENT + ";a,10,1;a,90,1;a,90,0";
    EstimateSettings time = EstimateSettings.none().with(Setting.TRUNCATION, List.of("time"));
    EstimateSettings other = EstimateSettings.none().with(Setting.TRUNCATION, List.of("age"));
    assertEquals(1, run("trend", repairs).get("trend.n_used").doubleValue());
    assertEquals(2, run("trend", repairs, time).get("trend.n_used").doubleValue());
    assertThrows(UnusableData.class, () -> run("trend", repairs, other));
  }

  @Test
  void aTrendNeedsEvents() throws IOException {
    JsonNode none = run("trend", RECURRENT + ";a,90,0");
    assertEquals("insufficient", none.get("laplace.status").textValue());
    assertEquals("insufficient", none.get("mil.status").textValue());
    assertEquals("NaN", none.get("laplace.u").textValue());
    JsonNode late = run("trend", "unit,time,event,start;a,70,1,50;a,90,0,50");
    assertEquals("NaN", late.get("mil.chi2").textValue());
    assertEquals(0, late.get("laplace.u").doubleValue(), 1e-15);
  }

  /** Source: Aalen and Johansen 1978, by hand: one of two ends by each cause. */
  @Test
  void sharesEndedByEachCause() throws IOException {
    JsonNode results =
        run("incidence", "time,cause,entry,weight;2,worn,,1;5,broken,,1;3,,1,2;1,,,1");
    assertEquals("[2.0,5.0]", results.get("incidence.time").toString());
    assertEquals(0.75, results.get("incidence.surv").get(0).doubleValue(), 1e-15);
    assertEquals(0.25, results.get("incidence.by.worn").get(1).doubleValue(), 1e-15);
    assertEquals(0.75, results.get("incidence.by.broken").get(1).doubleValue(), 1e-15);
  }

  /** Source: the definition: strata alike double what is seen and what is expected. */
  @Test
  void lifeGroupsAreComparedWithinStrata() throws IOException {
    String one = "1,1,,1,a;3,3,,1,a;2,2,,1,b;4,4,,1,b";
    JsonNode plain = run("log-rank", LIFE + ",group;" + one);
    String strata = one.replace(";", ",x;") + ",x;" + one.replace(";", ",y;") + ",y";
    JsonNode both = run("log-rank", LIFE + ",group,stratum;" + strata);
    assertEquals(
        2 * plain.get("logrank.chi2").doubleValue(), both.get("logrank.chi2").doubleValue(), 1e-12);
    JsonNode single = run("log-rank", LIFE + ",group;1,1,,1,a");
    assertEquals("NaN", single.get("logrank.p").textValue());
    assertEquals("insufficient", single.get("logrank.status").textValue());
  }

  /** Source: seen ends and right-censoring alone are what the log-rank test compares too. */
  @Test
  void inspectedGroupsAreCompared() throws IOException {
    String groups = LIFE + ",group;1,1,,1,a;3,,,2,a;2,2,,1,b;4,4,,1,b";
    JsonNode inspected = run("interval-log-rank", groups);
    JsonNode known = run("log-rank", groups);
    assertEquals(
        known.get("logrank.observed").get(0).doubleValue()
            - known.get("logrank.expected").get(0).doubleValue(),
        inspected.get("interval_logrank.excess").get(0).doubleValue(),
        1e-9);
    assertEquals(1, inspected.get("interval_logrank.df").doubleValue());
  }

  /** Source: each group has a curve of its own. */
  @Test
  void eachGroupHasACurveOfItsOwn() throws IOException {
    JsonNode results = run("turnbull", LIFE + ",group;0,4,,1,b;2,,,1,a;0,4,,3,a");
    assertEquals("[4.0]", results.get("b.npmle.right").toString());
    assertEquals(0, results.get("a.npmle.loglik_shortfall_at_most").doubleValue(), 1e-12);
    JsonNode once = run("isotonic", LIFE + ";0,4,,1;4,,,3;0,2,,1;2,,,1");
    assertEquals("[2.0,4.0]", once.get("isotonic.age").toString());
    assertEquals(1 / 3.0, once.get("isotonic.failed_by").get(0).doubleValue(), 1e-15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          turnbull          | lower,upper,entry,weight;5,9,2,1     | 2 | entry  | from their start
          isotonic          | lower,upper,entry,weight;0,4,,1;2,4,,1 | 3 | lower | inspected once
          isotonic          | lower,upper,entry,weight;4,4,,1      | 2 | lower  | inspected once
          log-rank          | lower,upper,entry,weight;4,4,,1      | 1 | group  | the file has none
          log-rank          | lower,upper,entry,weight,group;4,6,,1,a | 2 | upper | right-censored
          interval-log-rank | lower,upper,entry,weight;4,4,,1      | 1 | group  | the file has none
          interval-log-rank | lower,upper,entry,weight,group;4,4,,1.5,a | 2 | weight | whole number
          incidence         | time,cause,entry;4,a,4               | 2 | entry  | before the end
          incidence         | time,cause,weight;4,a,0              | 2 | weight | 1 or more
          mcf               | unit,time,event;a,4,1                | 2 | event  | no end of observation
          """)
  void oneSentenceSaysFileLineColumnAndFault(
      String method, String lines, int line, String column, String fault) {
    UnusableData unusable = assertThrows(UnusableData.class, () -> run(method, lines));
    String message = String.valueOf(unusable.getMessage());
    String place = folder.resolve("data.csv") + ", line " + line + ", column " + column + ": ";
    assertTrue(message.startsWith(place), message);
    assertTrue(message.contains(fault), message);
  }

  /**
   * Quantiles of the maintained group of the leukaemia trial (Miller 1981, 11 patients), limits by
   * R 4.2.2, {@code quantile(survfit(..., conf.type = "log-log"))}; at 31 and 48 weeks R's midpoint
   * convention does not matter. The mean up to 48 weeks and its error: R's {@code summary(rmean)}.
   */
  @Test
  void quantilesAndAMeanUpToAHorizon() throws IOException {
    Path settings =
        Files.writeString(
            folder.resolve("settings.json"),
            "{\"quantiles\": [0.1, 0.25, 0.5, 0.75], \"horizon\": 48}");
    JsonNode results =
        run(
            "kaplan-meier",
            LIFE
                + ";9,9,,1;13,13,,1;13,,,1;18,18,,1;23,23,,1;28,,,1;31,31,,1;34,34,,1;45,,,1"
                + ";48,48,,1;161,,,1",
            EstimateSettings.read(settings));
    assertEquals("[13.0,18.0,31.0,48.0]", results.get("km.quantile").toString());
    assertEquals("[9.0,9.0,13.0,31.0]", results.get("km.quantile_loglog_lo").toString());
    assertEquals(
        "[18.0,34.0,\"Infinity\",\"Infinity\"]", results.get("km.quantile_loglog_hi").toString());
    assertEquals(31.843182, results.get("km.restricted_mean").doubleValue(), 5e-7);
    assertEquals(4.527885, results.get("km.restricted_mean_se").doubleValue(), 5e-7);
    double share = Math.log(31.843182 / (48 - 31.843182));
    double margin = 1.959964 * 4.527885 * 48 / (31.843182 * (48 - 31.843182));
    assertEquals(
        48 / (1 + Math.exp(margin - share)),
        results.get("km.restricted_mean_logit_lo").doubleValue(),
        1e-4);
    assertEquals(
        48 / (1 + Math.exp(-margin - share)),
        results.get("km.restricted_mean_logit_hi").doubleValue(),
        1e-4);
  }

  private JsonNode run(String method, String lines) throws IOException {
    return run(method, lines, EstimateSettings.none());
  }

  private JsonNode run(String method, String lines, EstimateSettings settings) throws IOException {
    Path file = Files.writeString(folder.resolve("data.csv"), lines.replace(';', '\n') + "\n");
    return new ObjectMapper().readTree(Methods.run(method, DataFile.read(file), settings).json());
  }
}
