package leadline.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.lake.Run;

/** What upkeep did. */
record TidyReport(StepOutcome.Tidied outcome) implements StepReport {

  @Override
  public List<String> words() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Tidied: %s of unfinished batches and of runs off the list dropped; %s made into %,d; %s expired; %s deleted."
            .formatted(
                Counted.of(outcome.tables().rowsDropped(), "row"),
                Counted.of(outcome.tables().filesBefore(), "data file"),
                outcome.tables().filesAfter(),
                Counted.of(outcome.snapshotsExpired(), "snapshot"),
                Counted.of(outcome.filesDeleted(), "file")));
    outcome
        .offTheList()
        .forEach(
            run ->
                lines.add(
                    "  superseded and off the list: run %s of %s on what was known at %s"
                        .formatted(run.id(), run.month(), run.knownAt())));
    return lines;
  }

  @Override
  public Map<String, Object> fields() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("step", "tidy");
    fields.put("runs_off_the_list", outcome.offTheList().stream().map(Run::id).toList());
    fields.put("rows_dropped", outcome.tables().rowsDropped());
    fields.put("data_files_replaced", outcome.tables().filesBefore());
    fields.put("data_files_written", outcome.tables().filesAfter());
    fields.put("snapshots_expired", outcome.snapshotsExpired());
    fields.put("files_deleted", outcome.filesDeleted());
    return fields;
  }
}
