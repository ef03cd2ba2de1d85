package leadline.sample;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadline.fleet.Position;
import leadline.fleet.RecordKind;

/** Serials wrongly written where spares change places. */
final class SerialSlips {

  private static final String LETTERS = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";

  private final ErrorRates rates;
  private final ErrorList errors;
  private final Draw draw;

  /** What is really fitted, by position. */
  private final Map<Position, String> fitted = new LinkedHashMap<>();

  SerialSlips(ErrorRates rates, ErrorList errors, Draw draw) {
    this.rates = rates;
    this.errors = errors;
    this.draw = draw;
  }

  /** The serials as written of an overhaul; overhauls come in time. */
  TrueOverhaul.Serials written(Position position, TrueOverhaul.Serials serials, String overhaul) {
    fitted.put(position, serials.fitted());
    if (!serials.isSwap()) {
      return serials;
    } else if (draw.chance(rates.of(RecordError.SERIAL_MISTYPED))) {
      return mistyped(serials, overhaul);
    }
    return fitted.size() > 1 && draw.chance(rates.of(RecordError.SERIAL_OF_ANOTHER))
        ? ofAnother(position, serials, overhaul)
        : serials;
  }

  private TrueOverhaul.Serials mistyped(TrueOverhaul.Serials serials, String overhaul) {
    boolean isRemoved = draw.chance(.5);
    String truth = isRemoved ? serials.removed() : serials.fitted();
    plant(RecordError.SERIAL_MISTYPED, overhaul, truth);
    return isRemoved
        ? new TrueOverhaul.Serials(mistyped(truth), serials.fitted())
        : new TrueOverhaul.Serials(serials.removed(), mistyped(truth));
  }

  /** One letter or digit becomes another. */
  private String mistyped(String serial) {
    int place = draw.below(serial.length());
    char letter = LETTERS.charAt(draw.below(LETTERS.length()));
    while (letter == serial.charAt(place)) {
      letter = LETTERS.charAt(draw.below(LETTERS.length()));
    }
    return serial.substring(0, place) + letter + serial.substring(place + 1);
  }

  private TrueOverhaul.Serials ofAnother(
      Position position, TrueOverhaul.Serials serials, String overhaul) {
    List<String> elsewhere =
        fitted.entrySet().stream()
            .filter(entry -> !entry.getKey().equals(position))
            .map(Map.Entry::getValue)
            .toList();
    plant(RecordError.SERIAL_OF_ANOTHER, overhaul, serials.fitted());
    return new TrueOverhaul.Serials(serials.removed(), draw.oneOf(elsewhere));
  }

  private void plant(RecordError kind, String overhaul, String truth) {
    errors.add(kind, RecordKind.OVERHAULS.word(), overhaul, "", truth);
  }
}
