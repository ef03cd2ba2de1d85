package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.net.URISyntaxException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Source of every value: the README.md and expected.json beside the data of each case. */
class ReferenceCasesTest {

  static List<ReferenceCase> cases() throws IOException, URISyntaxException {
    return ReferenceCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyResultIsWithinItsTolerance(ReferenceCase reference) throws IOException {
    assertFalse(reference.results().isEmpty());
    assertEquals(List.of(), reference.differences());
  }

  @Test
  void thereAreCasesToMeet() throws IOException, URISyntaxException {
    assertFalse(cases().isEmpty());
  }
}
