package leadline.page;

import java.util.ArrayList;
import java.util.List;
import leadline.summary.IntakeLog;
import leadline.summary.TableRow;
import leadline.summary.UnmappedWords;

/** Vessels that report badly, and what to ask them. */
record Reporting(Tables tables) {

  Section section() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Prose(
            "A vessel with questions open is not a bad vessel: its figures are only less sure. One"
                + " that reports everything may look worse than one that reports little."));
    NamedTable.find(tables, "vessel_queries")
        .ifPresent(queries -> blocks.addAll(new Questions(queries).blocks()));
    blocks.add(new Block.Table(refused()));
    if (!tables.rows(UnmappedWords.SPEC).isEmpty()) {
      blocks.add(new Block.Table(words()));
    }
    return new Section("reporting", "Vessels that report badly, and what to ask them", blocks);
  }

  private TableView refused() {
    List<TableRow> files =
        tables.rows(IntakeLog.SPEC).stream()
            .filter(file -> file.need(IntakeLog.ROWS_REFUSED) > 0)
            .toList();
    return Tables.view(
        "refused-table",
        "Files with refused rows",
        IntakeLog.SPEC,
        files,
        file -> RowIds.REFUSED,
        Tables.columns(
            IntakeLog.SPEC,
            IntakeLog.FILE,
            IntakeLog.COMMITTED_AT,
            IntakeLog.ROWS_READ,
            IntakeLog.ROWS_STORED,
            IntakeLog.ROWS_REFUSED,
            IntakeLog.RULES_BROKEN));
  }

  private TableView words() {
    return Tables.view(
        "words-table",
        "Words that no list knows: to be mapped, or asked of the ship",
        UnmappedWords.SPEC,
        tables.rows(UnmappedWords.SPEC),
        Tables.columns(
            UnmappedWords.SPEC,
            UnmappedWords.WORD,
            UnmappedWords.RECORD,
            UnmappedWords.COLUMN,
            UnmappedWords.ROWS,
            UnmappedWords.VESSELS,
            UnmappedWords.FIRST_FILE,
            UnmappedWords.FIRST_LINE));
  }
}
