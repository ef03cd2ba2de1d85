package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** A lake in a folder, and a month computed from it and published, as a few figures. */
record PublishedMonth(Program program, Path folder, String month) {

  Ran run(String command, Object... more) {
    return program.run(
        Stream.concat(Stream.of(command, "--lake", folder.resolve("lake")), Arrays.stream(more))
            .toArray());
  }

  JsonNode ingest(SmallInbox inbox) {
    return run("ingest", "--inbox", inbox, "--json").step();
  }

  /** The month as it stands now, or as it was known then, as {@code NAME: VALUE}. */
  List<String> published(String out, Object... knownAt) {
    List<Object> options = new ArrayList<>(List.of("--month", month));
    options.addAll(List.of(knownAt));
    run("compute", options.toArray()).clean();
    options.addAll(List.of("--out", folder.resolve(out)));
    run("publish", options.toArray()).clean();
    List<String> figures = new ArrayList<>();
    for (NamedCsvRecord row : rows(out, "component_rates")) {
      if (row.getField("window").equals("since-start")
          && row.getField("endpoint").equals("breakdown")
          && row.getField("component").equals("fuel-injector")) {
        if (row.getField("level").equals("fleet")) {
          figures.add("breakdowns: " + row.getField("events"));
          figures.add("hours: " + row.getField("exposure_h"));
        } else if (row.getField("level").equals("vessel")) {
          figures.add("vessels: " + row.getField("stratum"));
        }
      }
    }
    rows(out, "intake_log").forEach(row -> figures.add("standing: " + row.getField("standing")));
    rows(out, "unmapped_words").forEach(row -> figures.add("words: " + row.getField("word")));
    return figures;
  }

  static List<String> column(List<String> figures, String name) {
    return figures.stream()
        .filter(figure -> figure.startsWith(name + ": "))
        .map(figure -> figure.substring(name.length() + 2))
        .toList();
  }

  /** A cell of the first row of a published table. */
  String cell(String out, String table, String column) {
    return rows(out, table).get(0).getField(column);
  }

  private List<NamedCsvRecord> rows(String out, String table) {
    try (Stream<Path> published = Files.list(folder.resolve(out))) {
      List<Path> months =
          published.filter(path -> path.getFileName().toString().startsWith(month)).toList();
      assertEquals(1, months.size(), months::toString);
      try (CsvReader<NamedCsvRecord> rows =
          CsvReader.builder()
              .ofNamedCsvRecord(months.get(0).resolve("tables").resolve(table + ".csv"))) {
        return rows.stream().toList();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
