package leadline.bench;

import java.io.IOException;
import org.apache.spark.sql.SparkSession;

/**
 * The least that a Spark program does: a session, one small CSV file read, one Parquet file
 * written. {@code src/bench/demo-cost} measures the demo against it.
 */
public final class BareSession {

  private BareSession() {}

  /** Takes the CSV file to read and the folder to write. */
  public static void main(String[] arguments) throws IOException {
    try (SparkSession session =
        SparkSession.builder()
            .appName("bare session")
            .master("local[*]")
            .config("spark.driver.host", "127.0.0.1")
            .config("spark.driver.bindAddress", "127.0.0.1")
            .config("spark.ui.enabled", "false")
            .config("spark.ui.showConsoleProgress", "false")
            .getOrCreate()) {
      session
          .read()
          .option("header", "true")
          .csv(arguments[0])
          .coalesce(1)
          .write()
          .parquet(arguments[1]);
    }
  }
}
