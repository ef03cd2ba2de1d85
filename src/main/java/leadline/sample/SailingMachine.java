package leadline.sample;

import java.time.LocalDate;

/**
 * A machine on its vessel through the years.
 *
 * @param mostGone share of the first interval of a unit that may have gone by when the machine's
 *     days in the sample begin
 */
record SailingMachine(
    VesselCharacter vessel, MachineDesign design, MachineDays days, double mostGone) {

  /** What was before the records must be long enough for parts of every age to be about. */
  private static final int YEARS_BEFORE = 4;

  private static final double MID_LIFE = 1;

  /** On a new machine all units begin together; some are done early so that they part. */
  private static final double NEW = .4;

  static SailingMachine of(
      VesselCharacter vessel, MachineDesign design, FleetPlan plan, Draw draw) {
    LocalDate first = vessel.inServiceOn().orElse(plan.firstDay().minusYears(YEARS_BEFORE));
    MachineDays days = MachineDays.run(first, plan.lastDay(), design.running(), draw);
    return vessel.inServiceOn().isPresent()
        ? new SailingMachine(vessel, design, days.beginningStill(), NEW)
        : new SailingMachine(vessel, design, days, MID_LIFE);
  }

  double hazardFactor() {
    return vessel.hazardFactor() * design.hazardFactor();
  }
}
