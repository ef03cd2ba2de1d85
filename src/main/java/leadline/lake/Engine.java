package leadline.lake;

import java.util.Map;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;

/** The running Spark engine: local unless the submitter chose a master. */
public final class Engine implements AutoCloseable {

  /** What a local run needs; a submitter's own settings win. */
  private static final Map<String, String> LOCAL =
      Map.of(
          "spark.master", "local[*]",
          "spark.driver.host", "127.0.0.1",
          "spark.driver.bindAddress", "127.0.0.1",
          "spark.ui.enabled", "false",
          "spark.ui.showConsoleProgress", "false");

  private final JavaSparkContext context;

  private Engine(JavaSparkContext context) {
    this.context = context;
  }

  public static Engine start() {
    SparkConf conf = new SparkConf().setAppName("leadline");
    if (!conf.contains("spark.master")) {
      LOCAL.forEach(conf::setIfMissing);
    }
    return new Engine(new JavaSparkContext(conf));
  }

  JavaSparkContext context() {
    return context;
  }

  /** How many tasks to cut so many pieces of work into: no more than keep every core busy. */
  int slicesFor(int pieces) {
    return Math.max(1, Math.min(pieces, context.defaultParallelism()));
  }

  @Override
  public void close() {
    context.stop();
  }
}
