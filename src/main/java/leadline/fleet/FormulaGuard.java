package leadline.fleet;

/**
 * The apostrophe before a text of a CSV file that a spreadsheet would take for a formula: put there
 * where a file is written, and dropped where a file that was written so is read again.
 */
public final class FormulaGuard {

  private static final char GUARD = '\'';
  private static final String FORMULA_STARTS = "=+-@'\t\r";

  private FormulaGuard() {}

  /** The text, guarded where it needs it. */
  public static String on(String text) {
    return beginsLikeAFormula(text) ? GUARD + text : text;
  }

  /** The text that was guarded; any other as it is. */
  public static String off(String text) {
    return !text.isEmpty() && text.charAt(0) == GUARD && beginsLikeAFormula(text.substring(1))
        ? text.substring(1)
        : text;
  }

  private static boolean beginsLikeAFormula(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
  }
}
