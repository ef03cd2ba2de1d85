package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadline.fleet.RecordKind;
import leadline.origin.FileDigest;
import leadline.problem.FileFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InboxTest {

  private static final String CONTENT = "vessel";

  @TempDir Path inbox;

  private void put(String path) throws IOException {
    Path file = inbox.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, CONTENT);
  }

  private static ExportFile export(RecordKind kind, String path) {
    return new ExportFile(kind, path, FileDigest.of(CONTENT.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void exportsOfAllFoldersAreListedByPath() throws IOException {
    put("b/overhauls_2023.csv");
    put("b/HOURS.CSV");
    put("a/findings-1.csv");
    put("machines.csv");
    put("stock.csv");
    put("movements.2024.csv");
    assertEquals(
        List.of(
            export(RecordKind.FINDINGS, "a/findings-1.csv"),
            export(RecordKind.HOURS, "b/HOURS.CSV"),
            export(RecordKind.OVERHAULS, "b/overhauls_2023.csv"),
            export(RecordKind.MACHINES, "machines.csv"),
            export(RecordKind.MOVEMENTS, "movements.2024.csv"),
            export(RecordKind.STOCK, "stock.csv")),
        Inbox.list(inbox).exports());
  }

  @Test
  void aFileThatBeginsWithNoRecordsWordIsUnusableAndTheOthersStay() throws IOException {
    put("x/hoursheet.csv");
    put("crew.csv");
    put("hours.csv");
    Inbox found = Inbox.list(inbox);
    assertEquals(List.of(export(RecordKind.HOURS, "hours.csv")), found.exports());
    assertEquals(
        List.of("crew.csv", "x/hoursheet.csv"),
        found.unusable().stream().map(FileFault::file).toList());
    assertEquals(
        "crew.csv, line 1: the name does not say what the file holds; begin it with one of"
            + " machines, hours, overhauls, findings, stock, movements, returns, as in"
            + " machines_2024.csv, or take the file away.",
        found.unusable().get(0).sentence());
  }

  @Test
  void otherFilesAreNotedAndHiddenOnesPassedOver() throws IOException {
    put("notes.txt");
    put("hours.csv.bak");
    put(".hours.csv");
    put(".old/hours.csv");
    Inbox found = Inbox.list(inbox);
    assertEquals(new Inbox(List.of(), List.of(), List.of("hours.csv.bak", "notes.txt")), found);
  }

  @Test
  void anInboxThatIsItselfHiddenIsListed() throws IOException {
    put(".inbox/hours.csv");
    assertEquals(
        List.of(export(RecordKind.HOURS, "hours.csv")),
        Inbox.list(inbox.resolve(".inbox")).exports());
  }

  @Test
  void aLinkThatLeadsNowhereOrInACircleIsUnusable() throws IOException {
    Files.createSymbolicLink(inbox.resolve("hours_lost.csv"), inbox.resolve("gone.csv"));
    Files.createSymbolicLink(inbox.resolve("round"), inbox);
    put("hours.csv");
    Inbox found = Inbox.list(inbox);
    assertEquals(1, found.exports().size());
    assertEquals(
        List.of("hours_lost.csv", "round"),
        found.unusable().stream().map(FileFault::file).toList());
  }

  /** The memory of this very process is a file that is listed and cannot be read from its start. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aFileThatCannotBeReadIsUnusableAndTheOthersStay() throws IOException {
    Files.createSymbolicLink(inbox.resolve("hours_memory.csv"), Path.of("/proc/self/mem"));
    put("hours.csv");
    Inbox found = Inbox.list(inbox);
    assertEquals(List.of(export(RecordKind.HOURS, "hours.csv")), found.exports());
    assertEquals(
        List.of(
            "hours_memory.csv, line 1: the file cannot be read (Input/output error); let it be"
                + " read, or take it away."),
        found.unusable().stream().map(FileFault::sentence).toList());
  }

  @Test
  void aMissingInboxIsOneClearSentence() {
    Path missing = inbox.resolve("nowhere");
    InboxUnusable thrown = assertThrows(InboxUnusable.class, () -> Inbox.list(missing));
    assertEquals(
        "The inbox folder " + missing + " does not exist; create it or name another.",
        thrown.getMessage());
  }

  @Test
  void anInboxThatIsAFileIsOneClearSentence() throws IOException {
    put("hours.csv");
    Path file = inbox.resolve("hours.csv");
    InboxUnusable thrown = assertThrows(InboxUnusable.class, () -> Inbox.list(file));
    assertEquals(
        "The inbox " + file + " is not a folder; name the folder that holds the exports.",
        thrown.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "hours.csv, HOURS",
    "hours_2024.csv, HOURS",
    "hours2024.csv, HOURS",
    "Overhauls 1.csv, OVERHAULS",
    "hours, HOURS"
  })
  void theRecordsWordBeginsTheName(String name, RecordKind kind) {
    assertEquals(kind, RecordKind.ofFileName(name).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"hoursheet.csv", "hour.csv", "myhours.csv", "stocké.csv", "' hours.csv'"})
  void aLetterBehindTheWordMakesAnotherWord(String name) {
    assertTrue(RecordKind.ofFileName(name).isEmpty());
  }
}
