package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperTest {

  @Test
  void aTextThatIsLongerThanItsColumnIsWideNeedsMoreLines() {
    assertEquals(1, Paper.lines("", 70));
    assertEquals(1, Paper.lines("x".repeat(76), 70));
    assertEquals(2, Paper.lines("x".repeat(77), 70));
    assertEquals(3, Paper.lines("x".repeat(200), 70));
  }

  @Test
  void aRowIsAsHighAsItsLines(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a.xlsx");
    try (OutputStream bytes = Files.newOutputStream(file);
        Workbook workbook = new Workbook(bytes, "test", null)) {
      Worksheet sheet = workbook.newWorksheet("a");
      sheet.value(4, 0, "text");
      Paper.height(sheet, 4, 3);
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      String xml =
          new String(
              zip.getInputStream(zip.getEntry("xl/worksheets/sheet1.xml")).readAllBytes(),
              StandardCharsets.UTF_8);
      assertTrue(xml.contains("<row r=\"5\" ht=\"45.0\" customHeight=\"1\""), xml);
    }
  }
}
