package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder that is no lake, or one that has suffered: one sentence, exit code 2, no trace. */
class BadLakeTest {

  @TempDir Path folder;

  private SmallInbox inbox;
  private Path lake;

  @BeforeEach
  void anInbox() {
    inbox = SmallInbox.in(folder.resolve("inbox"));
    lake = folder.resolve("lake");
  }

  @Test
  void aFileIsNoLake() {
    Path file = folder.resolve("inbox/hours.csv");

    ingest(file)
        .exitedWith(
            2,
            "Cannot make the lake folder "
                + file
                + ": "
                + file
                + ": something else is in its place.");
  }

  @Test
  void noLakeIsMadeBelowAFile() {
    Path below = folder.resolve("inbox/hours.csv/lake");

    ingest(below)
        .exitedWith(
            2, "Cannot make the lake folder " + below + ": " + below + ": Not a directory.");
  }

  @Test
  void noLakeIsMadeInAFolderOfOtherThings() {
    SortedMap<String, String> before = FolderTree.of(inbox.folder());

    ingest(inbox.folder())
        .exitedWith(
            2, "The folder " + inbox + " is neither empty nor a lake: name another for the lake.");
    assertEquals(before, FolderTree.of(inbox.folder()));
  }

  @Test
  void noLakeIsMadeForAnInboxThatIsNotThere() {
    Path nowhere = folder.resolve("nowhere");

    Program.forScheduler()
        .run("ingest", "--inbox", nowhere, "--lake", lake)
        .exitedWith(
            2, "The inbox folder " + nowhere + " does not exist; create it or name another.");
    assertFalse(Files.exists(lake));
  }

  @Test
  void noLakeIsMadeForAnInboxThatIsAFile() {
    Path file = folder.resolve("inbox/hours.csv");

    Program.forScheduler()
        .run("ingest", "--inbox", file, "--lake", lake)
        .exitedWith(
            2, "The inbox " + file + " is not a folder; name the folder that holds the exports.");
    assertFalse(Files.exists(lake));
  }

  @Test
  void withoutALakeNothingIsComputedOrPublished() {
    String sentence = "There is no lake in " + lake + ": `ingest` makes one.";

    compute().exitedWith(2, sentence);
    publish().exitedWith(2, sentence);
    assertFalse(Files.exists(lake));
  }

  @ParameterizedTest
  @CsvSource({"ingest", "compute", "publish"})
  void aLakeOfANewerProgramIsLeftAlone(String command) throws IOException {
    ingest(lake).clean();
    Files.writeString(lake.resolve("format"), "2\n");
    SortedMap<String, String> before = FolderTree.of(lake);

    run(command)
        .exitedWith(
            2,
            "The lake "
                + lake
                + " has format 2; this program knows formats up to 1: use the newer program that"
                + " wrote it.");
    assertEquals(before, FolderTree.of(lake));
  }

  @Test
  void aFormatThatIsNoNumberIsSaid() throws IOException {
    ingest(lake).clean();
    Files.writeString(lake.resolve("format"), "\0\0");

    assertTrue(compute().err().startsWith(lake.resolve("format") + " holds '"));
    assertEquals(2, compute().exit());
  }

  /** Without its catalog a lake looks empty, and an ingest would begin it anew. */
  @ParameterizedTest
  @ValueSource(strings = {"ingest", "compute", "publish"})
  void aLakeThatLostItsCatalogIsNotTakenForAnEmptyOne(String command) throws IOException {
    ingest(lake).clean();
    Path catalog = lake.resolve("catalog.db");
    String sentence = "The lake " + lake + " has lost its catalog.db: bring it back from a backup.";

    Files.write(catalog, new byte[0]);
    run(command).exitedWith(2, sentence);
    Files.delete(catalog);
    run(command).exitedWith(2, sentence);
  }

  @Test
  void aDamagedCatalogIsSaid() throws IOException {
    ingest(lake).clean();
    Files.writeString(lake.resolve("catalog.db"), "This is no database.");

    assertDamage(compute(), "file is not a database");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tables/records/hours/data",
        "tables/records/batches/data",
        "tables/records/hours/metadata",
        "tables/records/batches/metadata"
      })
  void aDamagedFileIsNamed(String place) throws IOException {
    ingest(lake).clean();
    List<Path> files = filesIn(place);
    for (Path file : files) {
      Files.writeString(file, "This is not what was here.");
    }
    assertDamage(compute(), lake.resolve(place).toString());
    for (Path file : files) {
      Files.delete(file);
    }
    assertDamage(compute(), lake.resolve(place).toString());
  }

  /** The checksums beside the files are the file system's, and a copy may lack them. */
  @ParameterizedTest
  @CsvSource({
    "tables/records/hours/data, is not a Parquet file",
    "tables/records/batches/data, tables/records/batches/data"
  })
  void aDamagedFileWithoutChecksumIsSaid(String place, String named) throws IOException {
    ingest(lake).clean();
    for (Path file : filesIn(place)) {
      Files.delete(file.resolveSibling("." + file.getFileName() + ".crc"));
      Files.writeString(file, "This is not what was here.");
    }
    assertDamage(compute(), named);
  }

  @Test
  void aDamagedResultIsNamed() throws IOException {
    ingest(lake).clean();
    compute().clean();
    for (Path file : filesIn("tables/results/part_findings/data")) {
      Files.writeString(file, "This is not what was here.");
    }
    assertDamage(publish(), lake.resolve("tables/results/part_findings").toString());
  }

  @Test
  void aCopyOfALakeDoesNotWriteToTheOther() throws IOException {
    ingest(lake).clean();
    Path copy = folder.resolve("copy");
    try (Stream<Path> files = Files.walk(lake)) {
      for (Path file : files.toList()) {
        Files.copy(file, copy.resolve(lake.relativize(file).toString()));
      }
    }
    SortedMap<String, String> before = FolderTree.of(lake.resolve("tables"));
    inbox.with("hours_more.csv", SmallInbox.HOURS_HEADER);
    Ran ran = ingest(copy);

    assertEquals(2, ran.exit());
    assertTrue(
        ran.err().startsWith("The lake " + copy + " is a copy: its tables lie in "), ran.err());
    assertEquals(1, ran.errorLines().size());
    assertEquals(before, FolderTree.of(lake.resolve("tables")));
  }

  @Test
  void aMovedLakeIsSaid() throws IOException {
    ingest(lake).clean();
    lake = Files.move(lake, folder.resolve("moved"));

    assertDamage(compute(), "if the lake was moved, move it back");
  }

  @Test
  void aLinkToALakeIsTheLake() throws IOException {
    Path real = Files.createDirectory(folder.resolve("real"));
    Files.createSymbolicLink(lake, real);
    ingest(lake).clean();
    compute().clean();
    lake = real;
    compute().clean();
  }

  private Ran run(String command) {
    return switch (command) {
      case "ingest" -> ingest(lake);
      case "compute" -> compute();
      case "publish" -> publish();
      default -> throw new IllegalArgumentException(command);
    };
  }

  private Ran ingest(Path into) {
    return Program.forScheduler().run("ingest", "--inbox", inbox, "--lake", into);
  }

  private Ran compute() {
    return Program.forScheduler().run("compute", "--lake", lake, "--month", "2024-03");
  }

  private Ran publish() {
    return Program.forScheduler()
        .run("publish", "--lake", lake, "--month", "2024-03", "--out", folder.resolve("out"));
  }

  /** Not the JSON files, which Iceberg tries to read for a minute and a half before it gives up. */
  private List<Path> filesIn(String place) throws IOException {
    try (Stream<Path> files = Files.list(lake.resolve(place))) {
      List<Path> found =
          files
              .filter(file -> file.getFileName().toString().matches("[^.].*\\.(parquet|avro)"))
              .toList();
      assertFalse(found.isEmpty());
      return found;
    }
  }

  private void assertDamage(Ran ran, String named) {
    assertEquals(2, ran.exit(), ran.err());
    assertEquals("", ran.out());
    assertEquals(1, ran.errorLines().size(), ran.err());
    assertTrue(ran.err().startsWith("A file of the lake " + lake + " cannot be used: "), ran.err());
    assertTrue(ran.err().contains(named), ran.err());
  }
}
