package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes to standard output and what to standard error, for a scheduler and for a person. */
@Tag("long")
class OutputTest {

  @TempDir Path folder;

  private SmallInbox inbox;
  private Path lake;

  @BeforeEach
  void anInbox() {
    inbox = SmallInbox.in(folder.resolve("inbox"));
    lake = folder.resolve("lake");
  }

  @Test
  void jsonIsOneLineAndAllThereIs() {
    Program program = Program.forScheduler();
    JsonNode ingested =
        program.run("ingest", "--inbox", inbox, "--lake", lake, "--json").clean().step();
    JsonNode computed =
        program.run("compute", "--lake", lake, "--month", "2024-03", "--json").clean().step();
    JsonNode published =
        program
            .run(
                "publish",
                "--lake",
                lake,
                "--month",
                "2024-03",
                "--out",
                folder.resolve("out"),
                "--json")
            .clean()
            .step();

    assertEquals(
        List.of(
            "step",
            "batch",
            "files",
            "files_already_loaded",
            "files_unusable",
            "files_not_csv",
            "columns_not_used",
            "rows_read",
            "rows_stored",
            "rows_refused"),
        names(ingested));
    assertEquals("[\"hours.csv\",\"machines.csv\"]", ingested.get("files").toString());
    assertEquals(List.of("step", "month", "run", "known_at", "rows", "problems"), names(computed));
    assertEquals("{}", computed.get("problems").toString());
    assertEquals(List.of("step", "month", "run", "known_at", "folders"), names(published));
    assertEquals(computed.get("run"), published.get("run"));
    assertEquals(
        List.of(folder.resolve("out/2024-03").toString(), folder.resolve("out/latest").toString()),
        texts(published.get("folders")));
  }

  @Test
  void aJobEndsWithOneLineOfJson() throws IOException {
    Ran ran = Program.forScheduler().run("run", job()).clean();

    assertEquals(
        List.of("ingest", "compute", "publish"),
        ran.lastLine().get("steps").findValuesAsText("step"));
    assertEquals(1, ran.out().lines().filter(line -> line.startsWith("{")).count());
    assertTrue(ran.out().startsWith("Ingested 2 files of " + inbox + " as batch "));
    assertTrue(ran.out().contains("\nComputed 2024-03 as run "));
    assertTrue(ran.out().contains("\nPublished: " + folder.resolve("out/2024-03") + "\n"));
  }

  @Test
  void aJobThatIsRunAgainTakesNothingTwice() throws IOException {
    Path job = job();
    Program.forScheduler().run("run", job).clean();
    Ran again = Program.forScheduler().run("run", job).clean();

    assertTrue(
        again.out().startsWith("Nothing new in " + inbox + "; already in the lake: 2 files.\n"),
        again.out());
    JsonNode ingested = again.lastLine().at("/steps/0");
    assertTrue(ingested.path("batch").isMissingNode());
    assertEquals(List.of("hours.csv", "machines.csv"), texts(ingested.get("files_already_loaded")));
    assertEquals(0, ingested.get("rows_read").asInt());
  }

  @Test
  void aJobWithAnUnusableFileGoesOnAndExitsWithTwo() throws IOException {
    inbox.with("hours_bad.csv", "");
    Ran ran = Program.forScheduler().run("run", job());

    ran.exitedWith(
        2,
        "hours_bad.csv, line 1: the file is empty; export it again, with a header line even if"
            + " there are no rows.");
    assertEquals(3, ran.lastLine().get("steps").size());
    assertEquals(1, ran.lastLine().at("/steps/0/files_unusable").size());
    assertTrue(Files.exists(folder.resolve("out/2024-03/run.json")));
  }

  @Test
  void progressIsForAPersonAlone() throws IOException {
    Program.forPerson()
        .run("run", job())
        .exitedWith(
            0,
            "ingest " + inbox,
            "compute 2024-03",
            "publish 2024-03 into " + folder.resolve("out"));
  }

  @Test
  void anInboxAlreadyLoadedMakesNoBatch() {
    Program program = Program.forScheduler();
    Ran first = program.run("ingest", "--inbox", inbox, "--lake", lake).clean();
    Ran second = program.run("ingest", "--inbox", inbox, "--lake", lake).clean();

    assertTrue(
        first
            .out()
            .matches(
                "Ingested 2 files of .*/inbox as batch [0-9TZ]+-[0-9a-f]{8}:"
                    + " 4 rows read, 4 stored, 0 refused\\.\n"),
        first.out());
    assertEquals("Nothing new in " + inbox + "; already in the lake: 2 files.\n", second.out());
    inbox.with("hours_more.csv", SmallInbox.HOURS_HEADER + "plover,ME,2024-04-30,2500,counter,\n");
    Ran third = program.run("ingest", "--inbox", inbox, "--lake", lake).clean();
    assertTrue(
        third.out().endsWith(": 1 row read, 1 stored, 0 refused; already in the lake: 2 files.\n"),
        third.out());
  }

  @Test
  void anEmptyInboxIsNothingNew() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));

    assertEquals(
        "Nothing new in " + empty + ".\n",
        Program.forScheduler().run("ingest", "--inbox", empty, "--lake", lake).clean().out());
  }

  /** Figures are written alike on every machine, whatever its language. */
  @Test
  void aGermanMachineWritesTheSame() {
    inbox.with(
        "hours_more.csv",
        SmallInbox.HOURS_HEADER + "plover,ME,2024-03-31,2000,counter,\n".repeat(1234));
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      Program program = Program.forScheduler();
      Ran checked = program.run("check", "--inbox", inbox).clean();
      Ran ingested = program.run("ingest", "--inbox", inbox, "--lake", lake).clean();

      assertTrue(
          checked
              .out()
              .contains("hours_more.csv: rows read 1,234, would be stored 1,234, refused 0"),
          checked.out());
      assertTrue(
          ingested.out().endsWith(": 1,238 rows read, 1,238 stored, 0 refused.\n"), ingested.out());
    } finally {
      Locale.setDefault(before);
    }
  }

  private Path job() throws IOException {
    return Files.writeString(
        folder.resolve("job.json"),
        """
        {
          "lake": "lake",
          "steps": [
            { "step": "ingest", "inbox": "inbox" },
            { "step": "compute", "month": "2024-03" },
            { "step": "publish", "month": "2024-03", "out": "out" }
          ]
        }
        """);
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(text -> texts.add(text.asText()));
    return texts;
  }
}
