package leadline.golden;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import leadline.fleet.Catalogue;
import leadline.fleet.StoredRow;
import leadline.history.ArrivedRow;
import leadline.history.CurrentRecords;
import leadline.history.History;
import leadline.history.VesselHistory;
import leadline.intake.ExportFile;
import leadline.intake.ExportReader;
import leadline.intake.FileOutcome;
import leadline.intake.Inbox;
import leadline.intake.RefusedRow;
import leadline.intake.RowSink;
import leadline.origin.FileDigest;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import leadline.settings.CatalogueFile;
import leadline.settings.SharedFolder;

/** The golden fleet, read and rebuilt without an engine. */
final class GoldenFleet {

  static final Path HOME = Path.of(System.getProperty("leadline.home", "."));
  static final Path EXPORTS = HOME.resolve("sample-data/golden");
  static final SharedFolder SHARED = new SharedFolder(HOME.resolve("shared"));
  static final ReportMonth MONTH = ReportMonth.parse("2024-12");
  static final Instant READ_ON = Instant.parse("2025-02-01T06:00:00Z");
  static final List<String> INBOXES = List.of("1-first-exports", "2-later-exports", "3-resent");

  final Map<String, List<ArrivedRow>> rowsByVessel = new TreeMap<>();
  final List<RefusedRow> refused = new ArrayList<>();
  final Map<String, FileOutcome> outcomes = new TreeMap<>();

  private final Set<FileDigest> seen = new HashSet<>();

  /** Reads the first so many inboxes, each as a batch. */
  static GoldenFleet read(int inboxes) {
    GoldenFleet fleet = new GoldenFleet();
    for (int batch = 1; batch <= inboxes; batch++) {
      fleet.read(INBOXES.get(batch - 1), batch);
    }
    return fleet;
  }

  static Catalogue catalogue() {
    return CatalogueFile.read(SHARED.catalogue(), SHARED);
  }

  Map<String, CurrentRecords> current() {
    Map<String, CurrentRecords> current = new TreeMap<>();
    rowsByVessel.forEach((vessel, rows) -> current.put(vessel, CurrentRecords.of(vessel, rows)));
    return current;
  }

  List<Checked<VesselHistory, Problem>> histories() {
    return current().values().stream()
        .map(
            records ->
                History.rebuild(
                    records.forHistory(), catalogue(), RunningHours.ofHours(24), MONTH.end()))
        .toList();
  }

  private void read(String inbox, int batch) {
    Path folder = EXPORTS.resolve(inbox);
    try {
      for (ExportFile file : Inbox.list(folder).exports()) {
        if (seen.add(file.digest())) {
          byte[] bytes = Files.readAllBytes(folder.resolve(file.path()));
          try (InputStream in = new ByteArrayInputStream(bytes)) {
            outcomes.put(
                inbox + "/" + file.path(),
                ExportReader.read(in, file, catalogue(), READ_ON, new Rows(batch)));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private final class Rows implements RowSink {
    private final int batch;

    Rows(int batch) {
      this.batch = batch;
    }

    @Override
    public void stored(StoredRow row) {
      String vessel = row.cells().key().get(0).toString();
      rowsByVessel
          .computeIfAbsent(vessel, name -> new ArrayList<>())
          .add(new ArrivedRow(batch, row.row()));
    }

    @Override
    public void refused(RefusedRow row) {
      refused.add(row);
    }
  }
}
