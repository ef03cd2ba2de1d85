package leadline.fleet;

import java.time.Instant;
import leadline.quantity.RunningHours;

/** The columns of {@code hours}: readings of the machines' counters. */
public final class HoursLayout {

  private static final Layout.Builder ROW = new Layout.Builder();

  public static final Column<String> VESSEL =
      ROW.key("vessel", CellTypes.IDENTIFIER, "the vessel's identifier");
  public static final Column<String> MACHINE =
      ROW.key("machine", CellTypes.IDENTIFIER, "the machine's identifier on the vessel");
  public static final Column<Instant> READ_AT =
      ROW.key("read_at", CellTypes.MOMENT, "when it was read; a date alone is the end of that day");
  public static final Column<RunningHours> HOURS =
      ROW.required("hours", CellTypes.HOURS, "the reading, or the hours run, by kind");
  public static final Column<ReadingKind> KIND =
      ROW.key(
          "kind",
          CellTypes.word(ReadingKind.class),
          "counter: a meter reading; total: hours run since the reading before; replaced: first"
              + " reading of a new counter");
  public static final Column<String> REMARK =
      ROW.optional("remark", CellTypes.TEXT, "the ship's own words");

  static final Layout LAYOUT = ROW.sortedBy(VESSEL, MACHINE, READ_AT);

  private HoursLayout() {}
}
