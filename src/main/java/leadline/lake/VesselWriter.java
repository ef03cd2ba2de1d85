package leadline.lake;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import leadline.history.MachineHistory;
import leadline.history.VesselHistory;
import leadline.problem.Problem;
import org.apache.iceberg.SerializableTable;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.Record;

/** Writes what was rebuilt of vessels to Parquet files, without committing them. */
public final class VesselWriter implements Serializable {

  private final Table lives;
  private final Table problems;
  private final String run;

  public VesselWriter(Lake lake, String run) {
    this.lives = SerializableTable.copyOf(lake.table(LakeTable.PART_LIVES, PartLives.SCHEMA));
    this.problems = SerializableTable.copyOf(lake.table(LakeTable.PROBLEMS, Problems.SCHEMA));
    this.run = run;
  }

  public VesselFiles write(List<VesselHistory> vessels, List<Problem> met) {
    return new VesselFiles(
        RowFiles.write(
            lives,
            vessels.stream()
                .flatMap(vessel -> vessel.machines().stream())
                .flatMap(machine -> machine.byModel().stream())
                .flatMap(this::livesOf)
                .iterator()),
        RowFiles.write(
            problems,
            met.stream()
                .map(problem -> Problems.encode(problems.schema(), run, problem))
                .iterator()));
  }

  private Stream<Record> livesOf(MachineHistory machine) {
    return machine.lives().stream()
        .map(life -> PartLives.encode(lives.schema(), run, machine.machine(), life));
  }
}
