package leadline.fleet;

import java.time.Instant;
import leadline.quantity.RunningHours;

/** The columns of {@code findings}: one part at one overhaul, before and after the work. */
public final class FindingLayout {

  private static final Layout.Builder ROW = new Layout.Builder();

  public static final Column<String> VESSEL =
      ROW.key("vessel", CellTypes.IDENTIFIER, "the vessel's identifier");
  public static final Column<String> OVERHAUL =
      ROW.key("overhaul", CellTypes.IDENTIFIER, "the overhaul record it belongs to");
  public static final Column<String> PART =
      ROW.key("part", new CellType.PartName(), "the part, by the catalogue");
  public static final Column<Long> MODE_NO =
      ROW.keyOr(
          1L, "mode_no", new CellType.Whole(1, 99), "which of several conditions of the part");
  public static final Column<Statement> OPENED =
      ROW.optional("opened", CellTypes.word(Statement.class), "was it opened; empty is not stated");
  public static final Column<FoundWord> FOUND =
      ROW.optional("found", CellTypes.word(FoundWord.class), "condition before any work");
  public static final Column<Action> ACTION =
      ROW.optional("action", CellTypes.word(Action.class), "what was done");
  public static final Column<Revealed> REVEALED =
      ROW.optional("revealed", CellTypes.word(Revealed.class), "how a failure came to light");
  public static final Column<RunningHours> HOURS_SINCE_NEW =
      ROW.optional("hours_since_new", CellTypes.HOURS, "the part's age at the removal");
  public static final Column<Long> FITTED_COUNT =
      ROW.optional("n_fitted", CellTypes.QUANTITY, "pieces fitted");
  public static final Column<Long> FAILED_COUNT =
      ROW.optional("n_failed", CellTypes.QUANTITY, "pieces found failed");
  public static final Column<String> PART_NUMBER =
      ROW.optional("part_number", CellTypes.TEXT, "the maker's part number");
  public static final Column<String> MAKER =
      ROW.optional("maker", CellTypes.TEXT, "who made the part");
  public static final Column<String> BATCH_NO =
      ROW.optional("batch_no", CellTypes.TEXT, "the part's production batch");
  public static final Column<String> REMARK =
      ROW.optional("remark", CellTypes.TEXT, "the ship's own words");
  public static final Column<Status> STATUS =
      ROW.optional("status", CellTypes.word(Status.class), "cancelled withdraws the record");
  public static final Column<Instant> REVISED_AT =
      ROW.optional("revised_at", CellTypes.MOMENT, "when this version was written");

  static final Layout LAYOUT = ROW.sortedBy(VESSEL, OVERHAUL, PART);

  private FindingLayout() {}
}
