package leadline.summary;

import java.util.Collection;
import java.util.function.Predicate;
import leadline.fleet.Reason;
import leadline.stats.Limits;
import leadline.stats.Proportion;

/**
 * How many overhauls opened a part, and how many of those found it failed.
 *
 * @param planned the planned ones of the overhauled
 * @param plannedOpened the planned ones of the opened
 */
record OpeningCounts(long overhauled, long opened, long planned, long plannedOpened, long failed)
    implements Counts<OpeningCounts> {

  static final OpeningCounts NONE = new OpeningCounts(0, 0, 0, 0, 0);

  static OpeningCounts of(Collection<PartAtOverhaul> overhauls) {
    Predicate<PartAtOverhaul> isPlanned = overhaul -> overhaul.reason() == Reason.PLANNED;
    return new OpeningCounts(
        overhauls.size(),
        count(overhauls, PartAtOverhaul::isOpened),
        count(overhauls, isPlanned),
        count(overhauls, isPlanned.and(PartAtOverhaul::isOpened)),
        count(overhauls, overhaul -> overhaul.state().isFoundFailed()));
  }

  static long count(Collection<PartAtOverhaul> overhauls, Predicate<PartAtOverhaul> condition) {
    return overhauls.stream().filter(condition).count();
  }

  @Override
  public OpeningCounts plus(OpeningCounts other) {
    return new OpeningCounts(
        overhauled + other.overhauled,
        opened + other.opened,
        planned + other.planned,
        plannedOpened + other.plannedOpened,
        failed + other.failed);
  }

  boolean isAny() {
    return overhauled > 0;
  }

  Verdict verdict() {
    return verdictOn(failed);
  }

  /**
   * @param found how many of the opened
   */
  Verdict verdictOn(long found) {
    if (opened > 0 && isSelective()) {
      return Verdict.SELECTIVE_OPENING;
    }
    return Verdict.of(opened, found);
  }

  /** The share found failed, with its limits; nothing where none was opened. */
  TableRow.Builder in(TableRow.Builder row, EstimateColumns failedShare) {
    return in(row, failedShare, failed);
  }

  /**
   * @param found how many of the opened
   */
  TableRow.Builder in(TableRow.Builder row, EstimateColumns foundShare, long found) {
    if (opened == 0) {
      return row;
    }
    Proportion share = new Proportion(found, opened);
    Limits limits = share.clopperPearson(Evidence.CONFIDENCE);
    return row.with(foundShare, share.share(), limits);
  }

  Evidence evidence(Verdict verdict) {
    return new Evidence(failed, opened, overhauled, verdict);
  }

  /**
   * Whether less than 0.8 of the planned overhauls opened the part. Without a planned overhaul no
   * opening was routine.
   */
  boolean isSelective() {
    return planned == 0 || plannedOpened * 10 < planned * 8;
  }
}
