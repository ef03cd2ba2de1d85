package leadline.summary;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The words of exports that a column of closed words, or of catalogue names, does not know. */
public final class UnmappedWords {

  public static final TableColumn<String> RECORD =
      TableColumn.key("record", "what the files hold, such as findings");
  public static final TableColumn<String> COLUMN =
      TableColumn.key("column_name", "the column of the plain layout, such as found");
  public static final TableColumn<String> WORD =
      TableColumn.key("word", "the word as the export has it, without blanks around it");
  public static final TableColumn<Long> ROWS =
      TableColumn.count("rows", "rows refused that have the word; some break other rules too");
  public static final TableColumn<Long> VESSELS =
      TableColumn.count("vessels", "vessels that these rows name");
  public static final TableColumn<String> FIRST_BATCH =
      TableColumn.text("first_batch", "the first batch that has the word");
  public static final TableColumn<String> FIRST_FILE =
      TableColumn.text("first_file", "the first file of that batch that has it, by name");
  public static final TableColumn<Long> FIRST_LINE =
      TableColumn.count("first_line", "the first line of that file that has it; the header is 1");
  public static final TableColumn<String> LAST_BATCH =
      TableColumn.text("last_batch", "the last batch that has the word");
  public static final TableColumn<String> LAST_FILE =
      TableColumn.text("last_file", "the last file of that batch that has it, by name");
  public static final TableColumn<Long> LAST_LINE =
      TableColumn.count("last_line", "the last line of that file that has it; the header is 1");

  public static final TableSpec SPEC =
      TableSpec.of(
          "unmapped_words",
          "Words of exports that their column does not know: to be mapped, or asked of the ship.",
          List.of(
              SharedColumns.MONTH,
              SharedColumns.KNOWN_AT,
              RECORD,
              COLUMN,
              WORD,
              ROWS,
              VESSELS,
              FIRST_BATCH,
              FIRST_FILE,
              FIRST_LINE,
              LAST_BATCH,
              LAST_FILE,
              LAST_LINE));

  private record Word(String record, String column, String text) {}

  private final Map<Word, Use> uses = new HashMap<>();

  void add(RefusedLine row) {
    for (RefusedLine.BrokenRule broken : row.broken()) {
      broken
          .unmappedWord()
          .map(text -> new Word(row.record(), broken.column(), text))
          .ifPresent(word -> uses.computeIfAbsent(word, first -> new Use(row)).add(row));
    }
  }

  /** By record and column, then the commonest first. */
  List<TableRow> rows(Edition edition) {
    return uses.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<Word, Use> use) -> use.getKey().record())
                .thenComparing(use -> use.getKey().column())
                .thenComparing(use -> use.getValue().rows, Comparator.reverseOrder())
                .thenComparing(use -> use.getKey().text()))
        .map(use -> row(edition, use.getKey(), use.getValue()))
        .toList();
  }

  private static TableRow row(Edition edition, Word word, Use use) {
    return edition
        .row(SPEC)
        .with(RECORD, word.record())
        .with(COLUMN, word.column())
        .with(WORD, word.text())
        .with(ROWS, use.rows)
        .with(VESSELS, (long) use.vessels.size())
        .with(FIRST_BATCH, use.first.file().batch())
        .with(FIRST_FILE, use.first.file().name())
        .with(FIRST_LINE, use.first.line())
        .with(LAST_BATCH, use.last.file().batch())
        .with(LAST_FILE, use.last.file().name())
        .with(LAST_LINE, use.last.line())
        .build();
  }

  /** Where a word stands. */
  private static final class Use {
    private static final Comparator<RefusedLine> ORDER =
        Comparator.comparing((RefusedLine row) -> row.file().batchNo())
            .thenComparing(row -> row.file().name())
            .thenComparing(RefusedLine::line);

    private final Set<String> vessels = new HashSet<>();
    private long rows;
    private RefusedLine first;
    private RefusedLine last;

    Use(RefusedLine row) {
      this.first = row;
      this.last = row;
    }

    void add(RefusedLine row) {
      rows++;
      Optional<String> vessel = row.vessel();
      vessel.ifPresent(vessels::add);
      first = ORDER.compare(row, first) < 0 ? row : first;
      last = ORDER.compare(row, last) > 0 ? row : last;
    }
  }
}
