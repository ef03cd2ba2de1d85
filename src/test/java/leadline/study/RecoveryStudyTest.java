package leadline.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A few fleets of the study, enough to see a rule of lives bend. */
@Tag("long")
class RecoveryStudyTest {

  private static final int SEEDS = 30;
  private static final String CHANCE = "failed_by_8000_h_share";

  private static Recovered chance(Scenario scenario) {
    Map<String, Recovered> recovered = RecoveryStudy.of(scenario, SEEDS);
    assertTrue(recovered.containsKey(CHANCE), scenario::name);
    return recovered.getOrDefault(CHANCE, new Recovered(0));
  }

  /** With 30 fleets, fewer than 25 covered has a chance of 0.001 at 95 %. */
  @Test
  void theRulesOfLivesGiveTheChanceBack() {
    Recovered chance = chance(Scenario.ALIKE);
    assertEquals(0.135, chance.medianEstimate(), 0.02);
    assertTrue(chance.published().share() >= 25 / 0.3, chance::toString);
  }

  @Test
  void aRuleBentBendsTheChance() {
    assertTrue(chance(Scenario.UNOPENED_SOUND).medianEstimate() < 0.115);
    assertTrue(chance(Scenario.FOUND_IS_JUST).medianEstimate() < 0.08);
    assertTrue(chance(Scenario.RUNNING_OUT).medianEstimate() > 0.2);
    assertTrue(chance(Scenario.ORIGIN_TAKEN_NEW).medianEstimate() > 0.2);
  }
}
