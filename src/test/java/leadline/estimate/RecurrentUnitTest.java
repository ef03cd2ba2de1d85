package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecurrentUnitTest {

  @TempDir private Path folder;

  @Test
  void failuresAreInTimeOrderWithinEachUnit() throws IOException {
    List<RecurrentUnit> units =
        units("unit,time,event,start;B,9,1,2;A,4,1,;B,5,1,2;B,5,1,2;B,9,0,2;A,6,0,0");
    assertEquals(
        List.of(
            new RecurrentUnit("B", 2, 9, List.of(5.0, 5.0, 9.0)),
            new RecurrentUnit("A", 0, 6, List.of(4.0))),
        units);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          unit,time,event;A,4,1           | line 2, column event | no end of observation
          unit,time,event;A,4,0;A,5,0     | line 3, column event | a second end
          unit,time,event;A,4,2;A,5,0     | line 2, column event | neither 0 nor 1
          unit,time,event;A,6,1;A,5,0     | line 2, column time  | outside the time
          unit,time,event;A,0,1;A,5,0     | line 2, column time  | more than 0
          unit,time,event,start;A,5,0,5   | line 2, column time  | outside the time
          unit,time,event,start;A,4,1,1;A,5,0,2 | line 3, column start | differs
          """)
  void impossibleRowsAreRefused(String lines, String place, String fault) {
    UnusableData unusable = assertThrows(UnusableData.class, () -> units(lines));
    String message = String.valueOf(unusable.getMessage());
    assertTrue(message.contains(place) && message.contains(fault), message);
  }

  private List<RecurrentUnit> units(String lines) throws IOException {
    Path file = Files.writeString(folder.resolve("data.csv"), lines.replace(';', '\n') + "\n");
    return RecurrentUnit.of(DataFile.read(file));
  }
}
