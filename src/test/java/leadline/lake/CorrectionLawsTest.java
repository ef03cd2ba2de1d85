package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import leadline.fleet.Cells;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.Status;
import leadline.history.ArrivedRow;
import leadline.history.CurrentRecords;
import leadline.history.Exports;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.settings.Source;
import org.junit.jupiter.api.Test;

/**
 * What must hold of batches taken in, taken back and read again in any order: thousands of small
 * lists of batches drawn at random, with corrections, cancelled records, changes and snapshots.
 */
class CorrectionLawsTest {

  private static final int DRAWINGS = 1_000;
  private static final String VESSEL = "hesper-lark";
  private static final Instant START = Instant.parse("2024-01-01T00:00:00Z");

  /** All but the places of the batches, which are one fewer where one never came. */
  private static List<Object> standing(CurrentRecords records) {
    return List.of(records.rows(), records.withdrawn(), records.census(), records.problems());
  }

  @Test
  void everyPastKnownAtRepeatsWhateverComesAfter() {
    for (long drawing = 0; drawing < DRAWINGS; drawing++) {
      Script script = new Script(drawing);
      Map<Instant, CurrentRecords> then = new TreeMap<>();
      for (int event = 0; event < 12; event++) {
        script.anyEvent();
        then.put(script.now, script.known(script.now));
      }
      assertEquals(12, then.size());
      then.forEach((at, known) -> assertEquals(known, script.known(at), "at " + at));
    }
  }

  @Test
  void aWithdrawnBatchLeavesNoTraceAsIfItHadNeverCome() {
    long traces = 0;
    for (long drawing = 0; drawing < DRAWINGS; drawing++) {
      Script script = new Script(drawing);
      for (int event = 0; event < 8; event++) {
        script.anyEvent();
      }
      script.ingest();
      Batch withdrawn = script.anyCounting();
      CurrentRecords before = script.known(script.now);
      Instant knownBefore = script.now;
      script.withdraw(withdrawn);

      assertEquals(
          standing(script.without(withdrawn).known(script.now)),
          standing(script.known(script.now)));
      assertEquals(before, script.known(knownBefore));
      traces += before.equals(script.known(script.now)) ? 0 : 1;
    }
    assertTrue(traces > DRAWINGS / 2, "most batches show: " + traces);
  }

  @Test
  void aBatchReadAgainAsItWasChangesNothing() {
    for (long drawing = 0; drawing < DRAWINGS; drawing++) {
      Script script = new Script(drawing);
      for (int event = 0; event < 8; event++) {
        script.anyEvent();
      }
      script.ingest();
      CurrentRecords before = script.known(script.now);
      script.again(script.anyCounting());

      assertEquals(before, script.known(script.now));
    }
  }

  /** A list of batches as it grows, and the rows that each brought. */
  private static final class Script {
    private final Random random;
    private final List<Batch> batches = new ArrayList<>();
    private final List<Withdrawal> withdrawals = new ArrayList<>();
    private final Map<String, List<SourcedRow>> rows = new HashMap<>();
    private Instant now = START;

    Script(long drawing) {
      this.random = new Random(drawing);
    }

    void anyEvent() {
      int event = random.nextInt(5);
      if (event < 3 || counting().isEmpty()) {
        ingest();
      } else if (event == 3) {
        withdraw(anyCounting());
      } else {
        mend(again(anyCounting()));
      }
    }

    void ingest() {
      Source source =
          new Source(
              random.nextInt(3) == 0 ? "yard" : "office",
              random.nextBoolean() ? Set.of(RecordKind.OVERHAULS) : Set.of(),
              Map.of());
      Set<RecordKind> unread = random.nextInt(4) == 0 ? Set.of(RecordKind.OVERHAULS) : Set.of();
      Batch batch = commit(new Delivery("inbox", source, unread, Optional.empty()));
      rows.put(batch.id(), drawnRows(batch.id()));
    }

    Batch again(Batch before) {
      Delivery delivery = before.delivery();
      Batch batch =
          commit(
              new Delivery(
                  "inbox", delivery.source(), delivery.unread(), Optional.of(before.id())));
      rows.put(batch.id(), rowsOf(before));
      return batch;
    }

    /** Reading again by a mended catalogue: a row that was refused is taken now. */
    private void mend(Batch batch) {
      List<SourcedRow> mended = new ArrayList<>(rowsOf(batch));
      mended.add(row(batch.id(), 1000));
      rows.put(batch.id(), mended);
    }

    void withdraw(Batch batch) {
      tick();
      withdrawals.add(new Withdrawal(batch.id(), now, "0"));
    }

    private Batch commit(Delivery delivery) {
      tick();
      long sequence = batches.size() + 1L;
      Batch batch = new Batch(sequence, "B" + sequence, now, "0", List.of(), delivery);
      batches.add(batch);
      return batch;
    }

    private void tick() {
      now = now.plus(Duration.ofHours(1));
    }

    Batch anyCounting() {
      List<Batch> counting = counting();
      return counting.get(random.nextInt(counting.size()));
    }

    private List<Batch> counting() {
      return knownAt(now).map(KnownAt::counting).orElse(List.of());
    }

    private Optional<KnownAt> knownAt(Instant moment) {
      return KnownAt.of(moment, batches, withdrawals);
    }

    /** What stands by what was known at a moment. */
    CurrentRecords known(Instant moment) {
      KnownAt known = knownAt(moment).orElseThrow();
      List<ArrivedRow> arrived = new ArrayList<>();
      Map<Long, Exports.Export> exports = new HashMap<>();
      Map<String, Long> places = known.placeOfBatch();
      for (Batch batch : known.counting()) {
        long place = places.getOrDefault(batch.id(), -1L);
        rowsOf(batch).forEach(row -> arrived.add(new ArrivedRow(place, row)));
        Delivery delivery = batch.delivery();
        exports.put(
            place,
            new Exports.Export(
                delivery.source().name(),
                delivery.source().snapshots(),
                delivery.unread(),
                List.of()));
      }
      return CurrentRecords.of(VESSEL, arrived, new Exports(exports));
    }

    /** The same without the batch and those whose place it took: they never came. */
    Script without(Batch batch) {
      Set<String> never = new HashSet<>();
      Optional<Batch> one = Optional.of(batch);
      while (one.isPresent()) {
        never.add(one.get().id());
        one = one.get().delivery().inPlaceOf().flatMap(id -> knownAt(now).orElseThrow().batch(id));
      }
      Script without = new Script(0);
      without.now = START;
      without.rows.putAll(rows);
      for (Batch other : batches) {
        if (!never.contains(other.id())) {
          without.batches.add(
              new Batch(
                  without.batches.size() + 1L,
                  other.id(),
                  other.committedAt(),
                  "0",
                  List.of(),
                  other.delivery()));
        }
      }
      withdrawals.stream()
          .filter(withdrawal -> !never.contains(withdrawal.batch()))
          .forEach(without.withdrawals::add);
      // something must be known, though every batch be gone
      without.withdrawals.add(new Withdrawal("none", START, "0"));
      return without;
    }

    private List<SourcedRow> rowsOf(Batch batch) {
      return rows.getOrDefault(batch.id(), List.of());
    }

    private List<SourcedRow> drawnRows(String batch) {
      List<SourcedRow> drawn = new ArrayList<>();
      int count = 1 + random.nextInt(6);
      for (int line = 1; line <= count; line++) {
        drawn.add(row(batch, line));
      }
      return drawn;
    }

    /** One of a few overhauls, in one of a few versions, of which some are equal. */
    private SourcedRow row(String batch, long line) {
      Cells.Builder cells =
          Cells.of(RecordKind.OVERHAULS)
              .with(OverhaulLayout.VESSEL, VESSEL)
              .with(OverhaulLayout.OVERHAUL, "O" + random.nextInt(6))
              .with(OverhaulLayout.MACHINE, "ME")
              .with(OverhaulLayout.COMPONENT, "fuel-injector")
              .with(OverhaulLayout.DONE_ON, LocalDate.of(2024, 1, 1 + random.nextInt(3)))
              .with(OverhaulLayout.REASON, Reason.PLANNED);
      if (random.nextBoolean()) {
        cells.with(OverhaulLayout.REVISED_AT, START.plus(Duration.ofDays(random.nextInt(3))));
      }
      if (random.nextInt(8) == 0) {
        cells.with(OverhaulLayout.STATUS, Status.CANCELLED);
      }
      FileDigest digest = FileDigest.of(batch.getBytes(StandardCharsets.UTF_8));
      return new SourcedRow(cells.build(), new Origin("overhauls.csv", digest, line));
    }
  }

  /** The laws above would hold of a list that never changes too. */
  @Test
  void theDrawnListsDiffer() {
    Script one = new Script(1);
    Script other = new Script(2);
    one.ingest();
    other.ingest();
    assertNotEquals(one.known(one.now), other.known(other.now));
  }
}
