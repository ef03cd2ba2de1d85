package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SampleCommandTest {

  private static final Path COMMITTED = Program.HOME.resolve("sample-data/lantern-bay");

  @TempDir Path folder;

  /** By the command that stands in {@code sample-data/README.md}. */
  @Test
  void theFleetOfTheProjectIsWhatTheCommandWrites() throws IOException {
    String readme = Files.readString(Program.HOME.resolve("sample-data/README.md"));
    String command =
        readme
            .lines()
            .filter(line -> line.startsWith("jobs/leadline sample "))
            .findFirst()
            .orElseThrow();
    List<Object> arguments = new ArrayList<>(List.of(command.split(" ")));
    arguments.remove(0);
    arguments.set(arguments.indexOf("sample-data/lantern-bay"), folder.resolve("fleet"));
    arguments.set(arguments.indexOf("target/truth"), folder.resolve("truth"));

    Program.forScheduler().run(arguments.toArray()).clean();

    SortedMap<String, String> committed = files(COMMITTED);
    assertEquals(1 + 4 * 24, committed.size());
    assertEquals(committed, files(folder.resolve("fleet")));
    assertTrue(committed.values().stream().mapToLong(String::length).sum() < 5_000_000, "a few MB");
  }

  @Test
  void aSmallerFleetIsPartOfALargerOne() throws IOException {
    write("two", "--vessels", 2);
    write("three", "--vessels", 3);
    SortedMap<String, String> larger = files(folder.resolve("three"));
    files(folder.resolve("two"))
        .forEach((name, text) -> assertTrue(larger.getOrDefault(name, "").startsWith(text), name));
    assertEquals(1 + 4 * 3, larger.size());
  }

  /** Such files cannot be read, and say so; the other vessels' can. */
  @Test
  void aVesselWithTheWrongSeparatorWritesItInAllItsFiles() throws IOException {
    write("wrong", "--vessels", 2, "--set", "separator-fault=1");
    files(folder.resolve("wrong"))
        .forEach(
            (name, text) ->
                assertEquals(name.equals("machines.csv"), text.startsWith("vessel,"), name));
    Ran check = Program.forScheduler().run("check", "--inbox", folder.resolve("wrong"));
    assertEquals(2, check.exit());
    assertEquals(
        8,
        (check.out() + check.err())
            .lines()
            .filter(line -> line.contains("no column name is known"))
            .count());
  }

  @Test
  void theTruthLiesBesideTheExports() throws IOException {
    Ran ran =
        Program.forScheduler()
            .run(
                "sample",
                "--out",
                folder.resolve("exports"),
                "--vessels",
                1,
                "--years",
                1,
                "--seed",
                5)
            .clean();
    assertEquals(
        "Wrote the exports of 1 vessel to %s, and what really happened to %s.\n"
            .formatted(folder.resolve("exports"), folder.resolve("truth")),
        ran.out());
    assertEquals(
        List.of("errors.csv", "lives.csv", "vessels.csv"),
        List.copyOf(files(folder.resolve("truth")).keySet()));
  }

  @Test
  void whatIsWrittenCanBeRead() throws IOException {
    write("faulty", "--vessels", 2);
    write("sound", "--vessels", 2, "--clean");

    Program.forScheduler().run("check", "--inbox", folder.resolve("faulty")).clean();
    Ran sound = Program.forScheduler().run("check", "--inbox", folder.resolve("sound")).clean();
    assertFalse(
        sound.out().lines().anyMatch(line -> line.matches(".*refused [1-9].*")), sound.out());
  }

  @Test
  void settingsAndReadingsAreFollowed() throws IOException {
    write("blank", "--vessels", 1, "--clean", "--set", "blank-finding=1", "--readings", "monthly");
    SortedMap<String, String> blank = files(folder.resolve("blank"));
    blank.forEach(
        (name, text) -> {
          if (name.startsWith("findings")) {
            assertTrue(text.lines().skip(1).noneMatch(line -> line.contains(",yes,")), name);
          } else if (name.startsWith("hours")) {
            assertTrue(text.lines().skip(2).anyMatch(line -> line.endsWith(",total")), name);
          }
        });
  }

  @Test
  void aFolderInUseIsLeftAlone() throws IOException {
    write("once", "--vessels", 1);
    run("once", "--vessels", 1)
        .exitedWith(
            2,
            folder.resolve("once") + " is not empty; name a new or empty folder.",
            "Try 'leadline sample --help'.");
  }

  @Test
  void whatCannotBeIsOneSentence() {
    misused("A fleet has 1 to 10000 vessels, not 0", "--vessels", 0);
    misused(
        "--readings is daily, weekly, monthly or mixed, not hourly",
        "--vessels",
        1,
        "--readings",
        "hourly");
    misused("There is nothing to set by the name 'rust'.", "--vessels", 1, "--set", "rust=0.1");
    misused(
        "--set no-hours: a share is from 0 to 1, not 3.0", "--vessels", 1, "--set", "no-hours=3");
    Program.forScheduler()
        .run(
            "sample",
            "--out",
            folder,
            "--truth",
            folder.resolve("in"),
            "--vessels",
            1,
            "--years",
            1,
            "--seed",
            1)
        .exitedWith(
            2,
            "The truth does not belong among the exports; name another folder for it.",
            "Try 'leadline sample --help'.");
  }

  private void misused(String sentence, Object... more) {
    run("misused", more).exitedWith(2, sentence, "Try 'leadline sample --help'.");
  }

  private void write(String name, Object... more) {
    run(name, more).clean();
  }

  private Ran run(String name, Object... more) {
    return Program.forScheduler()
        .run(
            Stream.concat(
                    Stream.of(
                        "sample",
                        "--out",
                        folder.resolve(name),
                        "--truth",
                        folder.resolve(name + " truth"),
                        "--years",
                        1,
                        "--seed",
                        5),
                    Stream.of(more))
                .toArray());
  }

  private static SortedMap<String, String> files(Path folder) throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    try (Stream<Path> list = Files.list(folder)) {
      list.forEach(file -> files.put(file.getFileName().toString(), text(file)));
    }
    return files;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
