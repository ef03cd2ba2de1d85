package leadline.settings;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import leadline.fleet.Catalogue;
import leadline.fleet.ItemExchange;
import leadline.quantity.RunningHours;

/**
 * What a job file says.
 *
 * @param lake the folder of the lake that all steps use, absolute
 * @param catalogue the catalogue in force, with the job's own policy intervals
 * @param hoursTolerance how far the hours that an overhaul states may lie outside the bounds of the
 *     hour series and still be trusted
 * @param exchange the vessels that exchange items
 * @param lockWait how long to wait for another writer of the lake to finish
 * @param steps at least one, in order
 */
public record Job(
    Path lake,
    Catalogue catalogue,
    RunningHours hoursTolerance,
    ItemExchange exchange,
    Duration lockWait,
    List<Step> steps) {

  /** 24 h, one day of records' imprecision; common practice, no source. */
  public static final RunningHours DEFAULT_HOURS_TOLERANCE = RunningHours.ofHours(24);

  public static final Duration DEFAULT_LOCK_WAIT = Duration.ofSeconds(60);

  public Job {
    steps = List.copyOf(steps);
  }
}
