package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTableTest {

  /** Decimal notation by hand; 2.0E-3 printed as 0.0020 and 2.0E23 in 17 digits are old faults. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "212, 212",
    "8120.5, 8120.5",
    "0.002, 0.002",
    "0.000001, 0.000001",
    "0.0000009, 9.0E-7",
    "999999999999999, 999999999999999",
    "1000000000000000, 1.0E15",
    "2e23, 2.0E23",
    "-17.25, -17.25"
  })
  void realsArePlainAtOrdinarySizes(double number, String text) {
    assertEquals(text, CsvTable.shortest(number));
  }

  /** Against the JDK's exact decimal arithmetic. */
  @Test
  void noShorterDecimalReadsBackToTheSameReal() {
    Random random = new Random(7);
    for (int drawn = 0; drawn < 20_000; drawn++) {
      double number = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(24) - 8);
      String text = CsvTable.shortest(number);
      assertEquals(number, Double.parseDouble(text), text);
      int digits = new BigDecimal(text).stripTrailingZeros().precision();
      if (digits > 1) {
        BigDecimal exact = new BigDecimal(number);
        for (RoundingMode towards : new RoundingMode[] {RoundingMode.DOWN, RoundingMode.UP}) {
          double shorter = exact.round(new MathContext(digits - 1, towards)).doubleValue();
          assertNotEquals(number, shorter, text);
        }
      }
      boolean ordinary = Math.abs(number) >= 1e-6 && Math.abs(number) < 1e15;
      assertFalse(ordinary && text.contains("E"), text);
    }
  }
}
