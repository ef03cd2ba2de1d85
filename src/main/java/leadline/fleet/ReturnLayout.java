package leadline.fleet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import leadline.quantity.RunningHours;

/**
 * The columns of {@code returns}: the sheet that a ship fills in. One row for each question, for
 * each overhaul that falls due, and for each part of such an overhaul.
 */
public final class ReturnLayout {

  private static final Layout.Builder ROW = new Layout.Builder();

  public static final Column<String> VESSEL =
      ROW.key("vessel", CellTypes.IDENTIFIER, "the vessel's identifier");
  public static final Column<String> SHEET_ROW =
      ROW.key(
          "row", CellTypes.IDENTIFIER, "the sheet's row: the question, or the overhaul and part");
  public static final Column<ReturnedRow> ABOUT =
      ROW.required("about", CellTypes.word(ReturnedRow.class), "what the row is for");
  public static final Column<String> SUBJECT =
      ROW.optional("subject", CellTypes.TEXT, "for people: which machine, component, place, part");
  public static final Column<String> QUESTION =
      ROW.optional("question", CellTypes.TEXT, "for people: what is asked, or what is due when");
  public static final Column<Answer> ANSWER =
      ROW.optional(
          "answer",
          CellTypes.word(Answer.class),
          "as-written: the record is right; corrected: as filled in here; cancelled: withdrawn");
  public static final Column<String> OVERHAUL =
      ROW.optional(
          "overhaul",
          CellTypes.IDENTIFIER,
          "the overhaul record; for one that falls due the ship may write its own");
  public static final Column<String> MACHINE = ROW.optionalLike(OverhaulLayout.MACHINE);
  public static final Column<String> COMPONENT = ROW.optionalLike(OverhaulLayout.COMPONENT);
  public static final Column<Long> UNIT = ROW.optionalLike(OverhaulLayout.UNIT);
  public static final Column<Long> PLACE = ROW.optionalLike(OverhaulLayout.PLACE);
  public static final Column<LocalDate> DONE_ON = ROW.optionalLike(OverhaulLayout.DONE_ON);
  public static final Column<RunningHours> MACHINE_HOURS =
      ROW.optionalLike(OverhaulLayout.MACHINE_HOURS);
  public static final Column<Reason> REASON = ROW.optionalLike(OverhaulLayout.REASON);
  public static final Column<String> REMOVED_SERIAL =
      ROW.optionalLike(OverhaulLayout.REMOVED_SERIAL);
  public static final Column<String> FITTED_SERIAL = ROW.optionalLike(OverhaulLayout.FITTED_SERIAL);
  public static final Column<TestResult> TEST_RESULT = ROW.optionalLike(OverhaulLayout.TEST_RESULT);
  public static final Column<String> PART =
      ROW.optional("part", new CellType.PartName(), "the part; empty in the overhaul's own row");
  public static final Column<Statement> OPENED = ROW.optionalLike(FindingLayout.OPENED);
  public static final Column<FoundWord> FOUND = ROW.optionalLike(FindingLayout.FOUND);
  public static final Column<Action> ACTION = ROW.optionalLike(FindingLayout.ACTION);
  public static final Column<Revealed> REVEALED = ROW.optionalLike(FindingLayout.REVEALED);
  public static final Column<RunningHours> HOURS_SINCE_NEW =
      ROW.optionalLike(FindingLayout.HOURS_SINCE_NEW);
  public static final Column<String> REMARK =
      ROW.optional("remark", CellTypes.TEXT, "the ship's own words");
  public static final Column<Instant> ANSWERED_ON =
      ROW.optional(
          "answered_on", CellTypes.MOMENT, "when the row was filled in; counts as revised_at");

  static final Layout LAYOUT = ROW.sortedBy(VESSEL, SHEET_ROW);

  /** Where an overhaul was done. A row about one that falls due comes with it. */
  public static final List<Fill<?>> POSITION =
      List.of(
          new Fill<>(MACHINE, OverhaulLayout.MACHINE),
          new Fill<>(COMPONENT, OverhaulLayout.COMPONENT),
          new Fill<>(UNIT, OverhaulLayout.UNIT),
          new Fill<>(PLACE, OverhaulLayout.PLACE));

  /** What else a row without a part says of its overhaul. */
  public static final List<Fill<?>> OF_OVERHAUL =
      List.of(
          new Fill<>(DONE_ON, OverhaulLayout.DONE_ON),
          new Fill<>(MACHINE_HOURS, OverhaulLayout.MACHINE_HOURS),
          new Fill<>(REASON, OverhaulLayout.REASON),
          new Fill<>(REMOVED_SERIAL, OverhaulLayout.REMOVED_SERIAL),
          new Fill<>(FITTED_SERIAL, OverhaulLayout.FITTED_SERIAL),
          new Fill<>(TEST_RESULT, OverhaulLayout.TEST_RESULT));

  /** What a row with a part says of its finding. */
  public static final List<Fill<?>> OF_FINDING =
      List.of(
          new Fill<>(OPENED, FindingLayout.OPENED),
          new Fill<>(FOUND, FindingLayout.FOUND),
          new Fill<>(ACTION, FindingLayout.ACTION),
          new Fill<>(REVEALED, FindingLayout.REVEALED),
          new Fill<>(HOURS_SINCE_NEW, FindingLayout.HOURS_SINCE_NEW));

  /** What goes into the overhaul's record beside what is filled in. */
  public static final List<Fill<?>> WITH_OVERHAUL =
      List.of(
          new Fill<>(REMARK, OverhaulLayout.REMARK),
          new Fill<>(ANSWERED_ON, OverhaulLayout.REVISED_AT));

  /** What goes into the finding's record beside what is filled in. */
  public static final List<Fill<?>> WITH_FINDING =
      List.of(
          new Fill<>(REMARK, FindingLayout.REMARK),
          new Fill<>(ANSWERED_ON, FindingLayout.REVISED_AT));

  private ReturnLayout() {}

  /** The cells that the ship may fill in of the row's record; none where it names no record. */
  public static List<Fill<?>> toFillIn(Cells sheetRow) {
    if (sheetRow.find(OVERHAUL).isEmpty()) {
      return List.of();
    } else if (sheetRow.find(PART).isPresent()) {
      return OF_FINDING;
    }
    return sheetRow.need(ABOUT) == ReturnedRow.DUE_OVERHAUL
        ? OF_OVERHAUL
        : Stream.concat(POSITION.stream(), OF_OVERHAUL.stream()).toList();
  }

  /** A cell of the sheet that the ship fills in, and the column of the record that it speaks of. */
  public record Fill<T>(Column<T> cell, Column<T> column) {

    public boolean isIn(Cells sheetRow) {
      return sheetRow.find(cell).isPresent();
    }

    /** Puts what the ship wrote into the record; an empty cell says nothing. */
    public void copy(Cells sheetRow, Cells.Builder record) {
      sheetRow.find(cell).ifPresent(value -> record.with(column, value));
    }
  }
}
