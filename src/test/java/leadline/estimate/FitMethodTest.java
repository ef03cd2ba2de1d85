package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FitMethodTest {

  private static final String HEADER = "lower,upper,entry,weight\n";
  private static final String OPENED_TWICE =
      HEADER + "0,8000,,6\n8000,,,34\n0,16000,,8\n16000,,,12\n";

  @TempDir private Path folder;

  /** Source of the limits: Clopper and Pearson 1934; NIST/SEMATECH e-Handbook, section 8.4.5.1. */
  @Test
  void withoutAFailureOneSidedLimitsRemain() throws IOException {
    JsonNode results = fit(HEADER + "8000,,,10\n", EstimateSettings.none());
    assertEquals("insufficient", results.required("weibull.status").asText());
    assertEquals("no-failure", results.required("weibull.reason").asText());
    JsonNode bound = results.required("weibull.age_and_survival_lower95_one_sided");
    assertEquals(8000, bound.get(0).doubleValue());
    assertEquals(Math.pow(0.05, 0.1), bound.get(1).doubleValue(), 1e-12);
    assertEquals(
        80_000 / -Math.log(0.05),
        results.required("exponential.mean_lower95_one_sided").doubleValue(),
        1e-6);
    assertEquals(
        8000 * Math.sqrt(10 / -Math.log(0.05)),
        results.required("weibull_fixed_shape_2.0.scale_lower95_one_sided").doubleValue(),
        1e-6);
    assertFalse(results.has("weibull.shape"));
  }

  @Test
  void failuresTiedAtTheLargestAgeHaveNoMaximum() throws IOException {
    JsonNode results = fit(HEADER + "500,500,,3\n300,,,2\n", EstimateSettings.none());
    assertEquals("no-finite-maximum", results.required("weibull.status").asText());
    assertEquals("no-finite-maximum", results.required("lognormal.status").asText());
    assertFalse(results.has("exponential.status"));
  }

  /** By hand: with two opening ages the fitted shares are those observed. */
  @Test
  void sharesAtAgesAskedFor() throws IOException {
    EstimateSettings settings =
        EstimateSettings.none()
            .with(Setting.FAMILIES, List.of("log_logistic"))
            .with(Setting.SURVIVAL_AT, List.of("8000", "16000"))
            .with(Setting.NEXT_HOURS, List.of("8000"));
    JsonNode results = fit(OPENED_TWICE, settings);
    JsonNode survival = results.required("log_logistic.survival");
    assertEquals(34 / 40.0, survival.get(0).doubleValue(), 1e-9);
    assertEquals(12 / 20.0, survival.get(1).doubleValue(), 1e-9);
    assertEquals(
        1 - 12 / 20.0 / (34 / 40.0),
        results.required("log_logistic.failure_in_next_hours").get(0).doubleValue(),
        1e-9);
    assertEquals(2, results.required("log_logistic.survival_lr_lo").size());
    assertFalse(results.has("weibull.shape"));
  }

  /** By hand, as above; the names are those of the other families. */
  @Test
  void theGammaWhenAskedFor() throws IOException {
    EstimateSettings settings =
        EstimateSettings.none()
            .with(Setting.FAMILIES, List.of("gamma"))
            .with(Setting.SURVIVAL_AT, List.of("8000"));
    JsonNode results = fit(OPENED_TWICE, settings);
    assertEquals(34 / 40.0, results.required("gamma.survival").get(0).doubleValue(), 1e-9);
    double mean = results.required("gamma.mean").doubleValue();
    assertEquals(
        mean,
        results.required("gamma.shape").doubleValue()
            * results.required("gamma.scale").doubleValue(),
        1e-6);
    JsonNode limits = results.required("gamma.b10_lr");
    double b10 = results.required("gamma.b10").doubleValue();
    assertTrue(limits.get(0).doubleValue() < b10 && b10 < limits.get(1).doubleValue());
    assertEquals(
        "insufficient", fit(HEADER + "8000,,,10\n", settings).required("gamma.status").textValue());
  }

  /** By hand: two shares and two parameters leave nothing to check, one parameter does. */
  @Test
  void checksOfTheFit() throws IOException {
    EstimateSettings settings =
        EstimateSettings.none()
            .with(Setting.FAMILIES, List.of("exponential", "gamma"))
            .with(Setting.SIMULATIONS, List.of("19"));
    JsonNode results = run("fit-check", OPENED_TWICE, settings);
    assertEquals("insufficient", results.required("fit_check.gamma.status").textValue());
    assertEquals("saturated", results.required("fit_check.gamma.reason").textValue());
    double p = results.required("fit_check.exponential.p").doubleValue();
    assertEquals(p, Math.rint(20 * p) / 20);
    assertEquals(
        Math.sqrt(p * (1 - p) / 19), results.required("fit_check.exponential.p_se").doubleValue());
    assertTrue(results.required("fit_check.exponential.statistic").doubleValue() > 0);
    assertRefused("fit-check", Setting.SIMULATIONS, "18");
    assertRefused("fit-check", Setting.SIMULATIONS, "99.5");
    assertRefused("fit-check", Setting.START, "1e300");
  }

  @Test
  void aLifeThatEndedAtAgeNoughtIsRefusedWithItsLine() {
    UnusableData refused =
        assertThrows(
            UnusableData.class, () -> fit(HEADER + "5,,,1\n0,0,,1\n", EstimateSettings.none()));
    assertEquals(
        folder.resolve("data.csv")
            + ", line 3, column upper: no life distribution has an end at age 0.",
        refused.getMessage());
  }

  @Test
  void settingsOfNoUseAreRefused() {
    assertRefused("fit", Setting.FAMILIES, "gumbel");
    assertRefused("fit", Setting.FIXED_SHAPES, "0");
    assertRefused("fit", Setting.SURVIVAL_AT, "-1");
  }

  private void assertRefused(String method, Setting setting, String value) {
    EstimateSettings settings = EstimateSettings.none().with(setting, List.of(value));
    assertThrows(UnusableData.class, () -> run(method, OPENED_TWICE, settings));
  }

  private JsonNode fit(String csv, EstimateSettings settings) throws IOException {
    return run("fit", csv, settings);
  }

  private JsonNode run(String method, String csv, EstimateSettings settings) throws IOException {
    Path file = folder.resolve("data.csv");
    Files.writeString(file, csv);
    return new ObjectMapper().readTree(Methods.run(method, DataFile.read(file), settings).json());
  }
}
