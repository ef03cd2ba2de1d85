package leadline.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/** What an operation took of the processors, compiler and collector of the process included. */
public final class ProcessorTime implements InternalProfiler {

  static final String MICROSECONDS = "processor";

  private final OperatingSystemMXBean system =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  private long before;

  @Override
  public String getDescription() {
    return "Processor time of the process, an operation.";
  }

  @Override
  public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
    before = system.getProcessCpuTime();
  }

  @Override
  public Collection<? extends Result<?>> afterIteration(
      BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
    double nanoseconds = system.getProcessCpuTime() - before;
    return List.of(
        new ScalarResult(
            MICROSECONDS,
            nanoseconds / 1e3 / result.getMetadata().getAllOps(),
            "us/op",
            AggregationPolicy.AVG));
  }
}
