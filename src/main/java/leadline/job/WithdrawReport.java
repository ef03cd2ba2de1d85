package leadline.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.lake.LoadedFile;

/** What a withdrawal did. */
record WithdrawReport(StepOutcome.Withdrawn outcome) implements StepReport {

  @Override
  public List<String> words() {
    return List.of(
        "Withdrew batch %s: %s of %s count no more. Its files may be ingested again."
            .formatted(
                outcome.batch().id(),
                Counted.of(rows(), "stored row"),
                Counted.of(outcome.batch().files().size(), "file")));
  }

  private long rows() {
    return outcome.batch().files().stream().mapToLong(LoadedFile::rowsStored).sum();
  }

  @Override
  public Map<String, Object> fields() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("step", "withdraw");
    fields.put("batch", outcome.batch().id());
    fields.put("withdrawn_at", outcome.withdrawal().at().toString());
    fields.put("files", outcome.batch().files().stream().map(LoadedFile::name).toList());
    fields.put("rows_stored", rows());
    return fields;
  }
}
