package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import leadline.fleet.HoursLayout;
import leadline.fleet.MovementLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.RecordKind;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberCellsTest {

  private static ReadExport hours(String hours) {
    return ReadExport.of(
        RecordKind.HOURS,
        "vessel,machine,read_at,hours,kind\nV1,ME,2024-03-01,\"" + hours + "\",counter\n");
  }

  private static ReadExport quantity(String quantity) {
    return ReadExport.of(
        RecordKind.MOVEMENTS,
        "vessel,movement,part,moved_on,quantity\nV1,M1,nozzle,2024-03-01,\"" + quantity + "\"\n");
  }

  private static ReadExport pressure(String bar) {
    return ReadExport.of(
        RecordKind.OVERHAULS,
        "vessel,overhaul,machine,component,done_on,reason,opening_pressure_bar\n"
            + "V1,OH-1,ME,fuel-injector,2024-03-01,planned,\""
            + bar
            + "\"\n");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "8550, 85500",
    "8550.5, 85505",
    "0.04, 0",
    "0.05, 1",
    "0.0499999999999999999999, 0",
    "7.95, 80",
    "0012.30, 123",
    "999999, 9999990",
    "999999.04, 9999990"
  })
  void hoursAreRoundedHalfUpToATenth(String text, long tenths) {
    assertEquals(tenths, hours(text).cells().get(0).need(HoursLayout.HOURS).tenths());
  }

  /** Against the JDK's exact decimal arithmetic. */
  @Test
  void hoursRoundAsExactDecimalsDo() {
    SplittableRandom random = new SplittableRandom(20240615);
    StringBuilder text = new StringBuilder("vessel,machine,read_at,hours,kind\n");
    int rows = 5_000;
    BigDecimal[] expected = new BigDecimal[rows];
    for (int i = 0; i < rows; i++) {
      expected[i] = BigDecimal.valueOf(random.nextLong(9_999_990_000L), random.nextInt(4, 9));
      text.append("V1,ME,2024-03-01,").append(expected[i].toPlainString()).append(",counter\n");
    }
    ReadExport read = ReadExport.of(RecordKind.HOURS, text.toString());
    assertEquals(rows, read.tally().stored());
    for (int i = 0; i < rows; i++) {
      assertEquals(RunningHours.ofHours(expected[i]), read.cells().get(i).need(HoursLayout.HOURS));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "8550,5", "1e4", "-5", "+5", ".5", "5.", "5.5.5", "12 000", "8550h", "NaN", "0x10", "٣",
        "unknown", "-", "."
      })
  void hoursThatAreNoPlainDecimal(String text) {
    assertEquals(List.of("2: not-hours hours"), hours(text).refusals());
  }

  @ParameterizedTest
  @ValueSource(strings = {"999999.05", "1000000", "99999999999999999999999999999999"})
  void hoursThatNoMachineTurns(String text) {
    ReadExport read = hours(text);
    assertEquals(List.of("2: out-of-range hours"), read.refusals());
    assertEquals(
        "hours \"" + text + "\" is out of range: write a number from 0 to 999999.",
        read.refused().get(0).faults().get(0).sentence());
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "-3, -3", "1000000, 1000000", "-1000000, -1000000", "007, 7", "-0, 0"})
  void wholeNumbers(String text, long value) {
    assertEquals(value, quantity(text).cells().get(0).need(MovementLayout.QUANTITY));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3.0", "1,000", "+3", "1e3", "three", "-", "--3"})
  void thatAreNoWholeNumbers(String text) {
    assertEquals(List.of("2: not-a-whole-number quantity"), quantity(text).refusals());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1000001", "-1000001", "9223372036854775808", "-99999999999999999999"})
  void wholeNumbersOutOfRange(String text) {
    assertEquals(List.of("2: out-of-range quantity"), quantity(text).refusals());
  }

  @ParameterizedTest
  @CsvSource({"320, 320", "320.25, 320.25", "0, 0", "2000, 2000", "2000.000, 2000"})
  void decimals(String text, double value) {
    assertEquals(value, pressure(text).cells().get(0).need(OverhaulLayout.OPENING_PRESSURE));
  }

  @ParameterizedTest
  @CsvSource({
    "'320,5', not-a-number",
    "320 bar, not-a-number",
    "1e2, not-a-number",
    "Infinity, not-a-number",
    "-1, out-of-range",
    "2000.1, out-of-range"
  })
  void decimalsThatAreNone(String text, String rule) {
    assertEquals(List.of("2: " + rule + " opening_pressure_bar"), pressure(text).refusals());
  }
}
