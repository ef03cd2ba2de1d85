package leadline.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import leadline.fleet.StoredRow;
import leadline.history.ArrivedRow;
import leadline.history.CurrentRecords;
import leadline.history.MachineHistory;
import leadline.history.OverhaulInterval;
import leadline.history.PartLife;
import leadline.intake.ExportFile;
import leadline.intake.ExportReader;
import leadline.intake.Inbox;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The way through files and the way past them lead to the same lives, in any order of files. */
class FilesAndMemoryTest {

  private static final FleetPlan PLAN = SampleCatalogue.usual(2);
  private static final int VESSELS = 3;
  private static final Instant READ_ON = Instant.parse("2025-02-01T06:00:00Z");

  @TempDir Path folder;

  private record Told(List<PartLife> lives, List<OverhaulInterval> intervals, List<String> hours) {}

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theSameLivesComeOut(long seed) throws IOException {
    SampleFleet fleet = new SampleFleet(PLAN, seed);
    Map<String, Told> past = new TreeMap<>();
    try (FleetWriter writer = new PlainLayoutWriter(folder)) {
      for (int number = 1; number <= VESSELS; number++) {
        SampleVessel vessel = fleet.vessel(number);
        writer.write(vessel);
        past.put(vessel.character().vessel(), told(RebuiltVessel.of(PLAN, vessel)));
      }
    }
    assertFalse(past.values().stream().anyMatch(told -> told.lives().isEmpty()));
    assertEquals(past, through(new Random(seed)));
    assertEquals(past, through(new Random(-seed)));
  }

  private Map<String, Told> through(Random order) throws IOException {
    Map<String, List<ArrivedRow>> rows = new TreeMap<>();
    List<ExportFile> files = new ArrayList<>(Inbox.list(folder).exports());
    Collections.shuffle(files, order);
    for (ExportFile file : files) {
      byte[] bytes = Files.readAllBytes(folder.resolve(file.path()));
      ExportReader.read(
          new ByteArrayInputStream(bytes), file, PLAN.catalogue(), READ_ON, new Rows(rows));
    }
    Map<String, Told> told = new TreeMap<>();
    SampleVessel any = new SampleFleet(PLAN, 0).vessel(1);
    rows.forEach(
        (vessel, its) -> {
          Collections.shuffle(its, order);
          told.put(
              vessel,
              told(RebuiltVessel.of(PLAN, any, CurrentRecords.of(vessel, its).forHistory())));
        });
    return told;
  }

  private static Told told(RebuiltVessel rebuilt) {
    List<MachineHistory> machines = rebuilt.machines();
    return new Told(
        rebuilt.lives().toList(),
        machines.stream().flatMap(machine -> machine.intervals().stream()).toList(),
        machines.stream().map(machine -> rebuilt.ran(machine).toString()).toList());
  }

  private record Rows(Map<String, List<ArrivedRow>> byVessel) implements RowSink {
    @Override
    public void stored(StoredRow row) {
      String vessel = row.cells().key().get(0).toString();
      byVessel.computeIfAbsent(vessel, name -> new ArrayList<>()).add(new ArrivedRow(1, row.row()));
    }

    @Override
    public void refused(RefusedRow row) {}
  }
}
