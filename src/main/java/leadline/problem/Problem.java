package leadline.problem;

import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.origin.FileDigest;
import leadline.origin.Origin;

/** A contradiction in the records of a vessel, met when its history was rebuilt. */
public interface Problem extends Serializable {

  String vessel();

  /** The record in question, as the ship names it. */
  String record();

  Origin origin();

  /** Every record in contradiction, {@link #origin()} among them. */
  default List<Origin> origins() {
    return List.of(origin());
  }

  /**
   * When what is missing became due; none where the problem stands in what was sent, and is as old
   * as the records in contradiction.
   */
  default Optional<Instant> dueSince() {
    return Optional.empty();
  }

  /** The component that is missing in the records, where no row of {@link #origins()} names it. */
  default Optional<String> componentUnnamed() {
    return Optional.empty();
  }

  /** The question to the ship, in one sentence; the evidence tells the rest. */
  default String question() {
    return "What is right about %s?".formatted(record());
  }

  /** What is wrong, with the figures, and what was made of it, in words for the ship. */
  String evidence();

  /** What would settle it, in words for the ship. */
  String request();

  /** Evidence and request. */
  default String sentence() {
    return evidence() + " " + request();
  }

  /** The kind's name, such as {@code impossible-reading}. */
  default String kind() {
    return RuleName.of(getClass());
  }

  /**
   * The question's identifier: {@code Q-} and the first 10 hexadecimal digits of the SHA-256 of
   * {@code vessel|kind|record}. It is the same as long as the problem lasts, whatever was corrected
   * meanwhile.
   */
  default String query() {
    String words = String.join("|", vessel(), kind(), record());
    return "Q-" + FileDigest.of(words.getBytes(StandardCharsets.UTF_8)).hex().substring(0, 10);
  }
}
