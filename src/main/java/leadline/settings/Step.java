package leadline.settings;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.quantity.ReportMonth;

/** A step of a job. Paths are absolute. */
public sealed interface Step {

  /**
   * Takes exports into the lake.
   *
   * @param inbox the folder of exports
   */
  record Ingest(Path inbox) implements Step {}

  /**
   * Reads the files of a batch again, as a new batch in its place.
   *
   * @param inbox the folder where they lie now; where none is given, the one they were read from
   */
  record ReadAgain(String batch, Optional<Path> inbox) implements Step {}

  /** Takes a batch back. */
  record Withdraw(String batch) implements Step {}

  /**
   * Makes a month's summary tables from the records of the lake.
   *
   * @param month a month that has ended
   * @param knownAt the moment whose knowledge is used; the newest batch where none is given
   */
  record Compute(ReportMonth month, Optional<Instant> knownAt) implements Step {}

  /**
   * Writes a month's tables into a folder.
   *
   * @param month a month that has ended
   * @param out the folder in which the month's own folder is made
   */
  record Publish(ReportMonth month, Path out, RunChoice choice) implements Step {}

  /**
   * Upkeep of the lake.
   *
   * @param olderThan how long a reader may take: whatever one that began within this time may have
   *     met stays
   * @param runsKept the newest so many runs are kept of those alike in month, known-at and settings
   * @param publications folders of published months, whose runs are kept
   */
  record Tidy(Duration olderThan, int runsKept, List<Path> publications) implements Step {

    /** As {@link ShortTime} reads it. */
    public static final String DEFAULT_OLDER_THAN = "7d";

    public static final int DEFAULT_RUNS_KEPT = 1;

    public Tidy {
      if (runsKept < 1) {
        throw new IllegalArgumentException("at least the newest run is kept, not " + runsKept);
      }
      publications = List.copyOf(publications);
    }
  }

  /** Which of a month's runs is published. */
  sealed interface RunChoice {

    /** The newest run on all that is known. */
    record Newest() implements RunChoice {}

    /** The newest run on what was known at a moment. */
    record KnownAt(Instant at) implements RunChoice {}

    /** The run of this name. */
    record Named(String run) implements RunChoice {}
  }
}
