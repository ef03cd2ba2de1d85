package leadline.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaGuardTest {

  /** The characters at which spreadsheets begin a formula: common practice, no source. */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "'=1", "'", "''"})
  void textsThatASpreadsheetWouldCalculateAreGuardedAndComeBack(String text) {
    assertEquals("'" + text, FormulaGuard.on(text));
    assertEquals(text, FormulaGuard.off(FormulaGuard.on(text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "6-cylinder", "a=b", " =1", "0-4000", "Ü"})
  void otherTextsStayAsTheyAre(String text) {
    assertEquals(text, FormulaGuard.on(text));
    assertEquals(text, FormulaGuard.off(text));
  }

  /** As in a sheet that another program wrote: no guard, so none is dropped. */
  @ParameterizedTest
  @ValueSource(strings = {"=1", "-17", "'til noon", "'"})
  void textsThatWereNeverGuardedStayAsTheyAre(String text) {
    assertEquals(text, FormulaGuard.off(text));
  }
}
