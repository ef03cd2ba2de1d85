package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadline.fleet.RecordKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceFileTest {

  @TempDir Path inbox;

  @Test
  void everySettingHasItsMeaning() {
    Source source = SourceFile.source(Fixtures.FOLDER.resolve("source-good.json"), Fixtures.SHARED);

    assertEquals("north-office", source.name());
    assertEquals(
        Set.of(RecordKind.MACHINES, RecordKind.OVERHAULS, RecordKind.FINDINGS, RecordKind.RETURNS),
        source.snapshots());
    assertEquals(Map.of("plover", "dun-plover", "9100001", "teal"), source.renamed());
  }

  @Test
  void everythingWrongIsSaidAtOnce() throws IOException {
    assertEquals(
        Files.readAllLines(Fixtures.FOLDER.resolve("source-bad.errors.txt")),
        Fixtures.lines(Fixtures.sourceErrors(Fixtures.FOLDER.resolve("source-bad.json"))));
  }

  @Test
  void anInboxWithoutTheFileHoldsChangesOfNoSourceInParticular() {
    assertEquals(Source.UNNAMED, SourceFile.read(inbox, Fixtures.SHARED));
  }

  @Test
  void exportsHoldChangesUnlessTheSourceSaysOtherwise() throws IOException {
    Files.writeString(inbox.resolve("source.json"), "{ \"source\": \"north-office\" }");

    assertEquals(
        new Source("north-office", Set.of(), Map.of()), SourceFile.read(inbox, Fixtures.SHARED));
  }

  /** Which of the two comes first would be open. */
  @Test
  void aNewIdentifierThatIsItselfRenamedIsAnError() throws IOException {
    Files.writeString(
        inbox.resolve("source.json"),
        "{ \"source\": \"s\", \"renamed\": { \"a\": \"b\", \"b\": \"c\" } }");

    assertEquals(
        List.of(
            "$.renamed.a: `b` is itself renamed here; give each former identifier the newest one"),
        Fixtures.lines(Fixtures.sourceErrors(inbox.resolve("source.json"))));
  }
}
