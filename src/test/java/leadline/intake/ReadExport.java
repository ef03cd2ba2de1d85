package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.fleet.Cells;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.RecordKind;
import leadline.fleet.Renewal;
import leadline.fleet.StoredRow;
import leadline.origin.FileDigest;
import leadline.problem.RowFault;
import leadline.quantity.RunningHours;

/** An export read to its end, with everything that came out. */
record ReadExport(FileOutcome outcome, List<StoredRow> stored, List<RefusedRow> refused) {

  /** The moment at which all tests take in their files. */
  static final Instant NOW = Instant.parse("2024-06-15T10:00:00Z");

  static final Catalogue CATALOGUE =
      new Catalogue(
          List.of(
              component("fuel-injector", part("nozzle"), part("main-spring"), part("o-rings")),
              component("exhaust-valve", part("spindle"), part("seat"))));

  static ReadExport of(RecordKind kind, String text) {
    return of(kind, text.getBytes(StandardCharsets.UTF_8));
  }

  static ReadExport of(RecordKind kind, byte[] bytes) {
    return of(kind, bytes, new ByteArrayInputStream(bytes));
  }

  static ReadExport of(RecordKind kind, byte[] bytes, InputStream stream) {
    return of(kind, kind.word() + ".csv", bytes, stream);
  }

  static ReadExport ofWorkbook(RecordKind kind, byte[] bytes) {
    return of(kind, kind.word() + ".xlsx", bytes, new ByteArrayInputStream(bytes));
  }

  private static ReadExport of(RecordKind kind, String name, byte[] bytes, InputStream stream) {
    List<StoredRow> stored = new ArrayList<>();
    List<RefusedRow> refused = new ArrayList<>();
    RowSink sink =
        new RowSink() {
          @Override
          public void stored(StoredRow row) {
            stored.add(row);
          }

          @Override
          public void refused(RefusedRow row) {
            refused.add(row);
          }
        };
    try {
      ExportFile file = new ExportFile(kind, name, FileDigest.of(bytes));
      FileOutcome outcome = ExportReader.read(stream, file, CATALOGUE, NOW, sink);
      return new ReadExport(outcome, stored, refused);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  FileOutcome.FileTally tally() {
    return assertInstanceOf(FileOutcome.FileTally.class, outcome);
  }

  FileOutcome.UnusableFile unusable() {
    return assertInstanceOf(FileOutcome.UnusableFile.class, outcome);
  }

  List<Cells> cells() {
    return stored.stream().map(StoredRow::cells).toList();
  }

  List<Long> storedLines() {
    return stored.stream().map(row -> row.origin().line()).toList();
  }

  /** Each refused row as {@code line: rule column, rule column}. */
  List<String> refusals() {
    return refused.stream().map(ReadExport::refusal).toList();
  }

  private static String refusal(RefusedRow row) {
    List<String> faults = row.faults().stream().map(ReadExport::named).toList();
    return row.origin().line() + ": " + String.join(", ", faults);
  }

  private static String named(RowFault fault) {
    return (fault.rule() + " " + fault.column()).trim();
  }

  private static Component component(String name, Part... parts) {
    return new Component(
        name,
        PositionsPer.PLACE,
        Set.of("main-engine"),
        RunningHours.ofHours(8000),
        List.of(parts));
  }

  private static Part part(String name) {
    return new Part(
        name,
        name.endsWith("spring") ? PartShape.SPRING : PartShape.FIT,
        FailureShows.MAY_STAY_UNSEEN,
        Set.of(FoundWord.BROKEN),
        Set.of(FoundWord.WORN),
        Set.of(),
        Renewal.ON_CONDITION,
        Clock.HOURS,
        "none");
  }
}
