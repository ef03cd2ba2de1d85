package leadline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import leadline.intake.RefusedRow;
import leadline.lake.LoadedFile;
import leadline.problem.FileFault;

/** What an ingest did. */
record IngestReport(StepOutcome.Ingested outcome) implements StepReport {

  private static final int REFUSED_ROWS_SHOWN = 10;

  @Override
  public List<String> words() {
    return List.of(done() + others() + ".");
  }

  private String done() {
    return outcome
        .batch()
        .map(
            batch ->
                String.format(
                    Locale.ROOT,
                    "%s %s of %s as batch %s%s: %s read, %,d stored, %,d refused",
                    outcome.inPlaceOf().isPresent() ? "Read again" : "Ingested",
                    Counted.of(outcome.files().size(), "file"),
                    outcome.inbox(),
                    batch,
                    outcome.inPlaceOf().map(before -> " in place of " + before).orElse(""),
                    Counted.of(outcome.rowsRead(), "row"),
                    outcome.rowsStored(),
                    outcome.rowsRefused()))
        .orElseGet(() -> "Nothing new in " + outcome.inbox());
  }

  private String others() {
    StringBuilder others = new StringBuilder();
    if (!outcome.alreadyLoaded().isEmpty()) {
      others
          .append("; already in the lake: ")
          .append(Counted.of(outcome.alreadyLoaded().size(), "file"));
    }
    if (!outcome.unusable().isEmpty()) {
      others.append("; unusable: ").append(Counted.of(unusableFiles(), "file"));
    }
    if (!outcome.ignored().isEmpty()) {
      others.append("; not CSV: ").append(Counted.of(outcome.ignored().size(), "file"));
    }
    return others.toString();
  }

  /** A file may be unusable for several reasons. */
  private long unusableFiles() {
    return outcome.unusable().stream().map(FileFault::file).distinct().count();
  }

  @Override
  public List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    outcome.unusable().stream().map(FileFault::sentence).forEach(warnings::add);
    outcome.unknownColumns().forEach((file, columns) -> warnings.add(notUsed(file, columns)));
    List<RefusedRow> shown = outcome.firstRefused().stream().limit(REFUSED_ROWS_SHOWN).toList();
    shown.stream().flatMap(row -> row.sentences().stream()).forEach(warnings::add);
    if (outcome.rowsRefused() > shown.size()) {
      warnings.add(
          "And %s: `leadline check --inbox %s` lists all."
              .formatted(
                  Counted.of(outcome.rowsRefused() - shown.size(), "more refused row"),
                  outcome.inbox()));
    }
    return warnings;
  }

  private static String notUsed(String file, SortedSet<String> columns) {
    return file
        + ", line 1: the plain layout has no column "
        + String.join(", ", columns)
        + "; the cells are kept and not used.";
  }

  @Override
  public Map<String, Object> fields() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("step", "ingest");
    outcome.batch().ifPresent(batch -> fields.put("batch", batch));
    outcome.inPlaceOf().ifPresent(before -> fields.put("in_place_of", before));
    fields.put("files", outcome.files().stream().map(LoadedFile::name).toList());
    fields.put("files_already_loaded", outcome.alreadyLoaded());
    fields.put("files_unusable", outcome.unusable().stream().map(FileFault::sentence).toList());
    fields.put("files_not_csv", outcome.ignored());
    fields.put("columns_not_used", outcome.unknownColumns());
    fields.put("rows_read", outcome.rowsRead());
    fields.put("rows_stored", outcome.rowsStored());
    fields.put("rows_refused", outcome.rowsRefused());
    return fields;
  }
}
