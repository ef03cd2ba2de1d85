package leadline.summary;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What each export brought: one row a file, so that counts add up, with what is wrong in words. */
public final class IntakeLog {

  public static final TableColumn<String> BATCH =
      TableColumn.key("batch", "the batch that took the file in");
  public static final TableColumn<Instant> COMMITTED_AT =
      TableColumn.moment("committed_at", "when the batch was committed");
  public static final TableColumn<String> STANDING =
      TableColumn.text(
          "standing",
          "counts, or not any more: withdrawn, or read-again where a newer batch took its place");
  public static final TableColumn<String> FILE =
      TableColumn.key("file", "the export file's path below the inbox");
  public static final TableColumn<String> DIGEST =
      TableColumn.text("digest", "SHA-256 of the file's bytes, in hexadecimal digits");
  public static final TableColumn<Long> ROWS_READ =
      TableColumn.count("rows_read", "rows read: those stored and those refused");
  public static final TableColumn<Long> ROWS_STORED =
      TableColumn.count("rows_stored", "rows taken into the lake");
  public static final TableColumn<Long> ROWS_REFUSED =
      TableColumn.count("rows_refused", "rows that broke a rule, kept aside as they stood");
  public static final TableColumn<String> RULES_BROKEN =
      TableColumn.remark(
          "rules_broken",
          "each rule broken and by how many of the refused rows, the commonest first, such as"
              + " no-such-date 12, not-hours 3; a row may break several; empty where none is"
              + " refused");

  public static final TableSpec SPEC =
      TableSpec.of(
          "intake_log",
          "What each export file brought: rows read, stored and refused, and the rules broken.",
          List.of(
              SharedColumns.MONTH,
              SharedColumns.KNOWN_AT,
              BATCH,
              COMMITTED_AT,
              STANDING,
              FILE,
              DIGEST,
              ROWS_READ,
              ROWS_STORED,
              ROWS_REFUSED,
              RULES_BROKEN));

  private static final Comparator<IntakeFile> ORDER =
      Comparator.comparingLong(IntakeFile::batchNo)
          .thenComparing(IntakeFile::committedAt)
          .thenComparing(IntakeFile::name);

  private final Map<IntakeFile, Map<String, Long>> rowsByRule = new HashMap<>();

  IntakeLog(List<IntakeFile> files) {
    files.forEach(file -> rowsByRule.put(file, new TreeMap<>()));
  }

  void add(RefusedLine row) {
    Map<String, Long> rules =
        Optional.ofNullable(rowsByRule.get(row.file()))
            .orElseThrow(() -> new IllegalArgumentException("not a file of the log: " + row));
    row.broken().stream()
        .map(RefusedLine.BrokenRule::rule)
        .distinct()
        .forEach(rule -> rules.merge(rule, 1L, Long::sum));
  }

  /** By batch, the oldest first, then by file. */
  List<TableRow> rows(Edition edition) {
    return rowsByRule.keySet().stream().sorted(ORDER).map(file -> row(edition, file)).toList();
  }

  private TableRow row(Edition edition, IntakeFile file) {
    return edition
        .row(SPEC)
        .with(BATCH, file.batch())
        .with(COMMITTED_AT, file.committedAt())
        .with(STANDING, file.standing().word())
        .with(FILE, file.name())
        .with(DIGEST, file.digest().hex())
        .with(ROWS_READ, file.rowsRead())
        .with(ROWS_STORED, file.rowsStored())
        .with(ROWS_REFUSED, file.rowsRefused())
        .with(RULES_BROKEN, inWords(rowsByRule.getOrDefault(file, Map.of())))
        .build();
  }

  private static Optional<String> inWords(Map<String, Long> rules) {
    return Optional.of(
            rules.entrySet().stream()
                .sorted(
                    Map.Entry.<String, Long>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(rule -> rule.getKey() + " " + rule.getValue())
                .collect(Collectors.joining(", ")))
        .filter(words -> !words.isEmpty());
  }
}
