package leadline.sample;

import java.util.List;

/**
 * What makes parts of one kind fail sooner here than there, or now than then.
 *
 * @param vesselVariance variance of the vessels' factors on the hazard, gamma distributed with mean
 *     1; 0 for vessels all alike
 * @param engineTypes the types from which each vessel's main engine is drawn, all as likely; a type
 *     may stand there more than once
 * @param fuelFactor factor on the hazard of parts in the fuel's way, from the change of fuel on
 * @param nozzleLifeFactor factor on the characteristic life of nozzles fitted new from the change
 *     of the nozzle's type on
 * @param revelation factor, 0 to 1, on the chance that a failure that may stay unseen shows in
 *     service; 0 for none that does
 */
public record Influences(
    double vesselVariance,
    List<EngineType> engineTypes,
    double fuelFactor,
    double nozzleLifeFactor,
    double revelation) {

  /** Gamma with shape 6; three engines in four of type A or B; the changes of fuel and nozzle. */
  public static final Influences USUAL =
      new Influences(
          1 / 6.0,
          List.of(
              EngineType.A,
              EngineType.A,
              EngineType.A,
              EngineType.B,
              EngineType.B,
              EngineType.B,
              EngineType.C,
              EngineType.C),
          1.15,
          1.2,
          1);

  /** Every part of one name fails by one and the same distribution. */
  public static final Influences NONE = new Influences(0, List.of(EngineType.A), 1, 1, 1);

  public Influences {
    engineTypes = List.copyOf(engineTypes);
    Shares.check(revelation);
    if (!(vesselVariance >= 0 && fuelFactor > 0 && nozzleLifeFactor > 0) || engineTypes.isEmpty()) {
      throw new IllegalArgumentException("factors are positive, and some engine type is named");
    }
  }

  public Influences withVesselVariance(double variance) {
    return new Influences(variance, engineTypes, fuelFactor, nozzleLifeFactor, revelation);
  }

  public Influences withRevelation(double factor) {
    return new Influences(vesselVariance, engineTypes, fuelFactor, nozzleLifeFactor, factor);
  }
}
