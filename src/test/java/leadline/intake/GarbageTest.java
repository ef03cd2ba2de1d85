package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import leadline.fleet.RecordKind;
import leadline.fleet.StoredRow;
import org.junit.jupiter.api.Test;

/** Laws that hold for any bytes: reading never throws, and every line is accounted for once. */
class GarbageTest {

  private static final byte[] TROUBLE = "\",\n\r \0\t;xé1-.T".getBytes(StandardCharsets.UTF_8);
  private static final byte[] HEADER =
      "vessel,machine,read_at,hours,kind,remark\n".getBytes(StandardCharsets.UTF_8);

  private static byte[] goodRows() {
    StringBuilder text = new StringBuilder();
    for (int day = 1; day <= 28; day++) {
      text.append(String.format("V1,ME,2024-02-%02dT12:00Z,%d.5,counter,", day, day * 20));
      text.append(
          switch (day % 4) {
            case 0 -> "\"two\nlines, of \"\"text\"\"\"\r\n";
            case 1 -> "plain\n";
            case 2 -> "\"Düse, 5\"\" pipe\"\r";
            default -> "\n";
          });
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] mutated(byte[] good, SplittableRandom random) {
    byte[] bytes = good.clone();
    int changes = random.nextInt(1, 30);
    for (int i = 0; i < changes; i++) {
      bytes[random.nextInt(bytes.length)] =
          random.nextInt(4) == 0
              ? (byte) random.nextInt(256)
              : TROUBLE[random.nextInt(TROUBLE.length)];
    }
    return random.nextInt(3) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
  }

  private static byte[] behindHeader(byte[] rows) {
    byte[] bytes = Arrays.copyOf(HEADER, HEADER.length + rows.length);
    System.arraycopy(rows, 0, bytes, HEADER.length, rows.length);
    return bytes;
  }

  @Test
  void everyLineOfMutatedFilesIsAccountedForOnce() {
    SplittableRandom random = new SplittableRandom(4180);
    byte[] good = goodRows();
    long stored = 0;
    long refused = 0;
    for (int i = 0; i < 3_000; i++) {
      byte[] bytes = behindHeader(mutated(good, random));
      ReadExport read = ReadExport.of(RecordKind.HOURS, bytes);
      FileOutcome.FileTally tally = read.tally();
      assertEquals(tally.rowsRead(), tally.stored() + tally.refused());
      assertEquals(tally.stored(), read.stored().size());
      assertEquals(tally.refused(), read.refused().size());
      assertEquals(linesWithText(bytes), linesCovered(read));
      stored += tally.stored();
      refused += tally.refused();
    }
    assertTrue(stored > 10_000 && refused > 10_000, stored + " stored, " + refused + " refused");
  }

  @Test
  void bytesWithoutAnyOrderAreReadToo() {
    SplittableRandom random = new SplittableRandom(3629);
    for (int i = 0; i < 3_000; i++) {
      byte[] noise = new byte[random.nextInt(400)];
      random.nextBytes(noise);
      ReadExport.of(RecordKind.HOURS, noise);
      ReadExport read = ReadExport.of(RecordKind.HOURS, behindHeader(noise));
      assertEquals(linesWithText(behindHeader(noise)), linesCovered(read));
    }
  }

  /** The numbers of lines behind the header that are not blank, counted byte by byte. */
  private static List<Long> linesWithText(byte[] bytes) {
    String latin = new String(bytes, StandardCharsets.ISO_8859_1);
    String[] lines = latin.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
    List<Long> numbers = new ArrayList<>();
    for (int i = 1; i < lines.length; i++) {
      String line =
          new String(lines[i].getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
      if (!Blanks.isBlank(line)) {
        numbers.add(i + 1L);
      }
    }
    return numbers;
  }

  /** The numbers of the lines that rows say they come from; blank lines inside rows left out. */
  private static List<Long> linesCovered(ReadExport read) {
    List<Long> numbers = new ArrayList<>();
    for (StoredRow row : read.stored()) {
      cover(numbers, row.origin().line(), row.raw());
    }
    for (RefusedRow row : read.refused()) {
      cover(numbers, row.origin().line(), row.raw());
    }
    return numbers.stream().sorted().toList();
  }

  private static void cover(List<Long> numbers, long first, String raw) {
    String[] lines = raw.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      if (!Blanks.isBlank(lines[i])) {
        numbers.add(first + i);
      }
    }
  }

  @Test
  void aFileCutInTwoSaysTheSame() {
    String text = new String(goodRows(), StandardCharsets.UTF_8);
    ReadExport whole = ReadExport.of(RecordKind.HOURS, behindHeader(goodRows()));
    assertEquals(28, whole.tally().stored());
    for (StoredRow row : whole.stored()) {
      int cut = text.indexOf(row.raw());
      ReadExport first = half(text.substring(0, cut));
      ReadExport second = half(text.substring(cut));
      List<Object> cells = new ArrayList<>(first.cells());
      cells.addAll(second.cells());
      assertEquals(whole.cells(), cells);
    }
  }

  private static ReadExport half(String rows) {
    return ReadExport.of(RecordKind.HOURS, behindHeader(rows.getBytes(StandardCharsets.UTF_8)));
  }
}
