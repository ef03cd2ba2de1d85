package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.HoursLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.ReadingKind;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.history.ArrivedRow;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

class RowBlockTest {

  private static final FileDigest ONE = FileDigest.of(new byte[] {1});
  private static final FileDigest OTHER = FileDigest.of(new byte[] {2});

  private static final List<ArrivedRow> ROWS =
      List.of(
          row(1, ONE, 2, reading("2024-01-31T12:00:00.5Z", 10_005)),
          row(1, ONE, 3, reading("2024-02-29T12:00:00Z", 0)),
          row(2, OTHER, 2, overhaul("r".repeat(70_000))),
          row(3, ONE, 2, finding()));

  @Test
  void everyCellAndOriginComesBackAfterAJourneyBetweenTasks()
      throws IOException, ClassNotFoundException {
    RowBlock.Writer writer = new RowBlock.Writer();
    ROWS.forEach(row -> writer.add(row.row().cells(), row.arrival()));
    List<ArrivedRow> back = new ArrayList<>();
    sent(writer.finish()).forEach(back::add);
    assertEquals(ROWS, back);
  }

  private static RowBlock sent(RowBlock block) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(block);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (RowBlock) in.readObject();
    }
  }

  private static ArrivedRow row(long batch, FileDigest digest, long line, Cells cells) {
    return new ArrivedRow(batch, new SourcedRow(cells, new Origin("sub/é.csv", digest, line)));
  }

  private static Cells reading(String at, long tenths) {
    return Cells.of(RecordKind.HOURS)
        .with(HoursLayout.VESSEL, "plover")
        .with(HoursLayout.MACHINE, "ME")
        .with(HoursLayout.READ_AT, Instant.parse(at))
        .with(HoursLayout.HOURS, RunningHours.ofTenths(tenths))
        .with(HoursLayout.KIND, ReadingKind.TOTAL)
        .build();
  }

  private static Cells overhaul(String remark) {
    return Cells.of(RecordKind.OVERHAULS)
        .with(OverhaulLayout.VESSEL, "plover")
        .with(OverhaulLayout.OVERHAUL, "Ä-1")
        .with(OverhaulLayout.MACHINE, "ME")
        .with(OverhaulLayout.COMPONENT, "fuel-injector")
        .with(OverhaulLayout.UNIT, 6L)
        .with(OverhaulLayout.DONE_ON, LocalDate.of(1969, 12, 31))
        .with(OverhaulLayout.REASON, Reason.TEST_ONLY)
        .with(OverhaulLayout.OPENING_PRESSURE, 372.5)
        .with(OverhaulLayout.REMARK, remark)
        .build();
  }

  private static Cells finding() {
    return Cells.of(RecordKind.FINDINGS)
        .with(FindingLayout.VESSEL, "plover")
        .with(FindingLayout.OVERHAUL, "Ä-1")
        .with(FindingLayout.PART, "nrv-spring")
        .with(FindingLayout.FOUND, FoundWord.MISSING)
        .build();
  }
}
