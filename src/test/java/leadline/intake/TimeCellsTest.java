package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import leadline.fleet.HoursLayout;
import leadline.fleet.RecordKind;
import leadline.fleet.StockLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimeCellsTest {

  private static ReadExport counted(String day) {
    return ReadExport.of(
        RecordKind.STOCK, "vessel,part,counted_on,on_hand\nV1,nozzle," + day + ",4\n");
  }

  private static ReadExport readAt(String moment) {
    return ReadExport.of(
        RecordKind.HOURS,
        "vessel,machine,read_at,hours,kind\nV1,ME,\"" + moment + "\",100,counter\n");
  }

  private static String sentence(ReadExport read) {
    return read.refused().get(0).faults().get(0).sentence();
  }

  /** Against the calendar of java.time, over a stretch with three kinds of leap year. */
  @Test
  void everyDayOfTheCalendarAndNoOther() {
    StringBuilder text = new StringBuilder("vessel,part,counted_on,on_hand\n");
    for (int year = 1950; year <= 2023; year++) {
      for (int month = 1; month <= 12; month++) {
        for (int day = 1; day <= 31; day++) {
          text.append(String.format("V1,nozzle,%d-%02d-%02d,4%n", year, month, day));
        }
      }
    }
    ReadExport read = ReadExport.of(RecordKind.STOCK, text.toString());
    List<LocalDate> days =
        read.cells().stream().map(cells -> cells.need(StockLayout.COUNTED_ON)).toList();
    assertEquals(LocalDate.of(1950, 1, 1).datesUntil(LocalDate.of(2024, 1, 1)).toList(), days);
    assertEquals(74 * 12 * 31 - days.size(), read.tally().refused());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2023-02-30 | February 2023 has the days 01 to 28",
        "2024-02-30 | February 2024 has the days 01 to 29",
        "2023-02-29 | February 2023 has the days 01 to 28",
        "2023-04-31 | April 2023 has the days 01 to 30",
        "2024-03-00 | March 2024 has the days 01 to 31",
        "2024-13-01 | months are 01 to 12, and the order is year, month, day",
        "2024-00-10 | months are 01 to 12, and the order is year, month, day"
      })
  void datesThatDoNotExist(String text, String reason) {
    assertEquals(List.of("2: no-such-date counted_on"), counted(text).refusals());
    assertEquals(
        "counted_on \"" + text + "\" does not exist: " + reason + ".", sentence(counted(text)));
    assertEquals(List.of("2: no-such-date read_at"), readAt(text).refusals());
    assertEquals(List.of("2: no-such-date read_at"), readAt(text + "T12:00Z").refusals());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "01.03.2024",
        "2024/03/01",
        "20240301",
        "2024-3-1",
        "24-03-01",
        "2024-03-01T12:00Z",
        "2024-03-01x",
        "-2024-03-01",
        "٢٠٢٤-٠٣-٠١",
        "today",
        "45352"
      })
  void textsThatAreNoDates(String text) {
    assertEquals(List.of("2: not-a-date counted_on"), counted(text).refusals());
  }

  /** The intake is on 15 June 2024, 10:00 UTC; somewhere it is 16 June already. */
  @Test
  void tomorrowIsAllowedForTheDateLineAndTheDayAfterIsNot() {
    assertEquals(1, counted("2024-06-16").tally().stored());
    assertEquals(List.of("2: in-the-future counted_on"), counted("2024-06-17").refusals());
    assertEquals(
        "counted_on \"2024-06-17\" lies in the future, as the file was read on 2024-06-15: write"
            + " the day on which it happened.",
        sentence(counted("2024-06-17")));
    assertEquals(1, readAt("2024-06-16").tally().stored());
    assertEquals(List.of("2: in-the-future read_at"), readAt("2024-06-17").refusals());
    assertEquals(1, readAt("2024-06-16T10:00Z").tally().stored());
    assertEquals(List.of("2: in-the-future read_at"), readAt("2024-06-16T10:00:01Z").refusals());
  }

  @Test
  void recordsBeginIn1950() {
    assertEquals(1, counted("1950-01-01").tally().stored());
    assertEquals(List.of("2: too-early counted_on"), counted("1949-12-31").refusals());
    assertEquals(List.of("2: too-early counted_on"), counted("0000-01-01").refusals());
    assertEquals(1, readAt("1950-01-01T00:00Z").tally().stored());
    assertEquals(List.of("2: too-early read_at"), readAt("1950-01-01T01:59+02:00").refusals());
  }

  /** The second and third are examples of RFC 3339, section 5.8 (from memory). */
  @ParameterizedTest
  @CsvSource({
    "2024-03-01, 2024-03-02T00:00:00Z",
    "1985-04-12T23:20:50.52Z, 1985-04-12T23:20:50.52Z",
    "1996-12-19T16:39:57-08:00, 1996-12-20T00:39:57Z",
    "2024-03-01T12:00Z, 2024-03-01T12:00:00Z",
    "2024-03-01T12:00+02:00, 2024-03-01T10:00:00Z",
    "2024-03-01T12:00+02, 2024-03-01T10:00:00Z",
    "2024-03-01T12:00-03:30, 2024-03-01T15:30:00Z",
    "2024-02-29T24:00Z, 2024-03-01T00:00:00Z",
    "2024-03-01T00:00+14:00, 2024-02-29T10:00:00Z"
  })
  void moments(String text, Instant moment) {
    assertEquals(moment, readAt(text).cells().get(0).need(HoursLayout.READ_AT));
  }

  @ParameterizedTest
  @CsvSource({
    "2024-03-01T12:00, moment-without-offset",
    "2024-03-01T12:00:30.5, moment-without-offset",
    "2024-03-01T25:00Z, no-such-time",
    "2024-03-01T12:60Z, no-such-time",
    "2024-03-01T24:01Z, no-such-time",
    "2024-03-01T12:00+25:00, no-such-time",
    "2024-03-01 12:00Z, not-a-moment",
    "2024-03-01T12Z, not-a-moment",
    "2024-03-01T, not-a-moment",
    "2024-03-01T12:00Zulu, not-a-moment",
    "01.03.2024 12:00, not-a-moment",
    "noon, not-a-moment"
  })
  void momentsThatAreNone(String text, String rule) {
    assertEquals(List.of("2: " + rule + " read_at"), readAt(text).refusals());
  }

  @Test
  void aMomentWithoutOffsetIsToldHowToGetOne() {
    assertEquals(
        "read_at \"2024-03-01T12:00\" does not give the offset from UTC: add it, as in"
            + " 2024-03-01T12:00Z or 2024-03-01T12:00+02:00, or write the date alone.",
        sentence(readAt("2024-03-01T12:00")));
  }
}
