package leadline.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Position;
import leadline.fleet.Reason;

/**
 * An overhaul as it really was.
 *
 * @param tenths that the machine had turned, since its first day in the sample
 * @param serials of the items out and in; none where the component has no serials
 */
record TrueOverhaul(
    Position position,
    LocalDate day,
    long tenths,
    Optional<Serials> serials,
    Reason reason,
    List<TrueFinding> findings) {

  record Serials(String removed, String fitted) {
    boolean isSwap() {
      return !removed.equals(fitted);
    }
  }
}
