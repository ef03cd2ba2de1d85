package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a source says of its exports in {@code source.json}, through the whole pipeline. */
@Tag("long")
class SourcesTest {

  private static final String SNAPSHOTS =
      """
      { "source": "north-office", "exports_by_kind": { "overhauls": "snapshot" } }
      """;
  private static final String HEADER =
      "vessel,overhaul,machine,component,unit,place,done_on,reason\n";

  @TempDir Path folder;

  private PublishedMonth month;

  @BeforeEach
  void twoBreakdownsInASnapshot() {
    month = new PublishedMonth(Program.forScheduler(), folder, "2024-03");
    month.ingest(
        SmallInbox.in(folder.resolve("1"))
            .with("source.json", SNAPSHOTS)
            .with("overhauls_a.csv", HEADER + breakdown("O1", 1) + breakdown("O2", 2))
            .with("overhauls_b.csv", HEADER + breakdown("O3", 3)));
  }

  /**
   * The second inbox has O1 and O2 in a file that the lake has already, not O3, and O4 with a
   * reason that is no word: three breakdowns become two, and three again when it is withdrawn.
   */
  @Test
  void whatASnapshotLacksIsDeletedUntilTheSnapshotIsWithdrawn() {
    JsonNode second =
        month.ingest(
            new SmallInbox(folder.resolve("2"))
                .with("source.json", SNAPSHOTS)
                .with("overhauls_a.csv", HEADER + breakdown("O1", 1) + breakdown("O2", 2))
                .with(
                    "overhauls_b.csv",
                    HEADER + breakdown("O4", 4).replace("breakdown", "worn-out")));

    assertEquals(2, second.path("files").size());
    assertEquals(List.of("2"), column("without O3", "breakdowns"));

    month.run("withdraw", second.path("batch").asText()).clean();
    assertEquals(List.of("3"), column("with O3 again", "breakdowns"));
  }

  /** The refused row may be the missing one. */
  @Test
  void aSnapshotWithARowThatCannotBeReadDeletesNothing() {
    month.ingest(
        new SmallInbox(folder.resolve("2"))
            .with("source.json", SNAPSHOTS)
            .with(
                "overhauls.csv",
                HEADER + breakdown("O1", 1) + "plover,,ME,fuel-injector,1,1,2024-02-11,planned\n"));

    assertEquals(List.of("3"), column("all", "breakdowns"));
    Ran computed = month.run("compute", "--month", "2024-03").clean();
    assertTrue(computed.out().contains("The newest snapshot of overhauls by north-office"));
  }

  /** A snapshot that the lake has in whole is an old export sent again. */
  @Test
  void aSnapshotSentAgainChangesNothing() {
    JsonNode again =
        month.ingest(
            new SmallInbox(folder.resolve("2"))
                .with("source.json", SNAPSHOTS)
                .with("overhauls.csv", HEADER + breakdown("O3", 3)));

    assertEquals(1, again.path("files_already_loaded").size());
    assertEquals(List.of("3"), column("out", "breakdowns"));
  }

  /**
   * The ship plover, 1,000 h from January to March, goes on as dun-plover: 500 h more in April, and
   * one breakdown more. Twelve injectors ran 1,500 h, all on one vessel.
   */
  @Test
  void aRenamedVesselHasOneHistory() {
    PublishedMonth april = new PublishedMonth(month.program(), folder, "2024-04");
    april.ingest(
        new SmallInbox(folder.resolve("2"))
            .with(
                "source.json",
                "{ \"source\": \"north-office\", \"renamed\": { \"plover\": \"dun-plover\" } }")
            .with("hours.csv", SmallInbox.HOURS_HEADER + "dun-plover,ME,2024-04-30,2500,counter,\n")
            .with("overhauls.csv", HEADER + breakdown("O4", 4).replace("plover", "dun-plover")));

    List<String> figures = april.published("renamed");
    assertEquals(List.of("4"), PublishedMonth.column(figures, "breakdowns"));
    assertEquals(List.of("18000"), PublishedMonth.column(figures, "hours"));
    assertEquals(List.of("dun-plover"), PublishedMonth.column(figures, "vessels"));
  }

  @Test
  void aWrongSourceFileIsToldWithItsPlaceAndNothingIsTakenIn() {
    SmallInbox inbox =
        SmallInbox.in(folder.resolve("3"))
            .with("source.json", "{ \"source\": \"office\", \"export\": \"snapshot\" }");
    String fault =
        inbox.folder().resolve("source.json")
            + ": $.export: there is no setting `export` here; allowed are `$schema`, `source`,"
            + " `exports`, `exports_by_kind`, `renamed`";

    month.run("ingest", "--inbox", inbox).exitedWith(2, fault);
    Ran checked = Program.forScheduler().run("check", "--inbox", inbox);
    assertEquals(2, checked.exit());
    assertTrue(checked.out().contains(fault), checked.out());
  }

  private List<String> column(String out, String name) {
    return PublishedMonth.column(month.published(out), name);
  }

  /** A breakdown of an injector of cylinder 1 to 6, on a day of February. */
  private static String breakdown(String overhaul, int unit) {
    return "plover,%s,ME,fuel-injector,%d,1,2024-02-%02d,breakdown\n"
        .formatted(overhaul, unit, 10 + unit);
  }
}
