package leadline.sample;

/** The invented types of two-stroke main engines, with the factor on the hazard of all parts. */
public enum EngineType {
  A("TWS-A", 1.0),
  B("TWS-B", 1.25),
  C("TWS-C", 0.8);

  private final String model;
  private final double hazardFactor;

  EngineType(String model, double hazardFactor) {
    this.model = model;
    this.hazardFactor = hazardFactor;
  }

  String model() {
    return model;
  }

  public double hazardFactor() {
    return hazardFactor;
  }
}
