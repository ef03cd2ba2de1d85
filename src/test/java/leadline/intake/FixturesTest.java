package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.StoredRow;
import leadline.origin.FileDigest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A good and a bad export of each kind; beside the bad one stands what it must be refused for. */
class FixturesTest {

  private static Path fixture(RecordKind kind, String ending) {
    URL url = FixturesTest.class.getResource("/intake/" + kind.word() + ending);
    try {
      return Path.of(Objects.requireNonNull(url, kind.word() + ending).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ReadExport read(Path file, RecordKind kind) throws IOException {
    return ReadExport.of(kind, Files.readAllBytes(file));
  }

  @ParameterizedTest
  @EnumSource
  void everyRowOfAGoodExportIsStored(RecordKind kind) throws IOException {
    ReadExport read = read(fixture(kind, "_good.csv"), kind);
    assertEquals(List.of(), read.refusals());
    assertTrue(read.tally().stored() >= 2);
    assertTrue(read.tally().unknownColumns().isEmpty());
  }

  @ParameterizedTest
  @EnumSource
  void aBadExportIsRefusedRowByRowForAllItsFaults(RecordKind kind) throws IOException {
    ReadExport read = read(fixture(kind, "_bad.csv"), kind);
    assertEquals(Files.readAllLines(fixture(kind, "_bad.expected")), read.refusals());
    assertEquals(1, read.tally().stored());
  }

  /** The cells of texts against those that DuckDB's CSV reader finds in the same file. */
  @ParameterizedTest
  @EnumSource
  void textsAreThoseThatAnotherReaderFinds(RecordKind kind) throws IOException, SQLException {
    Path file = fixture(kind, "_good.csv");
    List<Column<?>> texts =
        kind.layout().columns().stream()
            .filter(
                column ->
                    column.type().equals(kind.layout().columns().get(0).type())
                        || column.name().equals("remark"))
            .toList();
    List<List<String>> found = new ArrayList<>();
    for (StoredRow row : read(file, kind).stored()) {
      found.add(
          texts.stream()
              .map(column -> row.cells().find(column).map(Object::toString).orElse(""))
              .toList());
    }
    assertEquals(foundByDuckDb(file, texts), found);
  }

  private static List<List<String>> foundByDuckDb(Path file, List<Column<?>> columns)
      throws SQLException {
    List<List<String>> rows = new ArrayList<>();
    try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
        Statement statement = connection.createStatement();
        ResultSet result =
            statement.executeQuery(
                "SELECT * FROM read_csv('" + file + "', header = true, all_varchar = true)")) {
      while (result.next()) {
        List<String> row = new ArrayList<>();
        for (Column<?> column : columns) {
          row.add(Objects.requireNonNullElse(result.getString(column.name()), ""));
        }
        rows.add(row);
      }
    }
    return rows;
  }

  /** Parallel tasks send these to each other by Java's own serialization. */
  @ParameterizedTest
  @EnumSource
  void outcomesAndRefusedRowsTravelBetweenTasks(RecordKind kind)
      throws IOException, ClassNotFoundException {
    ReadExport bad = read(fixture(kind, "_bad.csv"), kind);
    List<Object> sent = new ArrayList<>(bad.refused());
    sent.add(bad.outcome());
    sent.add(ReadExport.of(kind, "x").outcome());
    ExportFile file = new ExportFile(kind, "a.csv", FileDigest.of(new byte[0]));
    sent.add(file);
    sent.add(new Inbox(List.of(file), List.of(), List.of("b.txt")));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(sent);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(sent, in.readObject());
    }
  }
}
