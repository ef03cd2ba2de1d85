package leadline.fleet;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of record of the plain layout. */
public enum RecordKind implements Written {
  MACHINES(MachineLayout.LAYOUT),
  HOURS(HoursLayout.LAYOUT),
  OVERHAULS(OverhaulLayout.LAYOUT),
  FINDINGS(FindingLayout.LAYOUT),
  STOCK(StockLayout.LAYOUT),
  MOVEMENTS(MovementLayout.LAYOUT),
  RETURNS(ReturnLayout.LAYOUT);

  @SuppressWarnings("ImmutableEnumChecker") // a layout copies its lists and never changes
  private final Layout layout;

  RecordKind(Layout layout) {
    this.layout = layout;
  }

  public Layout layout() {
    return layout;
  }

  /**
   * The kind whose word the file's name begins with, in letters of either case and with no letter
   * behind it: {@code overhauls_2023.csv}, but not {@code hoursheet.csv}.
   */
  public static Optional<RecordKind> ofFileName(String fileName) {
    return Arrays.stream(values())
        .filter(kind -> fileName.regionMatches(true, 0, kind.word(), 0, kind.word().length()))
        .filter(kind -> !hasLetterAt(fileName, kind.word().length()))
        .findFirst();
  }

  private static boolean hasLetterAt(String text, int at) {
    return at < text.length() && Character.isLetter(text.charAt(at));
  }
}
