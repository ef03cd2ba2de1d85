package leadline.sample;

import java.util.EnumMap;
import java.util.Map;

/** How often each record error happens: a share from 0 to 1, none where it is not named. */
public record ErrorRates(Map<RecordError, Double> shares) {

  /** Not a single error: a fleet whose records say all that they say truly. */
  public static final ErrorRates NONE = new ErrorRates(Map.of());

  public ErrorRates {
    shares = Map.copyOf(shares);
    shares.values().forEach(Shares::check);
  }

  public static ErrorRates usual() {
    Map<RecordError, Double> usual = new EnumMap<>(RecordError.class);
    for (RecordError error : RecordError.values()) {
      usual.put(error, error.usual());
    }
    return new ErrorRates(usual);
  }

  public ErrorRates with(RecordError error, double share) {
    Map<RecordError, Double> changed = new EnumMap<>(RecordError.class);
    changed.putAll(shares);
    changed.put(error, share);
    return new ErrorRates(changed);
  }

  double of(RecordError error) {
    return shares.getOrDefault(error, 0.0);
  }
}
