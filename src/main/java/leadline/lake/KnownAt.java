package leadline.lake;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.origin.BatchTimes;
import leadline.summary.IntakeStanding;

/**
 * The batches and withdrawals committed up to a moment: what was known then. Rows of batches that
 * did not count then are invisible.
 *
 * @param at when the newest of them was committed
 * @param batches the oldest first
 */
public record KnownAt(Instant at, List<Batch> batches, List<Withdrawal> withdrawals) {

  public KnownAt {
    batches = List.copyOf(batches);
    withdrawals = List.copyOf(withdrawals);
  }

  /** What was known at a moment; nothing where no batch was committed by then. */
  static Optional<KnownAt> of(Instant moment, List<Batch> batches, List<Withdrawal> withdrawals) {
    List<Batch> known =
        batches.stream().filter(batch -> !batch.committedAt().isAfter(moment)).toList();
    List<Withdrawal> takenBack =
        withdrawals.stream().filter(withdrawal -> !withdrawal.at().isAfter(moment)).toList();
    return Stream.concat(
            known.stream().map(Batch::committedAt), takenBack.stream().map(Withdrawal::at))
        .max(Comparator.naturalOrder())
        .map(at -> new KnownAt(at, known, takenBack));
  }

  public Optional<Batch> batch(String id) {
    return batches.stream().filter(batch -> batch.id().equals(id)).findFirst();
  }

  /** The batches that count: neither withdrawn nor read again. */
  public List<Batch> counting() {
    return batches.stream().filter(batch -> standing(batch) == IntakeStanding.COUNTS).toList();
  }

  public IntakeStanding standing(Batch batch) {
    if (withdrawal(batch).isPresent()) {
      return IntakeStanding.WITHDRAWN;
    }
    return readAgainAs(batch).isPresent() ? IntakeStanding.READ_AGAIN : IntakeStanding.COUNTS;
  }

  public Optional<Withdrawal> withdrawal(Batch batch) {
    return withdrawals.stream()
        .filter(withdrawal -> withdrawal.batch().equals(batch.id()))
        .findFirst();
  }

  /** The batch that took this one's place. */
  public Optional<Batch> readAgainAs(Batch batch) {
    return batches.stream()
        .filter(other -> other.delivery().inPlaceOf().filter(batch.id()::equals).isPresent())
        .findFirst();
  }

  /**
   * The batch's place in the order of arrival: its own, or that of the batch whose files it read
   * again, so that reading again never makes an old export win over a later one.
   */
  long place(Batch batch) {
    return batch
        .delivery()
        .inPlaceOf()
        .flatMap(this::batch)
        .map(this::place)
        .orElse(batch.sequence());
  }

  /** The vessels' newest identifiers, by what the sources of these batches say. */
  VesselNames vesselNames() {
    return VesselNames.after(
        counting().stream()
            .sorted(Comparator.comparing(this::place))
            .map(batch -> batch.delivery().source().renamed())
            .toList());
  }

  /** The places of the batches that count. */
  Map<String, Long> placeOfBatch() {
    return new TreeMap<>(counting().stream().collect(Collectors.toMap(Batch::id, this::place)));
  }

  /** When the batch of each place in the order of arrival was committed, and the newest of all. */
  public BatchTimes times() {
    return new BatchTimes(
        batches.stream().collect(Collectors.toMap(Batch::sequence, Batch::committedAt)), at);
  }
}
