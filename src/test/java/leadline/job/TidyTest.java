package leadline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadline.golden.Pipeline;
import leadline.lake.Lake;
import leadline.lake.Run;
import leadline.lake.Upkeep;
import leadline.publish.Boundary;
import leadline.quantity.ReportMonth;
import leadline.settings.Step;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Upkeep takes away what nothing needs, and changes no figure, whenever it is cut short. */
@Tag("long")
class TidyTest {

  private static final ReportMonth MONTH = ReportMonth.parse("2024-12");
  private static final Duration WEEK = Duration.ofDays(7);
  private static final Clock NEXT_WEEK =
      Clock.offset(Clock.systemUTC(), WEEK.plus(Duration.ofHours(1)));

  @TempDir Path folder;

  private Path lake;
  private int publications;

  @BeforeEach
  void aLakeWithTwoBatches() throws IOException {
    lake = folder.resolve("lake");
    ingest(inboxWithMachine());
    ingest(inboxWithBreakdown(1));
  }

  @Test
  void whatAnIngestThatDiedLeftIsTakenAwayAndTheMonthStaysAsItWas() throws IOException {
    compute(Optional.empty());
    SortedMap<String, String> before = published(newest());
    Path inbox = inboxWithBreakdown(2);
    assertThrows(
        Death.class,
        () -> at(Clock.systemUTC(), diesAt("overhauls appended")).run(new Step.Ingest(inbox)));

    StepOutcome.Tidied tidied = tidy(Clock.systemUTC(), keepingOne());
    assertEquals(1, tidied.tables().rowsDropped());
    compute(Optional.empty());
    assertEquals(before, published(newest()));

    ingest(inbox);
    StepOutcome.Computed next = compute(Optional.empty());
    assertEquals(2, next.run().census().get("overhauls.current"));
    assertEquals(0, next.run().census().getOrDefault("overhauls.duplicate", 0L));
    assertNotEquals(before, published(newest()));
  }

  @Test
  void whatAComputeThatDiedLeftIsTakenAway() throws IOException {
    compute(Optional.empty());
    SortedMap<String, String> before = published(newest());
    assertThrows(
        Death.class,
        () ->
            at(Clock.systemUTC(), diesAt("component_rates appended"))
                .run(new Step.Compute(MONTH, Optional.empty())));

    assertTrue(tidy(Clock.systemUTC(), keepingOne()).tables().rowsDropped() > 0);
    assertEquals(before, published(newest()));
    assertEquals(0, tidy(Clock.systemUTC(), keepingOne()).tables().rowsDropped());
  }

  @Test
  void supersededRunsGoAndTheNewestAndThePublishedStay() throws IOException {
    Path out = folder.resolve("reports");
    Run first = compute(Optional.empty()).run();
    at(Clock.systemUTC(), Boundary.UNWATCHED)
        .run(new Step.Publish(MONTH, out, new Step.RunChoice.Newest()));
    SortedMap<String, String> ofFirst = published(named(first));
    Run second = compute(Optional.empty()).run();
    Run third = compute(Optional.empty()).run();
    SortedMap<String, String> ofThird = published(named(third));

    Step.Tidy two = new Step.Tidy(WEEK, 2, List.of(out));
    assertEquals(List.of(), tidy(Clock.systemUTC(), two).offTheList());
    Step.Tidy one = new Step.Tidy(WEEK, 1, List.of(out));
    StepOutcome.Tidied within = tidy(Clock.systemUTC(), one);
    assertEquals(List.of(second.id()), within.offTheList().stream().map(Run::id).toList());
    assertEquals(List.of(first.id(), third.id()), listed());
    assertEquals(0, within.tables().rowsDropped());

    StepOutcome.Tidied later = tidy(NEXT_WEEK, one);
    long written = second.rows().values().stream().mapToLong(Long::longValue).sum();
    assertTrue(later.tables().rowsDropped() >= written, later::toString);
    assertEquals(ofFirst, published(named(first)));
    assertEquals(ofThird, published(named(third)));
    UnusableRequest gone = assertThrows(UnusableRequest.class, () -> published(named(second)));
    assertTrue(String.valueOf(gone.getMessage()).contains(third.id()), gone::toString);
  }

  @Test
  void runsOnWhatWasKnownAtAnotherTimeOrOfAnotherMonthAreNotSuperseded() throws IOException {
    Instant firstBatch = firstBatch();
    compute(Optional.of(firstBatch));
    SortedMap<String, String> then = published(new Step.RunChoice.KnownAt(firstBatch));
    compute(Optional.empty());
    at(Clock.systemUTC(), Boundary.UNWATCHED)
        .run(new Step.Compute(ReportMonth.parse("2024-11"), Optional.empty()));

    assertEquals(List.of(), tidy(NEXT_WEEK, keepingOne()).offTheList());
    assertEquals(3, listed().size());
    assertEquals(then, published(new Step.RunChoice.KnownAt(firstBatch)));
    compute(Optional.of(firstBatch));
    assertEquals(then, published(new Step.RunChoice.KnownAt(firstBatch)));
  }

  @Test
  void aFolderWithoutPublishedMonthsIsSaid() {
    UnusableRequest unusable =
        assertThrows(
            UnusableRequest.class,
            () -> tidy(Clock.systemUTC(), new Step.Tidy(WEEK, 1, List.of(folder))));
    assertTrue(String.valueOf(unusable.getMessage()).contains(folder.toString()));
  }

  /** Dies at the first point, then at the second, and so on, with something to do each time. */
  @Test
  void aTidyThatDiedLeavesAReadableLakeAndTheNextOneCompletes() throws IOException {
    compute(Optional.empty());
    SortedMap<String, String> digits = published(newest());
    Path inbox = inboxWithBreakdown(2);
    List<String> points = new ArrayList<>();
    while (true) {
      if (points.size() % 9 == 0) {
        compute(Optional.empty());
        assertThrows(
            Death.class,
            () -> at(Clock.systemUTC(), diesAt("overhauls appended")).run(new Step.Ingest(inbox)));
      }
      DiesAfter death = new DiesAfter(points.size());
      if (completes(death)) {
        break;
      }
      points.add(death.last);
      assertEquals(digits, published(newest()), death.last);
      if (points.size() % 9 == 0) {
        tidy(NEXT_WEEK, keepingOne());
        assertEquals(NOTHING_LEFT, tidy(NEXT_WEEK, keepingOne()), death.last);
        assertEquals(1, listed().size(), death.last);
      }
    }
    assertTrue(points.contains("superseded runs off the list"), points::toString);
    assertTrue(points.contains("records.overhauls rewritten"), points::toString);
    assertTrue(points.contains("results.runs snapshots expired"), points::toString);
    assertTrue(points.contains("results.runs stray files deleted"), points::toString);
    assertEquals(NOTHING_LEFT, tidy(NEXT_WEEK, keepingOne()));
    compute(Optional.empty());
    assertEquals(digits, published(newest()));
  }

  private static final StepOutcome.Tidied NOTHING_LEFT =
      new StepOutcome.Tidied(List.of(), new Upkeep.Rewritten(0, 0, 0), 0, 0);

  private boolean completes(Boundary death) {
    try {
      at(NEXT_WEEK, death).run(keepingOne());
      return true;
    } catch (Death died) {
      return false;
    }
  }

  private static Step.Tidy keepingOne() {
    return new Step.Tidy(WEEK, 1, List.of());
  }

  private StepOutcome.Tidied tidy(Clock clock, Step.Tidy step) {
    return (StepOutcome.Tidied) at(clock, Boundary.UNWATCHED).run(step).get(0);
  }

  private Pipeline at(Clock clock, Boundary boundary) {
    return new Pipeline(lake, boundary, clock);
  }

  private void ingest(Path inbox) {
    at(Clock.systemUTC(), Boundary.UNWATCHED).run(new Step.Ingest(inbox));
  }

  private StepOutcome.Computed compute(Optional<Instant> knownAt) {
    return (StepOutcome.Computed)
        at(Clock.systemUTC(), Boundary.UNWATCHED).run(new Step.Compute(MONTH, knownAt)).get(0);
  }

  private static Step.RunChoice newest() {
    return new Step.RunChoice.Newest();
  }

  private static Step.RunChoice named(Run run) {
    return new Step.RunChoice.Named(run.id());
  }

  /** The month's tables as a new folder has them. */
  private SortedMap<String, String> published(Step.RunChoice choice) throws IOException {
    Path out = folder.resolve("out" + ++publications);
    StepOutcome.Published done =
        (StepOutcome.Published)
            at(Clock.systemUTC(), Boundary.UNWATCHED)
                .run(new Step.Publish(MONTH, out, choice))
                .get(0);
    SortedMap<String, String> tables = new TreeMap<>();
    try (Stream<Path> files = Files.list(done.links().get(0).resolve("tables"))) {
      for (Path file : files.filter(file -> file.toString().endsWith(".csv")).toList()) {
        tables.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return tables;
  }

  private List<String> listed() {
    try (Lake open = Lake.open(lake)) {
      return open.runs().committed().stream().map(Run::id).toList();
    }
  }

  private Instant firstBatch() {
    try (Lake open = Lake.open(lake)) {
      return open.batches().committed().get(0).committedAt();
    }
  }

  private Path inboxWithMachine() throws IOException {
    Path inbox = Files.createDirectories(folder.resolve("inbox0"));
    Files.writeString(
        inbox.resolve("machines.csv"),
        """
        vessel,machine,kind,model,cylinders,places_per_cylinder
        plover,ME,main-engine,TWS-A,6,2
        """);
    Files.writeString(
        inbox.resolve("hours.csv"),
        """
        vessel,machine,read_at,hours,kind
        plover,ME,2022-12-31,0,counter
        plover,ME,2024-12-31,12000,counter
        """);
    return inbox;
  }

  private Path inboxWithBreakdown(int number) throws IOException {
    Path inbox = Files.createDirectories(folder.resolve("inbox" + number));
    Files.writeString(
        inbox.resolve("overhauls.csv"),
        """
        vessel,overhaul,machine,component,unit,place,done_on,reason
        plover,B%d,ME,fuel-injector,1,1,2023-%02d-15,breakdown
        """
            .formatted(number, number));
    return inbox;
  }

  private static Boundary diesAt(String point) {
    return reached -> {
      if (reached.equals(point)) {
        throw new Death();
      }
    };
  }

  private static final class DiesAfter implements Boundary {
    private int left;
    private String last = "";

    DiesAfter(int points) {
      this.left = points;
    }

    @Override
    public void reached(String name) {
      last = name;
      if (left-- == 0) {
        throw new Death();
      }
    }
  }

  private static final class Death extends Error {
    private static final long serialVersionUID = 1;
  }
}
