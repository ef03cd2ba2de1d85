package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import leadline.fleet.Cells;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.Status;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold however rows come in, over sets of versions drawn at random. */
class ArrivalLawsTest {

  private static final Instant FIRST_REVISION = Instant.parse("2024-01-01T00:00:00Z");

  static LongStream drawings() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void dividedOverBatchesInAnyWayTheSameVersionsStand(long drawing) {
    List<Cells> versions = versions(new Random(drawing));
    Set<Cells> standing = standing(arrived(versions, new Random(drawing)));
    Collections.shuffle(versions, new Random(drawing + 1));
    assertEquals(standing, standing(arrived(versions, new Random(drawing + 2))));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void sendingAnythingAgainChangesNoVersionThatStands(long drawing) {
    Random random = new Random(drawing);
    List<ArrivedRow> rows = arrived(versions(random), random);
    List<ArrivedRow> again = new ArrayList<>(rows);
    rows.stream()
        .filter(row -> random.nextBoolean())
        .forEach(row -> again.add(new ArrivedRow(row.batch() + 100, row.row())));
    CurrentRecords before = CurrentRecords.of(Ship.VESSEL, rows);
    CurrentRecords after = CurrentRecords.of(Ship.VESSEL, again);
    assertEquals(before.rows(), after.rows());
    assertEquals(before.withdrawn(), after.withdrawn());
    Census.Count then = before.census().of(RecordKind.OVERHAULS);
    Census.Count now = after.census().of(RecordKind.OVERHAULS);
    assertEquals(again.size(), now.stored());
    assertEquals(
        new Census.Count(
            then.current(),
            then.duplicate() + again.size() - rows.size(),
            then.superseded(),
            then.withdrawn()),
        now);
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theOrderOfTheRowsChangesNothing(long drawing) {
    Random random = new Random(drawing);
    List<ArrivedRow> rows = arrived(versions(random), random);
    List<ArrivedRow> shuffled = new ArrayList<>(rows);
    Collections.shuffle(shuffled, random);
    assertEquals(CurrentRecords.of(Ship.VESSEL, rows), CurrentRecords.of(Ship.VESSEL, shuffled));
  }

  /** A few overhauls in a few versions, each revised at a moment of its own. */
  private static List<Cells> versions(Random random) {
    List<Cells> versions = new ArrayList<>();
    for (int revision = 0; revision < 40; revision++) {
      Cells.Builder version =
          Cells.of(RecordKind.OVERHAULS)
              .with(OverhaulLayout.VESSEL, Ship.VESSEL)
              .with(OverhaulLayout.OVERHAUL, "O" + random.nextInt(15))
              .with(OverhaulLayout.MACHINE, Ship.ENGINE)
              .with(OverhaulLayout.COMPONENT, "fuel-injector")
              .with(OverhaulLayout.DONE_ON, Ship.day(random.nextInt(1000)))
              .with(OverhaulLayout.REASON, Reason.PLANNED)
              .with(OverhaulLayout.REVISED_AT, FIRST_REVISION.plus(Duration.ofDays(revision)));
      if (random.nextInt(8) == 0) {
        version.with(OverhaulLayout.STATUS, Status.CANCELLED);
      }
      versions.add(version.build());
    }
    return versions;
  }

  private static List<ArrivedRow> arrived(List<Cells> versions, Random random) {
    List<ArrivedRow> rows = new ArrayList<>();
    for (Cells version : versions) {
      long batch = 1L + random.nextInt(5);
      FileDigest file = FileDigest.of(("file " + batch).getBytes(StandardCharsets.UTF_8));
      Origin origin = new Origin("overhauls.csv", file, rows.size() + 1L);
      rows.add(new ArrivedRow(batch, new SourcedRow(version, origin)));
    }
    return rows;
  }

  private static Set<Cells> standing(List<ArrivedRow> rows) {
    return CurrentRecords.of(Ship.VESSEL, rows).rows().stream()
        .map(SourcedRow::cells)
        .collect(Collectors.toSet());
  }
}
