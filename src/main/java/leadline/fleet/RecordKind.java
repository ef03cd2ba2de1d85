package leadline.fleet;

import java.util.Arrays;
import java.util.Optional;

/** The six kinds of record of the plain layout. */
public enum RecordKind implements Written {
  MACHINES(MachineLayout.LAYOUT),
  HOURS(HoursLayout.LAYOUT),
  OVERHAULS(OverhaulLayout.LAYOUT),
  FINDINGS(FindingLayout.LAYOUT),
  STOCK(StockLayout.LAYOUT),
  MOVEMENTS(MovementLayout.LAYOUT);

  @SuppressWarnings("ImmutableEnumChecker") // a layout copies its lists and never changes
  private final Layout layout;

  RecordKind(Layout layout) {
    this.layout = layout;
  }

  public Layout layout() {
    return layout;
  }

  /** The kind whose word the file's name begins with, such as {@code overhauls_2023.csv}. */
  public static Optional<RecordKind> ofFileName(String fileName) {
    return Arrays.stream(values()).filter(kind -> fileName.startsWith(kind.word())).findFirst();
  }
}
