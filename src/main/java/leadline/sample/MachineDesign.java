package leadline.sample;

import java.util.ArrayList;
import java.util.List;

/**
 * A machine as it was delivered.
 *
 * @param name on its vessel
 * @param kind in the catalogue's words
 * @param hazardFactor of the type, on all its parts
 */
record MachineDesign(
    String name,
    String kind,
    String model,
    int cylinders,
    int placesPerCylinder,
    Running running,
    double hazardFactor) {

  private static final int GENERATORS = 3;

  /** Cylinders 5, 6, 7 and 8 with chances .15, .50, .25 and .10. */
  private static final List<Integer> CYLINDERS_IN_20 =
      List.of(5, 5, 5, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6, 7, 7, 7, 7, 7, 8, 8);

  /** Two or three injectors a cylinder with chances .6 and .4. */
  private static final List<Integer> INJECTORS_IN_5 = List.of(2, 2, 2, 3, 3);

  /** A main engine of the type, three generators, and an air compressor. */
  static List<MachineDesign> ofVessel(EngineType type, Draw draw) {
    List<MachineDesign> machines = new ArrayList<>();
    machines.add(
        new MachineDesign(
            "ME",
            "main-engine",
            type.model(),
            draw.oneOf(CYLINDERS_IN_20),
            draw.oneOf(INJECTORS_IN_5),
            Running.MAIN_ENGINE,
            type.hazardFactor()));
    int cylinders = draw.among(5, 7);
    for (int number = 1; number <= GENERATORS; number++) {
      machines.add(
          new MachineDesign(
              "DG" + number, "generator-engine", "FGS-4", cylinders, 1, Running.GENERATOR, 1));
    }
    machines.add(new MachineDesign("AC", "air-compressor", "ACR-2", 2, 2, Running.COMPRESSOR, 1));
    return machines;
  }
}
