package leadline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import leadline.stats.ReferenceCase.ExpectedResult;
import org.junit.jupiter.api.Test;

/** A comparison that lets a wrong result pass would make every reference case worthless. */
class ReferenceCaseTest {

  private static final List<NamedCsvRecord> ROWS =
      CsvReader.builder().ofNamedCsvRecord("failures\n3\n").stream().toList();

  private static final ExpectedResult RATE =
      new ExpectedResult("rate", List.of(10.0, 0.0), 0.01, 0.001);

  @Test
  void valuesWithinToleranceAreRight() {
    assertEquals(List.of(), differences(ROWS, RATE, Map.of("rate", () -> array(10.1, 0.001))));
  }

  @Test
  void valuesBeyondToleranceAreWrong() {
    assertEquals(
        List.of("rate[0]: 10.0, not 10.102", "rate[1]: 0.0, not NaN"),
        differences(ROWS, RATE, Map.of("rate", () -> array(10.102, Double.NaN))));
  }

  @Test
  void valuesMissingOrLeftOverAreWrong() {
    assertEquals(
        List.of("rate: 2 values expected, not 1"),
        differences(ROWS, RATE, Map.of("rate", () -> array(10))));
    assertEquals(
        List.of("rate: 2 values expected, not 3"),
        differences(ROWS, RATE, Map.of("rate", () -> array(10, 0, 0))));
  }

  @Test
  void aResultThatIsNotComputedIsWrong() {
    assertEquals(
        List.of("rate: not computed"),
        differences(ROWS, RATE, Map.of("ratio", () -> array(10, 0))));
  }

  @Test
  void nothingReadIsWrong() {
    assertEquals(
        List.of("no rows"), differences(List.of(), RATE, Map.of("rate", () -> array(10, 0))));
    assertEquals(
        List.of("no results expected"),
        new ReferenceCase("", "", Confidence.of(0.95), ROWS, List.of()).differences(Map.of()));
    assertEquals(
        List.of("rate: no value expected"),
        differences(
            ROWS, new ExpectedResult("rate", List.of(), 0, 0), Map.of("rate", () -> array())));
  }

  private static List<String> differences(
      List<NamedCsvRecord> rows, ExpectedResult expected, Map<String, Supplier<double[]>> actual) {
    return new ReferenceCase("", "", Confidence.of(0.95), rows, List.of(expected))
        .differences(actual);
  }

  private static double[] array(double... values) {
    return values;
  }
}
