package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;
import leadline.history.Census;
import leadline.history.CurrentRecords;
import leadline.history.HourSeries;
import leadline.history.MachineHistory;
import leadline.history.PartLife;
import leadline.history.Visit;
import leadline.intake.FileOutcome;
import leadline.problem.Problem;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/**
 * The golden fleet's records, hours, lives and problems against the table written by hand in {@code
 * src/test/resources/golden}, whose README says how each figure was worked out.
 */
class GoldenRecordsTest {

  private static final GoldenFleet FLEET = GoldenFleet.read(3);

  @Test
  void rowsReadStoredAndRefusedOfEachFile() {
    List<String> expected = new ArrayList<>();
    for (Map<String, String> row : Expected.rows("batches")) {
      if (!row.get("rows_read").equals("0")) {
        expected.add(
            row.get("inbox")
                + "/"
                + row.get("file")
                + " "
                + row.get("rows_read")
                + " "
                + row.get("stored")
                + " "
                + row.get("refused"));
      }
    }
    List<String> actual = new ArrayList<>();
    FLEET.outcomes.forEach(
        (file, outcome) -> {
          FileOutcome.FileTally tally = (FileOutcome.FileTally) outcome;
          actual.add(file + " " + tally.rowsRead() + " " + tally.stored() + " " + tally.refused());
        });
    assertSame(expected, actual);
  }

  @Test
  void everyRefusedRowWithItsLineAndColumn() {
    List<String> expected =
        Expected.rows("refused").stream()
            .map(row -> row.get("file") + " " + row.get("line") + " " + row.get("column"))
            .toList();
    List<String> actual =
        FLEET.refused.stream()
            .flatMap(
                row ->
                    row.faults().stream()
                        .map(
                            fault ->
                                row.origin().file()
                                    + " "
                                    + row.origin().line()
                                    + " "
                                    + fault.column()))
            .toList();
    assertSame(expected, actual);
  }

  @Test
  void currentDuplicateSupersededAndWithdrawnAfterEachBatch() {
    List<String> expected = new ArrayList<>();
    for (Map<String, String> row : Expected.rows("record_status")) {
      expected.add(
          row.get("known_at")
              + " "
              + row.get("kind")
              + " "
              + row.get("current")
              + " "
              + row.get("duplicate")
              + " "
              + row.get("superseded")
              + " "
              + row.get("withdrawn"));
    }
    List<String> actual = new ArrayList<>();
    for (int batch = 1; batch <= GoldenFleet.INBOXES.size(); batch++) {
      Census census =
          GoldenFleet.read(batch).current().values().stream()
              .map(CurrentRecords::census)
              .reduce(Census.EMPTY, Census::plus);
      for (RecordKind kind : RecordKind.values()) {
        Census.Count count = census.of(kind);
        actual.add(
            GoldenFleet.INBOXES.get(batch - 1)
                + " "
                + kind.word()
                + " "
                + count.current()
                + " "
                + count.duplicate()
                + " "
                + count.superseded()
                + " "
                + count.withdrawn());
      }
    }
    assertSame(expected, actual);
  }

  @Test
  void observedFromAndTo() {
    List<String> expected = new ArrayList<>();
    for (Map<String, String> row : Expected.rows("observed")) {
      expected.add(
          row.get("vessel")
              + " "
              + row.get("start")
              + " "
              + row.get("end")
              + " "
              + hours(row.get("start_hours"))
              + " "
              + hours(row.get("end_hours")));
    }
    List<String> actual = new ArrayList<>();
    for (MachineHistory machine : machines()) {
      Period observed = machine.observed().orElseThrow();
      actual.add(
          machine.machine().id().vessel()
              + " "
              + observed.start()
              + " "
              + observed.end()
              + " "
              + machine.hours().at(observed.start()).orElseThrow().hours()
              + " "
              + machine.hours().at(observed.end()).orElseThrow().hours());
    }
    assertSame(expected, actual);
  }

  @Test
  void hoursWithBoundsAtEveryMomentThatMatters() {
    for (Map<String, String> row : Expected.rows("machine_hours")) {
      HourSeries.Bounded hours =
          machine(row.get("vessel")).hours().at(Instant.parse(row.get("at"))).orElseThrow();
      assertEquals(
          List.of(hours(row.get("hours")), hours(row.get("lower")), hours(row.get("upper"))),
          List.of(hours.hours(), hours.lower(), hours.upper()),
          row::toString);
    }
  }

  @Test
  void hoursOfOverhaulsThatStateThem() {
    for (Map<String, String> row : Expected.rows("overhaul_hours")) {
      Visit visit =
          machine(row.get("vessel")).visits().stream()
              .filter(one -> one.overhaul().id().overhaul().equals(row.get("overhaul")))
              .findFirst()
              .orElseThrow();
      assertEquals(hours(row.get("used_h")), visit.machineHours(), row::toString);
    }
  }

  @Test
  void everyLife() {
    List<Map<String, String>> rows = Expected.rows("lives");
    assertTrue(rows.size() > 400, "the hand's table holds some 450 lives");
    TreeSet<String> items = new TreeSet<>();
    List<String> expected = new ArrayList<>();
    for (Map<String, String> row : rows) {
      items.add(row.get("vessel") + " " + row.get("component") + " " + row.get("item"));
      expected.add(
          String.join(
              " ",
              row.get("vessel"),
              row.get("component"),
              row.get("item"),
              row.get("part"),
              row.get("life_no"),
              row.get("origin"),
              row.get("entry_h").isEmpty() ? "-" : hours(row.get("entry_h")).toString(),
              row.get("observation"),
              row.get("lower_h").isEmpty() ? "-" : hours(row.get("lower_h")).toString(),
              row.get("upper_h").isEmpty() ? "-" : hours(row.get("upper_h")).toString(),
              row.get("ended_by")));
    }
    List<String> actual = new ArrayList<>();
    for (MachineHistory machine : machines()) {
      for (PartLife life : machine.lives()) {
        String item =
            machine.machine().id().vessel()
                + " "
                + life.component().name()
                + " "
                + life.item().label();
        if (items.contains(item)) {
          actual.add(item + " " + inWords(life));
        }
      }
    }
    assertSame(expected, actual);
  }

  private static String inWords(PartLife life) {
    boolean aged = life.observation().workedAt().isPresent();
    return String.join(
        " ",
        life.part().name(),
        Integer.toString(life.number()),
        life.origin().word(),
        aged ? life.entry().toString() : "-",
        life.observation().word(),
        life.observation().workedAt().map(RunningHours::toString).orElse("-"),
        life.observation().failedBy().map(RunningHours::toString).orElse("-"),
        ((Written) life.endedBy()).word());
  }

  @Test
  void everyProblem() {
    List<String> expected =
        Expected.rows("problems").stream()
            .map(row -> row.get("kind") + " " + row.get("vessel") + " " + row.get("record"))
            .toList();
    List<String> actual =
        FLEET.histories().stream()
            .flatMap(history -> history.problems().stream())
            .map(GoldenRecordsTest::inWords)
            .toList();
    assertSame(expected, actual);
  }

  private static String inWords(Problem problem) {
    return problem.getClass().getSimpleName() + " " + problem.vessel() + " " + problem.record();
  }

  private static List<MachineHistory> machines() {
    return FLEET.histories().stream()
        .flatMap(history -> history.value().machines().stream())
        .toList();
  }

  private static MachineHistory machine(String vessel) {
    return machines().stream()
        .filter(machine -> machine.machine().id().vessel().equals(vessel))
        .findFirst()
        .orElseThrow();
  }

  private static RunningHours hours(String text) {
    return RunningHours.ofHours(new java.math.BigDecimal(text));
  }

  private static void assertSame(List<String> expected, List<String> actual) {
    assertEquals(
        String.join("\n", new java.util.TreeSet<>(expected)),
        String.join("\n", new java.util.TreeSet<>(actual)));
    assertEquals(expected.size(), actual.size());
  }
}
