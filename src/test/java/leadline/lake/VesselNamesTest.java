package leadline.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class VesselNamesTest {

  @Test
  void aVesselThatWasNeverRenamedKeepsItsName() {
    assertEquals("teal", VesselNames.after(List.of(Map.of("plover", "curlew"))).newest("teal"));
  }

  /** plover became curlew and then dun-curlew: both former names lead to the last. */
  @Test
  void aVesselRenamedTwiceHasOneHistory() {
    VesselNames names =
        VesselNames.after(List.of(Map.of("plover", "curlew"), Map.of("curlew", "dun-curlew")));

    assertEquals("dun-curlew", names.newest("plover"));
    assertEquals("dun-curlew", names.newest("curlew"));
    assertEquals("dun-curlew", names.newest("dun-curlew"));
  }

  @Test
  void aVesselMayHaveItsFirstNameAgain() {
    VesselNames names =
        VesselNames.after(List.of(Map.of("plover", "curlew"), Map.of("curlew", "plover")));

    assertEquals("plover", names.newest("plover"));
    assertEquals("plover", names.newest("curlew"));
  }

  /** A source keeps its list of names in every inbox. */
  @Test
  void theSameRenamingAgainChangesNothing() {
    Map<String, String> renaming = Map.of("plover", "curlew");

    assertEquals(
        VesselNames.after(List.of(renaming)), VesselNames.after(List.of(renaming, renaming)));
  }
}
