package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A comparison that lets a wrong result pass would make every reference case worthless. */
class ExpectedResultTest {

  @Test
  void valuesWithinToleranceAreRight() throws JsonProcessingException {
    assertEquals(List.of(), rate("[10.0, 0]", "[10.1, 0.001]"));
  }

  @Test
  void valuesBeyondToleranceAreWrong() throws JsonProcessingException {
    assertEquals(
        List.of("rate[0]: 10.0, not 10.102", "rate[1]: 0, not \"NaN\""),
        rate("[10.0, 0]", "[10.102, \"NaN\"]"));
  }

  @Test
  void valuesMissingOrLeftOverAreWrong() throws JsonProcessingException {
    assertEquals(List.of("rate: 2 values expected, not 1"), rate("[10, 0]", "10"));
    assertEquals(List.of("rate: 2 values expected, not 3"), rate("[10, 0]", "[10, 0, 0]"));
  }

  @Test
  void infinitiesWordsAndTruthsMustBeEqual() throws JsonProcessingException {
    assertEquals(List.of(), rate("[\"Infinity\", true]", "[\"Infinity\", true]"));
    assertEquals(List.of("rate[0]: \"Infinity\", not 1.0"), rate("\"Infinity\"", "1.0"));
    assertEquals(List.of("rate[0]: 1, not \"Infinity\""), rate("1", "\"Infinity\""));
    assertEquals(List.of("rate[0]: false, not true"), rate("false", "true"));
  }

  @Test
  void aResultThatIsNotComputedIsWrong() throws JsonProcessingException {
    assertEquals(List.of("rate: not computed"), differences("rate", "10", "{\"ratio\": 10}"));
  }

  @ParameterizedTest
  @CsvSource({"NO_FINITE_MLE, no-finite-maximum", "NOT_IDENTIFIABLE, insufficient", "OK, ok"})
  void aStatusAsksForTheBehaviour(String expected, String word) throws JsonProcessingException {
    String results = "{\"fit.status\": \"" + word + "\"}";
    assertEquals(List.of(), differences("fit.status", "\"" + expected + "\"", results));
  }

  @Test
  void aStatusWhereThereShouldBeNoneIsWrongAndSoIsNoneWhereThereShouldBeOne()
      throws JsonProcessingException {
    assertEquals(
        List.of("fit.status: \"OK\", not \"boundary\""),
        differences("fit.status", "\"OK\"", "{\"fit.status\": \"boundary\"}"));
    assertEquals(
        List.of("fit.status: \"NO_FINITE_MLE\", not "),
        differences("fit.status", "\"NO_FINITE_MLE\"", "{}"));
  }

  /** Source: the definition; the closed form stands for the estimate. */
  @Test
  void aClosedFormIsComparedWithTheEstimate() throws JsonProcessingException {
    assertEquals(
        List.of("exponential.rate_closed_form[0]: 3.0, not 4.0"),
        differences("exponential.rate_closed_form", "3.0", "{\"exponential.rate\": 4.0}"));
  }

  @Test
  void aResultThatNoMethodPrintsIsWrong() throws Exception {
    ReferenceCase reference =
        new ReferenceCase(
            "",
            Path.of(""),
            MissingNode.getInstance(),
            List.of(new ExpectedResult("luck", new ObjectMapper().readTree("7"), 0, 0)));
    assertEquals(List.of("luck: no method prints it"), reference.differences());
  }

  private static List<String> rate(String expected, String actual) throws JsonProcessingException {
    return differences("rate", expected, "{\"rate\": " + actual + "}");
  }

  private static List<String> differences(String name, String expected, String results)
      throws JsonProcessingException {
    JsonNode value = new ObjectMapper().readTree(expected);
    return new ExpectedResult(name, value, 0.01, 0.001)
        .differences(new ObjectMapper().readTree(results));
  }
}
