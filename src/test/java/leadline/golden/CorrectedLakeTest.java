package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import leadline.settings.Step;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every published table of figures, after batches were taken back and read again. */
@Tag("long")
class CorrectedLakeTest {

  private static final Path FIRST = GoldenFleet.EXPORTS.resolve(GoldenFleet.INBOXES.get(0));
  private static final Path LATER = GoldenFleet.EXPORTS.resolve(GoldenFleet.INBOXES.get(1));
  private static final Path RESENT = GoldenFleet.EXPORTS.resolve(GoldenFleet.INBOXES.get(2));

  @TempDir Path folder;

  @Test
  void aWithdrawnBatchLeavesNoTraceInAnyTable() throws IOException {
    Pipeline withdrawn = new Pipeline(folder.resolve("withdrawn"));
    withdrawn.ingest(FIRST);
    String later = withdrawn.ingest(LATER).batch().orElseThrow();
    Map<String, String> before = published(withdrawn, "before");
    withdrawn.run(new Step.Withdraw(later));
    withdrawn.ingest(RESENT);
    Pipeline never = new Pipeline(folder.resolve("never"));
    never.ingest(FIRST);
    never.ingest(RESENT);

    Map<String, String> tables = published(withdrawn, "withdrawn out");
    assertEquals(published(never, "never out"), tables);
    assertNotEquals(before, tables);
  }

  /** The oldest batches, read again last, do not win over what came after them. */
  @Test
  void batchesReadAgainAsTheyWereChangeNoTable() throws IOException {
    Pipeline pipeline = new Pipeline(folder.resolve("again"));
    String first = pipeline.ingest(FIRST).batch().orElseThrow();
    String later = pipeline.ingest(LATER).batch().orElseThrow();
    pipeline.ingest(RESENT);
    Map<String, String> before = published(pipeline, "before");
    pipeline.run(
        new Step.ReadAgain(later, Optional.empty()), new Step.ReadAgain(first, Optional.empty()));

    assertEquals(before, published(pipeline, "after"));
  }

  private Map<String, String> published(Pipeline pipeline, String out) throws IOException {
    pipeline.compute();
    pipeline.publish(folder.resolve(out));
    return OrderAndSplittingTest.tables(folder.resolve(out));
  }
}
