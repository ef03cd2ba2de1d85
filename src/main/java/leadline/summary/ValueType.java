package leadline.summary;

import java.io.Serializable;

/**
 * What a published column holds.
 *
 * @param <T> the value's Java type
 */
public sealed interface ValueType<T> extends Serializable {

  /** Words. */
  record Text() implements ValueType<String> {}

  /** A whole number, not negative. */
  record Count() implements ValueType<Long> {}

  /** A real number, always finite. */
  record Real() implements ValueType<Double> {}

  /** A moment of UTC. */
  record Moment() implements ValueType<java.time.Instant> {}
}
