package leadline.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The jar for an existing Spark brings what Spark has not, and nothing twice. */
class JarForSparkIT {

  private static final Set<String> CLASSES = Build.classes(Build.JAR_FOR_SPARK);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "org/apache/spark/",
        "org/apache/hadoop/",
        "scala/",
        "com/fasterxml/jackson/",
        "org/apache/parquet/column/",
        "org/apache/parquet/hadoop/",
        "org/apache/parquet/schema/",
        "org/apache/avro/",
        "org/apache/logging/",
        "org/slf4j/",
        "io/netty/"
      })
  void noneOf(String inSpark) {
    List<String> found = CLASSES.stream().filter(name -> name.startsWith(inSpark)).toList();

    assertEquals(List.of(), found);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "leadline/cli/Main.class",
        "org/apache/iceberg/Table.class",
        "org/apache/parquet/avro/AvroWriteSupport.class",
        "com/github/benmanes/caffeine/cache/Cache.class",
        "org/sqlite/JDBC.class",
        "picocli/CommandLine.class"
      })
  void one(String missingInSpark) {
    assertTrue(CLASSES.contains(missingInSpark));
  }

  @Test
  void everyClassOfTheProgram() {
    assertTrue(CLASSES.containsAll(Build.classes(Build.JAR)));
  }
}
