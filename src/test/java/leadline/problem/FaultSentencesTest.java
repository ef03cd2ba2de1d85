package leadline.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FaultSentencesTest {

  private static final String LONG = "bad\n\0\t" + "🚢".repeat(10_000);

  static List<RowFault> rowFaults() {
    return List.of(
        new EmptyCell("vessel"),
        new LineFault.WrongFieldCount(3, 6),
        new LineFault.OpenQuote(),
        new LineFault.TextAfterQuote(LONG),
        new LineFault.BlankBeforeQuote(LONG),
        new LineFault.RowTooLong(100_000),
        new LineFault.NotUtf8(LONG),
        new LineFault.NulByte(),
        new NumberFault.NotHours("hours", LONG),
        new NumberFault.NotANumber("hours", LONG),
        new NumberFault.NotAWholeNumber("hours", LONG),
        new NumberFault.OutOfRange("hours", LONG, "1", "30"),
        new TimeFault.NotADate("done_on", LONG),
        new TimeFault.NoSuchDate("done_on", "2023-02-30", 2023, 2),
        new TimeFault.NoSuchTime("done_on", LONG),
        new TimeFault.NotAMoment("done_on", LONG),
        new TimeFault.MomentWithoutOffset("done_on", LONG),
        new TimeFault.TooEarly("done_on", LONG, LocalDate.of(1950, 1, 1)),
        new TimeFault.InTheFuture("done_on", LONG, Instant.EPOCH),
        new NameFault.UnknownWord("reason", LONG, List.of("planned")),
        new NameFault.UnknownComponent("component", LONG, List.of("fuel-injector")),
        new NameFault.UnknownPart("part", LONG, List.of("nozzle")),
        new ReturnFault.NeededBeside("answered_on", "found"),
        new ReturnFault.OfTheOverhaul("done_on", "nozzle"),
        new ReturnFault.OfAPart("found"),
        new ReturnFault.RightAndChanged("found"),
        new ReturnFault.NothingCorrected("answer"),
        new ReturnFault.NothingAsked("answer"));
  }

  static List<FileFault> fileFaults() {
    return List.of(
        new FileFault.UnrecognisedFile("x.csv", List.of("hours")),
        new FileFault.UnreadableFile("x.csv", "no right to read it"),
        new FileFault.EmptyFile("x.csv"),
        new FileFault.NotPlainText("x.csv"),
        new FileFault.HeaderNotUtf8("x.csv", LONG),
        new FileFault.BrokenHeader("x.csv", new LineFault.OpenQuote().sentence()),
        new FileFault.NoKnownColumn("x.csv", LONG, List.of("vessel")),
        new FileFault.MissingColumn("x.csv", "vessel"),
        new FileFault.DuplicateColumn("x.csv", "vessel"),
        new FileFault.DamagedWorkbook("x.xlsx"),
        new FileFault.LockedWorkbook("x.xlsx"),
        new FileFault.WorkbookTooLarge("x.xlsx"),
        new FileFault.NoSuchSheet("x.xlsx", "returns", List.of("Sheet1")));
  }

  static Stream<String> sentences() {
    return Stream.concat(
        rowFaults().stream().map(RowFault::sentence),
        fileFaults().stream().map(FileFault::sentence));
  }

  @Test
  void everyKindOfFaultIsListedHere() {
    assertEquals(
        kinds(RowFault.class),
        rowFaults().stream().<Class<?>>map(Object::getClass).collect(Collectors.toSet()));
    assertEquals(
        kinds(FileFault.class),
        fileFaults().stream().<Class<?>>map(Object::getClass).collect(Collectors.toSet()));
  }

  private static Set<Class<?>> kinds(Class<?> sealed) {
    return Arrays.stream(sealed.getPermittedSubclasses())
        .flatMap(kind -> kind.isSealed() ? kinds(kind).stream() : Stream.of(kind))
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @MethodSource("sentences")
  void aSentenceIsShortAndOnOneLineWhateverItQuotes(String sentence) {
    assertTrue(sentence.endsWith("."), sentence);
    assertTrue(sentence.length() < 400, sentence);
    assertTrue(sentence.chars().noneMatch(Character::isISOControl), sentence);
    assertTrue(
        sentence.codePoints().noneMatch(letter -> Character.getType(letter) == Character.SURROGATE),
        sentence);
  }

  @Test
  void rulesHaveNamesOfTheirOwn() {
    List<String> rules =
        Stream.concat(
                rowFaults().stream().map(RowFault::rule),
                fileFaults().stream().map(FileFault::rule))
            .toList();
    assertEquals(rules.size(), Set.copyOf(rules).size());
    assertTrue(rules.stream().allMatch(rule -> rule.matches("[a-z0-9]+(-[a-z0-9]+)*")), "" + rules);
    assertTrue(
        rules.containsAll(
            List.of("not-a-number", "no-such-date", "not-utf8", "in-the-future", "missing-column")),
        "" + rules);
  }

  @Test
  void aFaultOfTheWholeRowNamesNoColumn() {
    assertEquals("", new LineFault.OpenQuote().column());
    assertEquals("hours", new NumberFault.NotHours("hours", "x").column());
  }
}
