package leadline.sample;

import leadline.sample.PartModel.Change;

/**
 * The change of fuel as a machine sees it at a moment.
 *
 * @param tenths running hours to the change; negative after it
 * @param factor on the hazard of the parts that it touches, from the change on
 */
record Fuel(long tenths, double factor) {

  /** Longer than any machine runs, and still exact as a number of tenths. */
  private static final long NEVER = 1L << 40;

  double factorNow(PartModel model) {
    return isTouched(model) && tenths <= 0 ? factor : 1;
  }

  double factorLater(PartModel model) {
    return isTouched(model) ? factor : 1;
  }

  long tenthsToChange(PartModel model) {
    return isTouched(model) && tenths > 0 ? tenths : NEVER;
  }

  private static boolean isTouched(PartModel model) {
    return model.changes().contains(Change.FUEL);
  }
}
