package leadline.lake;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.iceberg.exceptions.NotFoundException;
import org.apache.iceberg.exceptions.RuntimeIOException;
import org.apache.iceberg.jdbc.UncheckedSQLException;
import org.apache.parquet.io.ParquetDecodingException;

/** Tells a file of the lake that cannot be used from a fault of the program. */
public final class Damage {

  /** Parquet says so by a {@link RuntimeException} that names no file. */
  private static final String NOT_PARQUET = "is not a Parquet file";

  /** As Linux says it, then as SQLite does. */
  private static final List<String> FULL =
      List.of("No space left on device", "Disk quota exceeded", "SQLITE_FULL");

  private static final List<String> READ_ONLY = List.of("Read-only file system", "SQLITE_READONLY");

  /** As Iceberg says it of a table that was written to more than a minute later than now. */
  private static final List<String> CLOCK_BEHIND =
      List.of("Invalid update timestamp", "Expected sorted snapshot log entries");

  private Damage() {}

  /** The damage in words, where the fault comes from a file of the lake or from its disk. */
  public static Optional<LakeException> in(Path lake, Throwable fault) {
    return causes(fault)
        .filter(Damage::isDamage)
        .reduce((outer, inner) -> inner)
        .map(damage -> new LakeException(sentence(lake, damage), fault));
  }

  private static Stream<Throwable> causes(Throwable fault) {
    return Stream.iterate(fault, cause -> cause != null, Throwable::getCause);
  }

  private static boolean isDamage(Throwable fault) {
    return says(FULL, fault)
        || says(READ_ONLY, fault)
        || says(CLOCK_BEHIND, fault)
        || fault instanceof NotFoundException
        || fault instanceof RuntimeIOException
        || fault instanceof UncheckedSQLException
        || fault instanceof ParquetDecodingException
        || String.valueOf(fault.getMessage()).contains(NOT_PARQUET);
  }

  private static boolean says(List<String> words, Throwable fault) {
    return words.stream().anyMatch(String.valueOf(fault.getMessage())::contains);
  }

  private static String sentence(Path lake, Throwable damage) {
    String said =
        causes(damage)
            .map(cause -> String.valueOf(cause.getMessage()))
            .distinct()
            .collect(Collectors.joining(": "));
    if (says(FULL, damage)) {
      return "There is no room left for the lake %s or for temporary files (%s): make room, and run the same again. What was committed before stands."
          .formatted(lake, said);
    }
    if (says(READ_ONLY, damage)) {
      return "The lake %s cannot be written to (%s): mount it for writing, and run the same again."
          .formatted(lake, said);
    }
    if (says(CLOCK_BEHIND, damage)) {
      return "The clock of this machine is behind the last writing to the lake %s (%s): set the clock right, or wait until that moment has passed."
          .formatted(lake, said);
    }
    return "A file of the lake %s cannot be used: %s. If it is damaged or gone, bring the whole lake back from a backup; if the lake was moved, move it back."
        .formatted(lake, said);
  }
}
