package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full, and one that is mounted read-only. */
class DiskIT {

  @TempDir private Path folder;

  private static Finished leadline(Path command, String... arguments) {
    return Program.leadline(arguments).in(command).run();
  }

  private static void refused(Finished run, String... words) {
    assertEquals(2, run.exit(), run::toString);
    String last = run.err().get(run.err().size() - 1);
    for (String word : words) {
      assertTrue(last.contains(word), run::toString);
    }
  }

  private static void done(Finished run) {
    assertEquals(0, run.exit(), run::toString);
  }

  @Test
  void aLakeOnAFullDiskKeepsItsStateAndTheNextRunCompletes() throws IOException {
    try (Tmpfs disk = Tmpfs.mounted(folder.resolve("disk"), "8m")) {
      KilledFleet fleet = KilledFleet.in(disk.folder());
      fleet.export(0);
      done(leadline(folder, "run", fleet.job().toString()));
      fleet.export(1);
      Path filler = disk.folder().resolve("filler");
      long free = Files.getFileStore(disk.folder()).getUsableSpace();
      Files.write(filler, new byte[(int) (free - 40_000)]);

      refused(
          leadline(folder, "run", fleet.job().toString()),
          "There is no room left for the lake " + fleet.lake(),
          "No space left on device",
          "make room");
      assertEquals(1, fleet.breakdownsPublished());
      assertEquals(List.of(), fleet.brokenFiles());
      done(leadline(folder, "check", "--lake", fleet.lake().toString()));

      Files.delete(filler);
      done(leadline(folder, "run", fleet.job().toString()));
      assertEquals(2, fleet.breakdownsPublished());
      done(leadline(folder, "check", "--lake", fleet.lake().toString()));
    }
  }

  @Test
  void aPublishedFolderOnAFullDiskKeepsTheMonthOfBefore() throws IOException {
    KilledFleet fleet = KilledFleet.in(folder.resolve("fleet"));
    try (Tmpfs disk = Tmpfs.mounted(fleet.folder().resolve("published"), "4m")) {
      fleet.export(0);
      done(leadline(folder, "run", fleet.job().toString()));
      fleet.export(1);
      Path filler = disk.folder().resolve("filler");
      long free = Files.getFileStore(disk.folder()).getUsableSpace();
      Files.write(filler, new byte[(int) (free - 20_000)]);

      refused(
          leadline(folder, "run", fleet.job().toString()),
          "Cannot publish into " + disk.folder(),
          "No space left on device");
      assertEquals(1, fleet.breakdownsPublished());
      assertEquals(List.of(), fleet.brokenFiles());

      Files.delete(filler);
      done(leadline(folder, "run", fleet.job().toString()));
      assertEquals(2, fleet.breakdownsPublished());
      assertEquals(List.of(), fleet.brokenFiles());
    }
  }

  @Test
  void aReadOnlyLakeIsReadAndNotWrittenTo() throws IOException {
    try (Tmpfs disk = Tmpfs.mounted(folder.resolve("disk"), "16m")) {
      KilledFleet fleet = KilledFleet.in(disk.folder());
      fleet.export(0);
      done(leadline(folder, "run", fleet.job().toString()));
      disk.readOnly();
      String lake = fleet.lake().toString();
      Finished ingest =
          leadline(
              folder,
              "ingest",
              "--inbox",
              Build.HOME + "/sample-data/golden/3-resent",
              "--lake",
              lake);
      Finished compute = leadline(folder, "compute", "--lake", lake, "--month", "2024-12");
      Finished check = leadline(folder, "check", "--lake", lake);
      Finished publish =
          leadline(
              folder,
              "publish",
              "--lake",
              lake,
              "--month",
              "2024-12",
              "--out",
              folder.resolve("elsewhere").toString());
      disk.writable();

      assertAll(
          () -> refused(ingest, "Cannot write to the lake folder " + lake),
          () ->
              refused(
                  compute,
                  "The lake " + lake + " cannot be written to",
                  "Read-only file system",
                  "mount it for writing"),
          () -> done(check),
          () -> done(publish));
    }
  }
}
