package leadline.fleet;

import java.io.Serializable;

/**
 * The longest that a component is to go between overhauls.
 *
 * @param length in running hours, or in whole months
 * @param source a document and its section, or {@code common practice, no source}
 */
public record OverhaulLimit<T extends Comparable<T> & Serializable>(
    LimitBy by, T length, String source) implements Serializable, Comparable<OverhaulLimit<T>> {

  /** The shorter first. */
  @Override
  public int compareTo(OverhaulLimit<T> other) {
    int byLength = length.compareTo(other.length);
    return byLength == 0 ? by.compareTo(other.by) : byLength;
  }
}
