package leadline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import leadline.fleet.Catalogue;
import leadline.fleet.ItemExchange;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

class RulesTest {

  @Test
  void theDigestTellsWhichVesselsExchangeItemsWhateverTheOrderTheyAreNamedIn() {
    String none = digest(ItemExchange.NONE);
    String two = digest(ItemExchange.among(List.of(List.of("a", "b"), List.of("c", "d"))));
    assertNotEquals(none, two);
    assertNotEquals(two, digest(ItemExchange.among(List.of(List.of("a", "c"), List.of("b", "d")))));
    assertEquals(two, digest(ItemExchange.among(List.of(List.of("d", "c"), List.of("b", "a")))));
  }

  private static String digest(ItemExchange exchange) {
    return new Rules(new Catalogue(List.of()), RunningHours.ofHours(24), exchange).digest();
  }
}
