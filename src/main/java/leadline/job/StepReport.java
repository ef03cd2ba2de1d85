package leadline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leadline.intake.RefusedRow;
import leadline.lake.LoadedFile;
import leadline.problem.FileFault;
import leadline.problem.RowFault;
import leadline.publish.JsonLine;

/** A step's outcome for people and for schedulers. */
public record StepReport(StepOutcome outcome) {

  private static final int REFUSED_ROWS_SHOWN = 10;

  /** All outcomes as one line of JSON. */
  public static String json(List<StepOutcome> outcomes) {
    return JsonLine.of(
        Map.of(
            "steps", outcomes.stream().map(outcome -> new StepReport(outcome).fields()).toList()));
  }

  /** What was done, for standard output. */
  public List<String> words() {
    if (outcome instanceof StepOutcome.Ingested ingested) {
      return words(ingested);
    } else if (outcome instanceof StepOutcome.Computed computed) {
      return words(computed);
    } else if (outcome instanceof StepOutcome.Published published) {
      return words(published);
    }
    throw unknown();
  }

  /** What someone should mend, for standard error. */
  public List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    if (outcome instanceof StepOutcome.Ingested ingested) {
      ingested.unusable().stream().map(FileFault::sentence).forEach(warnings::add);
      ingested
          .unknownColumns()
          .forEach(
              (file, columns) ->
                  warnings.add(
                      file
                          + ": the plain layout has no column "
                          + String.join(", ", columns)
                          + "; the cells are kept and not used."));
      refused(ingested, warnings);
    }
    return warnings;
  }

  private static void refused(StepOutcome.Ingested ingested, List<String> warnings) {
    ingested.firstRefused().stream()
        .limit(REFUSED_ROWS_SHOWN)
        .flatMap(row -> row.faults().stream().map(fault -> inWords(row, fault)))
        .forEach(warnings::add);
    if (ingested.rowsRefused() > REFUSED_ROWS_SHOWN) {
      warnings.add(
          "and "
              + (ingested.rowsRefused()
                  - Math.min(REFUSED_ROWS_SHOWN, ingested.firstRefused().size()))
              + " more refused rows: `leadline check --inbox "
              + ingested.inbox()
              + "` lists all.");
    }
  }

  private static String inWords(RefusedRow row, RowFault fault) {
    return row.origin()
        + (fault.column().isEmpty() ? "" : ", column " + fault.column())
        + ": "
        + fault.sentence();
  }

  private static List<String> words(StepOutcome.Ingested ingested) {
    if (ingested.batch().isEmpty()) {
      return List.of(
          "Nothing new in "
              + ingested.inbox()
              + " ("
              + ingested.alreadyLoaded().size()
              + " files already in the lake).");
    }
    return List.of(
        "Ingested %d files of %s as batch %s: %,d rows read, %,d stored, %,d refused%s."
            .formatted(
                ingested.files().size(),
                ingested.inbox(),
                ingested.batch().get(),
                ingested.rowsRead(),
                ingested.rowsStored(),
                ingested.rowsRefused(),
                ingested.alreadyLoaded().isEmpty()
                    ? ""
                    : "; %d files were in the lake already"
                        .formatted(ingested.alreadyLoaded().size())));
  }

  private static List<String> words(StepOutcome.Computed computed) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Computed %s as run %s on what was known at %s: %s."
            .formatted(
                computed.run().month(),
                computed.run().id(),
                computed.run().knownAt(),
                counted(computed.run().rows())));
    computed
        .run()
        .problems()
        .forEach(
            (kind, count) ->
                lines.add(
                    "  %d x %s, such as: %s"
                        .formatted(count, kind, computed.firstProblems().get(kind))));
    return lines;
  }

  private static List<String> words(StepOutcome.Published published) {
    List<String> lines = new ArrayList<>(published.words());
    lines.add("");
    published.links().forEach(link -> lines.add("Published: " + link));
    return lines;
  }

  private static String counted(Map<String, Long> counts) {
    return counts.entrySet().stream()
        .map(entry -> entry.getKey() + " " + entry.getValue() + " rows")
        .collect(Collectors.joining(", "));
  }

  private Map<String, Object> fields() {
    Map<String, Object> fields = new LinkedHashMap<>();
    if (outcome instanceof StepOutcome.Ingested ingested) {
      fields.put("step", "ingest");
      ingested.batch().ifPresent(batch -> fields.put("batch", batch));
      fields.put("files", ingested.files().stream().map(LoadedFile::name).toList());
      fields.put("files_already_loaded", ingested.alreadyLoaded());
      fields.put("files_unusable", ingested.unusable().stream().map(FileFault::sentence).toList());
      fields.put("rows_read", ingested.rowsRead());
      fields.put("rows_stored", ingested.rowsStored());
      fields.put("rows_refused", ingested.rowsRefused());
    } else if (outcome instanceof StepOutcome.Computed computed) {
      fields.put("step", "compute");
      fields.put("month", computed.run().month());
      fields.put("run", computed.run().id());
      fields.put("known_at", computed.run().knownAt().toString());
      fields.put("rows", computed.run().rows());
      fields.put("problems", computed.run().problems());
    } else if (outcome instanceof StepOutcome.Published published) {
      fields.put("step", "publish");
      fields.put("month", published.run().month());
      fields.put("run", published.run().id());
      fields.put("folders", published.links().stream().map(Object::toString).toList());
    } else {
      throw unknown();
    }
    return fields;
  }

  private IllegalStateException unknown() {
    return new IllegalStateException("an outcome of an unknown kind: " + outcome);
  }
}
