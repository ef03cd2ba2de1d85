package leadline.lake;

import java.util.List;
import java.util.stream.Stream;

/**
 * The lake counted again, from its files: what every committed batch and run tells of its rows,
 * against the rows that are there. Writes nothing, starts no engine, and may be run beside a
 * writer.
 */
public record Recount(List<Batch> batches, List<Run> runs, List<Disagreement> disagreements) {

  public Recount {
    batches = List.copyOf(batches);
    runs = List.copyOf(runs);
    disagreements = List.copyOf(disagreements);
  }

  /** The accounts are read first: whatever they tell of was in the tables before. */
  public static Recount of(Lake lake) {
    List<Batch> batches = lake.batches().committed();
    List<Run> runs = lake.runs().committed();
    return new Recount(
        batches,
        runs,
        Stream.concat(
                new BatchRecount(lake, batches).disagreements().stream(),
                new RunRecount(lake, runs).disagreements().stream())
            .toList());
  }
}
