package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import leadline.summary.TableRow;
import org.junit.jupiter.api.Test;

class PublishedTableTest {

  @Test
  void twoRowsOfOneKeyAreRefused() {
    TableRow row = SampleTable.rows().get(0);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> new PublishedTable(SampleTable.SPEC, List.of(row, row)));
    assertEquals(
        "sample_rates has two rows with the key [component-00, 2025-01-10T12:00:00Z]",
        refused.getMessage());
  }

  @Test
  void anEmptyTextIsRefusedSinceItWouldReadAsAbsent() {
    TableRow row =
        SampleTable.SPEC
            .row()
            .with(SampleTable.COMPONENT, "component-00")
            .with(SampleTable.KNOWN_AT, SampleTable.WHOLE_SECOND)
            .with(SampleTable.EVENTS, 1L)
            .with(SampleTable.REMARK, "")
            .build();
    assertThrows(
        IllegalArgumentException.class, () -> new PublishedTable(SampleTable.SPEC, List.of(row)));
  }
}
