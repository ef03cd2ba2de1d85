package leadline.sample;

/**
 * The dated change of fuel on one machine.
 *
 * @param at tenths that the machine had turned by then
 * @param factor on the hazard of the parts that it touches
 */
record FuelChange(long at, double factor) {

  Fuel seenAt(long moment) {
    return new Fuel(at - moment, factor);
  }
}
