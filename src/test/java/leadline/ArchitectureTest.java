package leadline;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The package table of the contributors' guide is a rule, its column of libraries included. */
class ArchitectureTest {

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("leadline");

  private static final String JSON = "com.fasterxml.jackson..";
  private static final String PARQUET = "org.apache.parquet..";

  /** Parquet's and Iceberg's own signatures name its configuration. */
  private static final String HADOOP = "org.apache.hadoop.conf..";

  /** Lowest first: a package imports only from those before it. */
  private static final List<Row> TABLE =
      List.of(
          row("origin"),
          row("quantity"),
          row("fleet"),
          row("problem"),
          row("stats", "org.hipparchus.."),
          row("settings", JSON, "com.networknt.."),
          row(
              "intake",
              JSON,
              "de.siegmar.fastcsv..",
              "org.dhatim.fastexcel.reader..",
              "org.apache.commons.compress.."),
          row("history"),
          row("summary"),
          row("publish", JSON, PARQUET, HADOOP, "org.dhatim.fastexcel.."),
          row("chart"),
          row("page", "gg.jte.."),
          row("sample", "org.hipparchus.."),
          row("estimate", JSON, "de.siegmar.fastcsv.."),
          row("lake", PARQUET, HADOOP, "org.apache.spark..", "org.apache.iceberg..", "scala.."),
          row("job", "org.apache.spark..", "scala.."),
          row("cli", "picocli.."));

  private record Row(String name, List<String> libraries) {}

  private static Row row(String name, String... libraries) {
    return new Row(name, List.of(libraries));
  }

  static Stream<Row> rows() {
    return TABLE.stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void importsOnlyFromBelowAndFromItsLibraries(Row row) {
    List<String> allowed = new ArrayList<>(List.of("java..", "org.jspecify.annotations.."));
    for (Row below : TABLE) {
      allowed.add("leadline." + below.name());
      if (below.equals(row)) {
        break;
      }
    }
    allowed.addAll(row.libraries());
    classes()
        .that()
        .resideInAPackage("leadline." + row.name())
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed.toArray(String[]::new))
        .check(PROGRAM);
  }

  @Test
  void everyPackageStandsInTheTable() {
    Set<String> packages =
        PROGRAM.stream().map(type -> type.getPackageName()).collect(Collectors.toSet());
    Set<String> listed =
        TABLE.stream().map(row -> "leadline." + row.name()).collect(Collectors.toSet());
    assertEquals(new TreeSet<>(listed), new TreeSet<>(packages));
  }

  @Test
  void noCycles() {
    slices().matching("leadline.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void theRuleSeesTheProgram() {
    assertFalse(PROGRAM.isEmpty());
  }

  /** {@code Encoders.bean} on a record silently yields an empty struct. */
  @Test
  void noBeanEncoders() {
    assertFalse(
        PROGRAM.stream()
            .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
            .anyMatch(
                use -> use.getTargetClass().getName().equals("org.apache.spark.sql.Encoders")));
  }
}
