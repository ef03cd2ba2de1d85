package leadline.summary;

import java.io.Serializable;
import java.time.Instant;

/**
 * A column of a published table: the one place that states its name, type, unit, need and meaning.
 *
 * @param name ends in the unit: {@code _h}, {@code _per_million_h}, {@code _share}
 * @param unit the unit in words, or {@code 1} for a count or share, or empty for words
 */
public record TableColumn<T>(String name, ValueType<T> type, String unit, Need need, String meaning)
    implements Serializable {

  /** Whether every row has a value. */
  public enum Need {
    /** Names the row together with the other keys. */
    KEY,
    REQUIRED,
    /** Empty where the data do not support a value. */
    OPTIONAL
  }

  static TableColumn<String> key(String name, String meaning) {
    return new TableColumn<>(name, new ValueType.Text(), "", Need.KEY, meaning);
  }

  static TableColumn<Instant> keyMoment(String name, String meaning) {
    return new TableColumn<>(name, new ValueType.Moment(), "", Need.KEY, meaning);
  }

  static TableColumn<Double> keyReal(String name, String unit, String meaning) {
    return new TableColumn<>(name, new ValueType.Real(), unit, Need.KEY, meaning);
  }

  static TableColumn<String> text(String name, String meaning) {
    return new TableColumn<>(name, new ValueType.Text(), "", Need.REQUIRED, meaning);
  }

  static TableColumn<Instant> moment(String name, String meaning) {
    return new TableColumn<>(name, new ValueType.Moment(), "", Need.REQUIRED, meaning);
  }

  /** A text, empty where there is nothing to say. */
  static TableColumn<String> remark(String name, String meaning) {
    return new TableColumn<>(name, new ValueType.Text(), "", Need.OPTIONAL, meaning);
  }

  static TableColumn<Long> count(String name, String meaning) {
    return new TableColumn<>(name, new ValueType.Count(), "1", Need.REQUIRED, meaning);
  }

  /** A real number that every row has. */
  static TableColumn<Double> given(String name, String unit, String meaning) {
    return new TableColumn<>(name, new ValueType.Real(), unit, Need.REQUIRED, meaning);
  }

  /** A real number, empty where the data do not support one. */
  static TableColumn<Double> real(String name, String unit, String meaning) {
    return new TableColumn<>(name, new ValueType.Real(), unit, Need.OPTIONAL, meaning);
  }
}
