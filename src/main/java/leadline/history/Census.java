package leadline.history;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import leadline.fleet.RecordKind;

/** How many stored rows of each kind are current, and what became of the others. */
public record Census(Map<RecordKind, Count> counts) implements Serializable {

  public static final Census EMPTY = new Census(Map.of());

  /** Holds a count for every kind, so that equal censuses are equal. */
  public Census {
    Map<RecordKind, Count> all = new EnumMap<>(RecordKind.class);
    for (RecordKind kind : RecordKind.values()) {
      all.put(kind, counts.getOrDefault(kind, Count.NONE));
    }
    counts = Collections.unmodifiableMap(all);
  }

  public Count of(RecordKind kind) {
    return counts.getOrDefault(kind, Count.NONE);
  }

  public Census plus(Census other) {
    return new Census(
        Arrays.stream(RecordKind.values())
            .collect(Collectors.toMap(kind -> kind, kind -> of(kind).plus(other.of(kind)))));
  }

  /**
   * Stored rows of one kind.
   *
   * @param duplicate rows that say what an earlier arrival of the same record said
   * @param superseded versions that a later version replaced
   * @param withdrawn records whose standing version is cancelled, or that were deleted
   */
  public record Count(long current, long duplicate, long superseded, long withdrawn)
      implements Serializable {

    static final Count NONE = new Count(0, 0, 0, 0);

    public long stored() {
      return current + duplicate + superseded + withdrawn;
    }

    /** The same rows, with none current. */
    Count allWithdrawn() {
      return new Count(0, duplicate, superseded, current + withdrawn);
    }

    Count plus(Count other) {
      return new Count(
          current + other.current,
          duplicate + other.duplicate,
          superseded + other.superseded,
          withdrawn + other.withdrawn);
    }
  }
}
