package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import leadline.fleet.HoursLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.StoredRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Line ends, the byte order mark, blank lines and quoted fields, against RFC 4180 section 2. */
class LinesTest {

  private static final String FILE =
      """
      vessel,machine,read_at,hours,kind,remark
      V1,ME,2024-03-01,100,counter,first
      V1,ME,2024-03-02,120,counter,"sea, rough"
      V1,ME,2024-03-03,140,counter,"said ""fine\"""
      """;

  private static ReadExport read(String text) {
    return ReadExport.of(RecordKind.HOURS, text);
  }

  private static List<String> remarks(ReadExport read) {
    return read.stored().stream()
        .map(row -> row.cells().find(HoursLayout.REMARK).orElse(""))
        .toList();
  }

  @Test
  void quotedFieldsHoldCommasAndDoubledQuotes() {
    assertEquals(List.of("first", "sea, rough", "said \"fine\""), remarks(read(FILE)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyLineEndReadsTheSame(String end) {
    ReadExport plain = read(FILE);
    ReadExport other = read(FILE.replace("\n", end));
    assertEquals(plain.stored(), withoutDigest(other, plain));
    assertEquals(List.of(2L, 3L, 4L), other.storedLines());
  }

  @Test
  void mixedLineEndsAndNoneAtTheEnd() {
    List<String> lines = FILE.lines().toList();
    ReadExport mixed =
        read(
            lines.get(0)
                + "\r"
                + lines.get(1)
                + "\r\n"
                + lines.get(2)
                + "\n\n\r\r\n"
                + lines.get(3));
    assertEquals(read(FILE).cells(), mixed.cells());
    assertEquals(List.of(2L, 3L, 7L), mixed.storedLines());
    assertEquals(3, mixed.tally().rowsRead());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7})
  void bytesMayArriveInPiecesOfAnySize(int piece) {
    byte[] bytes = FILE.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
    InputStream slow =
        new ByteArrayInputStream(bytes) {
          @Override
          public synchronized int read(byte[] target, int offset, int length) {
            return super.read(target, offset, Math.min(piece, length));
          }
        };
    ReadExport read = ReadExport.of(RecordKind.HOURS, bytes, slow);
    assertEquals(ReadExport.of(RecordKind.HOURS, bytes), read);
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheFirstName() {
    assertEquals(read(FILE).cells(), read("\uFEFF" + FILE).cells());
    assertEquals(read(FILE).cells(), read("\uFEFF\"vessel\"" + FILE.substring(6)).cells());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void aRemarkMayHaveLineBreaks(String end) {
    String text =
        FILE.replace("\n", end).replace("sea, rough", "sea," + end + end + "rough, \"\"very\"\"");
    ReadExport read = read(text);
    assertEquals(
        List.of("first", "sea," + end + end + "rough, \"very\"", "said \"fine\""), remarks(read));
    assertEquals(List.of(2L, 3L, 6L), read.storedLines());
    assertEquals(
        "V1,ME,2024-03-02,120,counter,\"sea," + end + end + "rough, \"\"very\"\"\"",
        read.stored().get(1).raw());
  }

  /** A CSV reader may take the line end behind the quote for the second half of a CR LF. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void aCarriageReturnInTheLastFieldDoesNotHideTheRowsEnd(String end) {
    ReadExport read = read(FILE.replace("sea, rough", "sea\rrough").replace("\n", end));
    assertEquals(List.of("first", "sea\rrough", "said \"fine\""), remarks(read));
  }

  @Test
  void aQuoteInsideAnUnquotedFieldIsText() {
    ReadExport read = read(FILE.replace("first", "5\" pipe; replaced"));
    assertEquals("5\" pipe; replaced", remarks(read).get(0));
    assertEquals(3, read.tally().stored());
  }

  @Test
  void aFileOfManyBlocksKeepsOrderAndLines() {
    StringBuilder text = new StringBuilder("vessel,machine,read_at,hours,kind,remark\n");
    int rows = 20_000;
    for (int i = 0; i < rows; i++) {
      text.append("V1,ME,2024-03-01,").append(i).append(",counter,\"Düse\nok\"\n");
    }
    ReadExport read = read(text.toString());
    assertEquals(rows, read.tally().stored());
    for (int i = 0; i < rows; i++) {
      StoredRow row = read.stored().get(i);
      assertEquals(i * 10L, row.cells().need(HoursLayout.HOURS).tenths());
      assertEquals(2 + 2L * i, row.origin().line());
    }
  }

  @Test
  void unknownColumnsAreKeptAndReported() {
    ReadExport read =
        read(
            """
            Vessel, weather ,machine,read_at,hours,kind,
            V1, calm ,ME,2024-03-01,100,counter,
            V1,,ME,2024-03-02,100,counter,x
            """);
    assertEquals(List.of("column 7", "weather"), List.copyOf(read.tally().unknownColumns()));
    assertEquals("{weather= calm }", read.stored().get(0).extras().toString());
    assertEquals("{column 7=x}", read.stored().get(1).extras().toString());
  }

  @Test
  void blanksAroundCellsAreTrimmedAndCounted() {
    ReadExport read =
        read(
            """
            vessel,machine,read_at,hours,kind,remark
            ~V1,ME\t,2024-03-01,\u00A0100\u00A0,counter,"~two~~words~"
            V1,ME,2024-03-02,100,counter,~~
            ~V1,ME,yesterday,100,counter,
            """
                .replace('~', ' '));
    assertEquals(5, read.tally().trimmedCells());
    assertEquals(List.of("two  words", ""), remarks(read));
    assertEquals(List.of("4: not-a-moment read_at"), read.refusals());
  }

  private static List<StoredRow> withoutDigest(ReadExport read, ReadExport like) {
    return read.stored().stream()
        .map(
            row ->
                new StoredRow(
                    new leadline.fleet.SourcedRow(
                        row.cells(),
                        new leadline.origin.Origin(
                            row.origin().file(),
                            like.stored().get(0).origin().digest(),
                            row.origin().line())),
                    row.extras(),
                    row.raw()))
        .toList();
  }
}
