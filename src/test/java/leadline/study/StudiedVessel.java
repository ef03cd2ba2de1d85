package leadline.study;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Reading;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.history.ArrivedRow;
import leadline.history.CurrentRecords;
import leadline.history.History;
import leadline.history.MachineHistory;
import leadline.history.ReadingNote;
import leadline.history.ShipQuestions;
import leadline.history.VesselHistory;
import leadline.history.Visit;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import leadline.sample.FleetPlan;
import leadline.sample.SampleRow;
import leadline.sample.SampleVessel;

/** An invented vessel, what its records were read as, and what it is asked. */
record StudiedVessel(
    SampleVessel sample, List<Reading> readings, VesselHistory history, List<Problem> questions) {

  static final RunningHours TOLERANCE = RunningHours.ofHours(24);

  static StudiedVessel of(SampleVessel sample, FleetPlan plan, ReportMonth month) {
    CurrentRecords current = CurrentRecords.of(sample.character().vessel(), arrived(sample));
    Checked<VesselHistory, Problem> history =
        History.rebuild(current.forHistory(), plan.catalogue(), TOLERANCE, month.end());
    return new StudiedVessel(
        sample,
        current.forHistory().readings(),
        history.value(),
        ShipQuestions.about(current, history, plan.catalogue(), month.end(), month.end()));
  }

  /** Rows that no reader understands are refused, and named by {@code ingest}. */
  private static List<ArrivedRow> arrived(SampleVessel sample) {
    List<ArrivedRow> rows = new ArrayList<>();
    for (RecordKind kind : RecordKind.values()) {
      FileDigest digest = FileDigest.of(kind.word().getBytes(StandardCharsets.UTF_8));
      for (SampleRow row : sample.rows(kind)) {
        if (row.ownWords().isEmpty()) {
          Origin origin = new Origin(kind.word() + ".csv", digest, rows.size() + 1L);
          rows.add(new ArrivedRow(1, new SourcedRow(row.cells(), origin)));
        }
      }
    }
    return rows;
  }

  MachineHistory machine(String name) {
    return history.machines().stream()
        .filter(machine -> machine.machine().id().machine().equals(name))
        .findFirst()
        .orElseThrow();
  }

  Optional<Visit> visit(String overhaul) {
    return history.machines().stream()
        .flatMap(machine -> machine.visits().stream())
        .filter(visit -> visit.overhaul().id().overhaul().equals(overhaul))
        .findFirst();
  }

  /** The reading as the list of planted errors names it. */
  Optional<Reading> reading(String record) {
    return readings.stream().filter(reading -> name(reading).equals(record)).findFirst();
  }

  static String name(Reading reading) {
    return reading.machine().machine() + " " + Days.asWritten(reading.at());
  }

  List<ReadingNote> notes(String machine) {
    return machine(machine).hours().notes();
  }
}
