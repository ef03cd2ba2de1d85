package leadline.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.CellType;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;
import leadline.summary.EvidenceColumns;
import leadline.summary.PublishedTables;
import leadline.summary.TableColumn;
import leadline.summary.TableSpec;
import org.junit.jupiter.api.Test;

/**
 * The guide's tables of columns say what the code says. Where a test fails, the right text lies in
 * {@code target/docs}.
 */
class GuideTest {

  private static final Path HOME = Path.of(System.getProperty("leadline.home", "."));

  @Test
  void theGuideListsThePlainLayout() throws IOException {
    assertInGuide(
        "plain-layout.md",
        "| file | column | holds | |\n|---|---|---|---|\n"
            + Arrays.stream(RecordKind.values())
                .flatMap(kind -> kind.layout().columns().stream().map(column -> line(kind, column)))
                .collect(Collectors.joining()));
  }

  private static String line(RecordKind kind, Column<?> column) {
    String name =
        switch (column.need()) {
          case KEY -> "**" + column.name() + "**";
          case REQUIRED -> column.name() + "!";
          case OPTIONAL -> column.name();
        };
    return "| %s | %s | %s | %s%s |%n"
        .formatted(
            column.index() == 0 ? "`" + kind.word() + "`" : "",
            name,
            inWords(column.type()),
            column.meaning(),
            column.whenEmpty().map(value -> " (" + value + " if empty)").orElse(""));
  }

  private static String inWords(CellType<?> type) {
    if (type instanceof CellType.Word<?> word) {
      return words(word).stream().map(one -> "`" + one + "`").collect(Collectors.joining(", "));
    } else if (type instanceof CellType.Whole whole) {
      return "whole number %d to %d".formatted(whole.least(), whole.most());
    } else if (type instanceof CellType.Decimal decimal) {
      return "number %.0f to %.0f".formatted(decimal.least(), decimal.most());
    } else if (type instanceof CellType.Hours hours) {
      return "hours 0 to " + hours.most();
    } else if (type instanceof CellType.Day) {
      return "date";
    } else if (type instanceof CellType.Moment) {
      return "date, or moment with offset";
    } else if (type instanceof CellType.ComponentName || type instanceof CellType.PartName) {
      return "name of the catalogue";
    }
    return "text";
  }

  private static <E extends Enum<E> & Written> List<String> words(CellType.Word<E> type) {
    return Written.words(type.words());
  }

  @Test
  void theGuideListsThePublishedTables() throws IOException {
    assertInGuide(
        "tables.md",
        PublishedTables.all().stream()
            .map(spec -> "| `%s` | %s | %s |%n".formatted(spec.name(), spec.meaning(), own(spec)))
            .collect(
                Collectors.joining(
                    "", "| table | meaning | its own columns |\n|---|---|---|\n", "")));
  }

  /** The columns that not every table of figures has; such a table gives a verdict. */
  private static String own(TableSpec spec) {
    return spec.columns().stream()
        .filter(
            column ->
                !PublishedTables.all().stream()
                    .filter(other -> other.columns().contains(EvidenceColumns.VERDICT))
                    .allMatch(other -> other.columns().contains(column)))
        .map(TableColumn::name)
        .collect(Collectors.joining(", "));
  }

  @Test
  void theGuideListsTheMethodsOfEstimate() throws IOException {
    Path methods = HOME.resolve("src/main/java/leadline/estimate/Methods.java");
    assertInGuide(
        "methods.md",
        Files.readString(methods)
            .lines()
            .filter(line -> line.startsWith(" * |"))
            .map(line -> line.substring(3) + "\n")
            .collect(Collectors.joining()));
  }

  @Test
  void everyPackageIsInTheGuide() throws IOException {
    String guide = Files.readString(HOME.resolve("DEVELOPERS.md"));
    try (Stream<Path> packages = Files.list(HOME.resolve("src/main/java/leadline"))) {
      for (Path one : packages.filter(Files::isDirectory).toList()) {
        String row = "| `" + one.getFileName() + "` |";
        assertTrue(guide.contains(row), row);
      }
    }
  }

  @Test
  void theReadmesTestCommandIsWhatCiRuns() throws IOException {
    String command = "mvn -B verify";
    assertTrue(Files.readString(HOME.resolve("README.md")).contains("\n" + command + " "));
    assertTrue(
        Pattern.compile("^" + command + " 2>&1", Pattern.MULTILINE)
            .matcher(Files.readString(HOME.resolve(".ci/run")))
            .find());
  }

  private static void assertInGuide(String name, String text) throws IOException {
    Path written = Files.createDirectories(HOME.resolve("target/docs")).resolve(name);
    Files.writeString(written, text);
    String guide = Files.readString(HOME.resolve("DEVELOPERS.md"));
    assertEquals(true, guide.contains(text), "DEVELOPERS.md should hold the text of " + written);
  }
}
