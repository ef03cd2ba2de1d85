package leadline.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leadline.fleet.Cells;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.history.ArrivedRow;
import leadline.history.CurrentRecords;
import leadline.history.History;
import leadline.history.ReadingNote;
import leadline.history.ShipQuestions;
import leadline.history.VesselHistory;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.problem.Checked;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

/** How often the ships of the invented fleet are asked something. */
class QuestionsToTheFleetTest {

  private static final int VESSELS = 40;

  private record Asked(long records, List<Problem> questions, List<ReadingNote> repairs) {
    Map<String, Long> byKind() {
      return questions.stream()
          .collect(Collectors.groupingBy(Problem::kind, TreeMap::new, Collectors.counting()));
    }
  }

  /** Of records without an error a question is a false alarm. */
  @Test
  void aCleanFleetIsAskedLessThanOneQuestionForAThousandRecordsAndNothingIsRepaired() {
    Asked asked = asked(SampleCatalogue.clean(6));
    assertTrue(asked.records() > 100_000, () -> asked.records() + " records");
    assertTrue(
        asked.questions().size() * 1000L < asked.records(),
        () -> asked.byKind() + " of " + asked.records());
    assertEquals(List.of(), asked.repairs());
    Set<String> never =
        Set.of(
            "hours-disagree",
            "ages-disagree",
            "total-after-gap",
            "machine-never-read",
            "overhauls-silent");
    assertTrue(Collections.disjoint(never, asked.byKind().keySet()), asked.byKind()::toString);
  }

  /** In the last four of the six years every position falls due, and most more than once. */
  @Test
  void aVesselThatSendsNoOverhaulsAfterTwoYearsIsAskedOnce() {
    FleetPlan plan = SampleCatalogue.clean(6);
    LocalDate stopped = plan.firstDay().plusYears(2);
    for (int vessel = 1; vessel <= 10; vessel++) {
      Asked asked =
          asked(
              plan,
              vessel,
              cells ->
                  cells.kind() != RecordKind.OVERHAULS
                      || cells.need(OverhaulLayout.DONE_ON).isBefore(stopped));
      List<Problem> silent =
          asked.questions().stream()
              .filter(question -> question.kind().equals("overhauls-silent"))
              .toList();
      assertEquals(1, silent.size(), "vessel " + vessel);
      Instant due = silent.get(0).dueSince().orElseThrow();
      assertTrue(
          asked.questions().stream()
              .filter(question -> question.kind().equals("long-past-interval"))
              .noneMatch(question -> question.dueSince().orElseThrow().isAfter(due)),
          "vessel " + vessel);
    }
  }

  /** One question for each of its parts at most, however many findings say nothing. */
  @Test
  void findingsThatLeaveTheOpeningOpenAreAskedAboutOnceAPart() {
    FleetPlan plan =
        SampleCatalogue.clean(6).withErrors(ErrorRates.NONE.with(RecordError.BLANK_FINDING, 1));
    long parts =
        plan.catalogue().components().stream().mapToLong(part -> part.parts().size()).sum();
    for (int vessel = 1; vessel <= 3; vessel++) {
      Map<String, Long> asked = asked(plan, vessel).byKind();
      assertEquals(Set.of("opened-unstated"), asked.keySet());
      assertTrue(asked.getOrDefault("opened-unstated", 0L) <= parts, asked::toString);
    }
  }

  private static Asked asked(FleetPlan plan) {
    List<Asked> each =
        IntStream.rangeClosed(1, VESSELS).mapToObj(vessel -> asked(plan, vessel)).toList();
    return new Asked(
        each.stream().mapToLong(Asked::records).sum(),
        each.stream().flatMap(asked -> asked.questions().stream()).toList(),
        each.stream().flatMap(asked -> asked.repairs().stream()).toList());
  }

  private static Asked asked(FleetPlan plan, int number) {
    return asked(plan, number, row -> true);
  }

  private static Asked asked(FleetPlan plan, int number, Predicate<Cells> sent) {
    SampleVessel vessel = new SampleFleet(plan, 20).vessel(number);
    List<ArrivedRow> rows = new ArrayList<>();
    for (RecordKind kind : RecordKind.values()) {
      FileDigest digest = FileDigest.of(kind.word().getBytes(StandardCharsets.UTF_8));
      for (SampleRow row : vessel.rows(kind)) {
        Origin origin = new Origin(kind.word() + ".csv", digest, rows.size() + 1L);
        if (sent.test(row.cells())) {
          rows.add(new ArrivedRow(1, new SourcedRow(row.cells(), origin)));
        }
      }
    }
    CurrentRecords current = CurrentRecords.of(vessel.character().vessel(), rows);
    Instant end = Days.endOf(plan.lastDay());
    Checked<VesselHistory, Problem> history =
        History.rebuild(current.forHistory(), plan.catalogue(), RunningHours.ofHours(24), end);
    return new Asked(
        rows.size(),
        ShipQuestions.about(current, history, plan.catalogue(), end, end),
        history.value().machines().stream()
            .flatMap(machine -> machine.hours().notes().stream())
            .toList());
  }
}
