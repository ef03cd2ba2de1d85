package leadline.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Kills the packaged program, by the signal that no process sees coming, at random moments of a run
 * of ingest, compute and publish, and every fourth time of a tidy. After each kill readers must see
 * the old state or the new one; what the next run makes of it must be what it would have made.
 */
final class Kills {

  private final Path folder;
  private final KilledFleet fleet;
  private final Random random;
  private final Path archive;
  private final Map<String, Integer> killed = new TreeMap<>();

  private Kills(Path folder, long seed) throws IOException {
    this.folder = folder;
    this.fleet = KilledFleet.in(folder.resolve("killed"));
    this.random = new Random(seed);
    this.archive = folder.resolve("classes.jsa");
  }

  /**
   * @param betweenRuns a run is let through to its end after so many kills
   * @return how many kills hit what
   * @throws IllegalStateException where something was lost, doubled, or half there
   */
  static Map<String, Integer> of(Path folder, int kills, int betweenRuns, long seed)
      throws IOException, InterruptedException {
    return new Kills(folder, seed).kill(kills, betweenRuns);
  }

  private Map<String, Integer> kill(int kills, int betweenRuns)
      throws IOException, InterruptedException {
    finish(start("-XX:ArchiveClassesAtExit=" + archive, run(fleet)));
    Duration whole = timed(run(fleet));
    Duration tidying = timed(tidy());
    int exported = 0;
    int atLeast = 0;
    for (int done = 0; done < kills; ) {
      boolean ofTidy = done % 4 == 3;
      if (!ofTidy) {
        fleet.export(exported++);
      }
      if (killsAtRandom(ofTidy ? tidy() : run(fleet), ofTidy ? tidying : whole)) {
        done++;
        System.err.println(done + " of " + kills + " kills so far: " + killed);
      }
      atLeast = requireOldOrNew(atLeast, exported);
      if (done % betweenRuns == 0) {
        finish(start(run(fleet)));
        atLeast = requireOldOrNew(exported, exported);
      }
    }
    finish(start(run(fleet)));
    finish(start(tidy()));
    requireOldOrNew(exported, exported);
    requireTablesOf(neverKilled(exported));
    return killed;
  }

  private boolean killsAtRandom(String[] command, Duration usual)
      throws IOException, InterruptedException {
    Process process = start(command);
    long at = (long) (usual.toMillis() * (0.1 + 0.95 * random.nextDouble()));
    Thread.sleep(at);
    if (!process.isAlive()) {
      return false;
    }
    process.destroyForcibly().waitFor();
    killed.merge(lastSaid(), 1, Integer::sum);
    return true;
  }

  /** The step that the program was at, by what it told of its progress. */
  private String lastSaid() throws IOException {
    return Files.readAllLines(err()).stream()
        .map(line -> line.split(" ", 2)[0])
        .filter(List.of("ingest", "compute", "publish", "tidy")::contains)
        .reduce("start", (earlier, later) -> later);
  }

  /** Everything readers see is whole, and not older than what they saw before. */
  private int requireOldOrNew(int atLeast, int atMost) throws IOException, InterruptedException {
    if (Files.exists(fleet.lake().resolve("format"))) {
      finish(start("check", "--lake", fleet.lake().toString()));
    }
    List<String> broken = fleet.brokenFiles();
    int published = fleet.breakdownsPublished();
    require(broken.isEmpty(), "published and not whole: " + broken);
    require(
        atLeast <= published && published <= atMost,
        "published are %d breakdowns of %d to %d".formatted(published, atLeast, atMost));
    return published;
  }

  private KilledFleet neverKilled(int exported) throws IOException, InterruptedException {
    KilledFleet other = KilledFleet.in(folder.resolve("never-killed"));
    for (int number = 0; number < exported; number++) {
      other.export(number);
    }
    finish(start(run(other)));
    return other;
  }

  private void requireTablesOf(KilledFleet other) throws IOException {
    Map<String, List<Map<String, String>>> expected = other.tables();
    Map<String, List<Map<String, String>>> actual = fleet.tables();
    require(expected.keySet().equals(actual.keySet()), "other tables: " + actual.keySet());
    expected.forEach(
        (table, rows) -> require(rows.equals(actual.get(table)), table + " has other rows"));
  }

  private Duration timed(String... command) throws IOException, InterruptedException {
    long begun = System.nanoTime();
    finish(start(command));
    return Duration.ofNanos(System.nanoTime() - begun);
  }

  private static String[] run(KilledFleet fleet) {
    return new String[] {"run", fleet.job().toString()};
  }

  private String[] tidy() {
    return new String[] {"tidy", "--lake", fleet.lake().toString(), "--older-than", "0m"};
  }

  private Process start(String... command) throws IOException {
    return start("-XX:SharedArchiveFile=" + archive, command);
  }

  private Process start(String option, String[] command) throws IOException {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin/java").toString());
    line.add("@" + Build.HOME.resolve("jobs/java-small.options"));
    line.addAll(List.of(option, "-Xshare:auto", "-Xlog:disable", "-Dleadline.terminal=true"));
    line.add("-Dleadline.home=" + Build.HOME);
    line.addAll(List.of("-cp", Build.JAR.toString(), "leadline.cli.Main"));
    Stream.of(command).forEach(line::add);
    return new ProcessBuilder(line)
        .redirectOutput(folder.resolve("out.txt").toFile())
        .redirectError(err().toFile())
        .start();
  }

  private Path err() {
    return folder.resolve("err.txt");
  }

  private void finish(Process process) throws IOException, InterruptedException {
    int exit = process.waitFor();
    require(
        exit == 0,
        "exit code "
            + exit
            + "\n"
            + Files.readString(err())
            + Files.readString(folder.resolve("out.txt")));
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalStateException(otherwise);
    }
  }

  /** Arguments: how many kills, the seed, and the folder to work in. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    int kills = Integer.parseInt(arguments[0]);
    Map<String, Integer> killed = of(Path.of(arguments[2]), kills, 1, Long.parseLong(arguments[1]));
    System.out.println(
        kills + " kills, nothing lost, nothing doubled, nothing half there; killed at: " + killed);
  }
}
