package leadline.lake;

import java.nio.file.Path;
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

  private Damage() {}

  /** The damage in words, where the fault comes from a file of the lake. */
  public static Optional<LakeException> in(Path lake, Exception fault) {
    return Stream.iterate((Throwable) fault, cause -> cause != null, Throwable::getCause)
        .filter(Damage::isDamage)
        .reduce((outer, inner) -> inner)
        .map(damage -> new LakeException(sentence(lake, damage), fault));
  }

  private static boolean isDamage(Throwable fault) {
    return fault instanceof NotFoundException
        || fault instanceof RuntimeIOException
        || fault instanceof UncheckedSQLException
        || fault instanceof ParquetDecodingException
        || String.valueOf(fault.getMessage()).contains(NOT_PARQUET);
  }

  private static String sentence(Path lake, Throwable damage) {
    return "A file of the lake "
        + lake
        + " cannot be used: "
        + Stream.iterate(damage, cause -> cause != null, Throwable::getCause)
            .map(cause -> String.valueOf(cause.getMessage()))
            .distinct()
            .collect(Collectors.joining(": "))
        + ". If it is damaged or gone, bring the whole lake back from a backup; if the lake was"
        + " moved, move it back.";
  }
}
