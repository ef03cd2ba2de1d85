package leadline.sample;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import leadline.fleet.Cells;
import leadline.fleet.Finding;
import leadline.fleet.MachineEntry;
import leadline.fleet.Overhaul;
import leadline.fleet.Reading;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.origin.FileDigest;
import leadline.origin.Origin;

/**
 * One vessel of the fleet: its records, and the truth behind them.
 *
 * @param rows as the vessel wrote them, by the kind of record
 * @param lives of every part that was in sight at some time of the records
 */
public record SampleVessel(
    VesselCharacter character,
    Map<RecordKind, List<SampleRow>> rows,
    List<TrueLife> lives,
    List<PlantedError> errors) {

  /** The first data line of a file; its header is line 1. */
  private static final int FIRST_LINE = 2;

  public List<SampleRow> rows(RecordKind kind) {
    return rows.getOrDefault(kind, List.of());
  }

  /** The records without a detour through files. Rows that no reader understands are left out. */
  public SampleRecords records() {
    return new SampleRecords(
        character.vessel(),
        each(RecordKind.MACHINES, MachineEntry::of),
        each(RecordKind.HOURS, Reading::of),
        each(RecordKind.OVERHAULS, Overhaul::of),
        each(RecordKind.FINDINGS, Finding::of));
  }

  private <T> List<T> each(RecordKind kind, Function<SourcedRow, T> reader) {
    String file = kind.word() + "_" + character.vessel() + ".csv";
    FileDigest digest = FileDigest.of(file.getBytes(StandardCharsets.UTF_8));
    Map<Cells, SourcedRow> once = new LinkedHashMap<>();
    List<SampleRow> all = rows(kind);
    for (int index = 0; index < all.size(); index++) {
      if (all.get(index).isUnderstood()) {
        Origin origin = new Origin(file, digest, FIRST_LINE + index);
        Cells cells = all.get(index).cells();
        once.putIfAbsent(cells, new SourcedRow(cells, origin));
      }
    }
    return once.values().stream().map(reader).toList();
  }
}
