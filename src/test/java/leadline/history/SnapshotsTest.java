package leadline.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.MachineLayout;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.Reason;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.problem.Problem;
import org.junit.jupiter.api.Test;

/**
 * What a record that an export lacks means: nothing, or, in a full snapshot, that it is deleted.
 */
class SnapshotsTest {

  private static final Set<RecordKind> OVERHAULS = Set.of(RecordKind.OVERHAULS);
  private static final Instant MONDAY = Instant.parse("2024-03-04T12:00:00Z");
  private static final Instant TUESDAY = Instant.parse("2024-03-05T12:00:00Z");

  private final List<ArrivedRow> rows = new ArrayList<>();
  private final Map<Long, Exports.Export> exports = new HashMap<>();

  @Test
  void anAbsentRecordOfAnExportOfChangesStands() {
    changes(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    changes(2, "office").row(2, overhaul("O2"));

    assertStanding("O1", "O2");
  }

  /** O1 is deleted: of three rows one is current, one a duplicate, one withdrawn. */
  @Test
  void anAbsentRecordOfASnapshotIsDeleted() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    snapshot(2, "office").row(2, overhaul("O2"));

    assertStanding("O2");
    assertEquals(new Census.Count(1, 1, 0, 1), decided().census().of(RecordKind.OVERHAULS));
  }

  @Test
  void aDeletedOverhaulTakesItsFindingsAlong() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2")).row(1, finding("O1"));
    snapshot(2, "office").row(2, overhaul("O2"));

    assertEquals(List.of(), decided().forHistory().findings());
  }

  @Test
  void aDeletedRecordReappearsInALaterSnapshot() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    snapshot(2, "office").row(2, overhaul("O2"));
    snapshot(3, "office").row(3, overhaul("O1")).row(3, overhaul("O2"));

    assertStanding("O2", "O1"); // it arrived anew in batch 3
    assertEquals(new Census.Count(2, 3, 0, 0), decided().census().of(RecordKind.OVERHAULS));
  }

  /** Tuesday's version was deleted with the record: what came back is Monday's. */
  @Test
  void aRecordThatCameBackStandsAsItCameBack() {
    snapshot(1, "office").row(1, revised("O1", TUESDAY)).row(1, overhaul("O2"));
    snapshot(2, "office").row(2, overhaul("O2"));
    snapshot(3, "office").row(3, revised("O1", MONDAY)).row(3, overhaul("O2"));

    assertEquals(
        List.of(MONDAY),
        decided().rows().stream()
            .flatMap(row -> row.cells().find(OverhaulLayout.REVISED_AT).stream())
            .toList());
  }

  /** The export of changes in batch 3 makes it again. */
  @Test
  void aSnapshotDeletesOnlyWhatCameBeforeIt() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    snapshot(2, "office").row(2, overhaul("O2"));
    changes(3, "office").row(3, overhaul("O1"));

    assertStanding("O2", "O1");
  }

  @Test
  void whatAnotherSourceOrNoneSaysStands() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    changes(2, "yard").row(2, overhaul("O3"));
    row(3, overhaul("O4"));
    snapshot(4, "office").row(4, overhaul("O1"));

    assertStanding("O1", "O3", "O4");
  }

  /** The record that two sources have stands while one of them has it. */
  @Test
  void aRecordOfTwoSourcesStandsByTheOther() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    changes(2, "yard").row(2, overhaul("O1"));
    snapshot(3, "office").row(3, overhaul("O2"));

    assertStanding("O2", "O1");
  }

  /** Batch 2 is a snapshot of overhauls, but has none of this vessel. */
  @Test
  void aVesselThatTheSnapshotDoesNotMentionIsUntouched() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, finding("O1"));
    snapshot(2, "office").row(2, finding("O1"));

    assertStanding("O1");
  }

  @Test
  void aRefusedRowWhoseKeyIsReadableCountsAsPresent() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2")).row(1, overhaul("O3"));
    snapshot(2, "office", Set.of(), refused("O1")).row(2, overhaul("O2"));

    assertStanding("O1", "O2");
    assertEquals(List.of(), problems());
  }

  /** O1 may be the row that could not be read. */
  @Test
  void aRefusedRowWithoutAKeyKeepsEverythingOfItsVesselAndIsAskedAbout() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    snapshot(2, "office", Set.of(), refused("")).row(2, overhaul("O2"));

    assertStanding("O1", "O2");
    assertEquals(
        List.of(
            "The newest snapshot of overhauls by office could not be read in whole. Records that"
                + " it lacks and that were there before: 1, the first of them O1. None is taken as"
                + " deleted. Mend what the intake refused, and export the snapshot again."),
        problems());
  }

  @Test
  void aFileThatCouldNotBeReadKeepsEverythingOfItsKind() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    snapshot(2, "office", OVERHAULS).row(2, overhaul("O2"));

    assertStanding("O1", "O2");
    assertEquals(1, problems().size());
  }

  /** The question closes itself. */
  @Test
  void theNextWholeSnapshotDecides() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    snapshot(2, "office", OVERHAULS).row(2, overhaul("O2"));
    snapshot(3, "office").row(3, overhaul("O2"));

    assertStanding("O2");
    assertEquals(List.of(), problems());
  }

  /** What the whole snapshot of batch 2 had deleted, the broken one of batch 3 does not revive. */
  @Test
  void aBrokenSnapshotRevivesNothing() {
    snapshot(1, "office").row(1, overhaul("O1")).row(1, overhaul("O2"));
    snapshot(2, "office").row(2, overhaul("O2"));
    snapshot(3, "office", OVERHAULS).row(3, overhaul("O2"));

    assertStanding("O2");
    assertEquals(List.of(), problems());
  }

  /**
   * The register of batch 2 has the engine as it is now, re-rated. That does not delete what it was
   * before; the register of batch 3, which lacks it, deletes all: of its two rows one counts as
   * withdrawn, one as superseded.
   */
  @Test
  void aSnapshotWithARowOfAMachineEndsNoPeriodOfIt() {
    register(1).row(1, engine("ME")).row(1, engine("AE1"));
    register(2)
        .row(2, engine("ME", row -> row.with(MachineLayout.VALID_FROM, Ship.day(9)), reRated()))
        .row(2, engine("AE1"));

    assertEquals(3, decided().rows(RecordKind.MACHINES).size());
    assertEquals(new Census.Count(3, 1, 0, 0), decided().census().of(RecordKind.MACHINES));

    register(3).row(3, engine("AE1"));

    assertEquals(1, decided().rows(RecordKind.MACHINES).size());
    assertEquals(new Census.Count(1, 2, 1, 1), decided().census().of(RecordKind.MACHINES));
  }

  private SnapshotsTest register(long batch) {
    exports.put(
        batch, new Exports.Export("office", Set.of(RecordKind.MACHINES), Set.of(), List.of()));
    return this;
  }

  private static Ship.Fill reRated() {
    return row -> row.with(MachineLayout.MODEL, "QX-60-R");
  }

  private static Cells engine(String machine, Ship.Fill... cells) {
    return new Ship().machine(machine, cells).rows().get(0).cells();
  }

  private SnapshotsTest snapshot(
      long batch, String source, Set<RecordKind> unread, Exports.RefusedRecord... refused) {
    exports.put(batch, new Exports.Export(source, OVERHAULS, unread, List.of(refused)));
    return this;
  }

  private SnapshotsTest snapshot(long batch, String source) {
    return snapshot(batch, source, Set.of());
  }

  private SnapshotsTest changes(long batch, String source) {
    exports.put(batch, new Exports.Export(source, Set.of(), Set.of(), List.of()));
    return this;
  }

  private SnapshotsTest row(long batch, Cells cells) {
    FileDigest file = FileDigest.of(("file of batch " + batch).getBytes(StandardCharsets.UTF_8));
    rows.add(
        new ArrivedRow(batch, new SourcedRow(cells, new Origin("x.csv", file, rows.size() + 1L))));
    return this;
  }

  private static Exports.RefusedRecord refused(String key) {
    return new Exports.RefusedRecord(RecordKind.OVERHAULS, Ship.VESSEL, key);
  }

  private static Cells overhaul(String overhaul) {
    return builder(overhaul).build();
  }

  private static Cells revised(String overhaul, Instant at) {
    return builder(overhaul).with(OverhaulLayout.REVISED_AT, at).build();
  }

  private static Cells.Builder builder(String overhaul) {
    return Cells.of(RecordKind.OVERHAULS)
        .with(OverhaulLayout.VESSEL, Ship.VESSEL)
        .with(OverhaulLayout.OVERHAUL, overhaul)
        .with(OverhaulLayout.MACHINE, Ship.ENGINE)
        .with(OverhaulLayout.COMPONENT, "fuel-injector")
        .with(OverhaulLayout.DONE_ON, Ship.day(100))
        .with(OverhaulLayout.REASON, Reason.PLANNED);
  }

  private static Cells finding(String overhaul) {
    return Cells.of(RecordKind.FINDINGS)
        .with(FindingLayout.VESSEL, Ship.VESSEL)
        .with(FindingLayout.OVERHAUL, overhaul)
        .with(FindingLayout.PART, "nozzle")
        .build();
  }

  private CurrentRecords decided() {
    return CurrentRecords.of(Ship.VESSEL, rows, new Exports(exports));
  }

  private void assertStanding(String... overhauls) {
    assertEquals(
        List.of(overhauls),
        decided().rows(RecordKind.OVERHAULS).stream()
            .map(row -> row.cells().need(OverhaulLayout.OVERHAUL))
            .toList());
  }

  private List<String> problems() {
    return decided().problems().stream().map(Problem::sentence).toList();
  }
}
