package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import leadline.chart.Drawing;
import leadline.chart.Mark;
import leadline.fleet.Clock;
import leadline.publish.PublishedTable;
import leadline.summary.EvidenceColumns;
import leadline.summary.FindingsByHours;
import leadline.summary.TableRow;
import org.junit.jupiter.api.Test;

class FoundByHoursTest {

  private static List<Block> blocks(Clock clock, TableRow... rows) {
    Tables tables = new Tables(List.of(new PublishedTable(FindingsByHours.SPEC, List.of(rows))));
    return new FoundByHours(tables, Fleets.valve(clock)).blocks();
  }

  /** 20 of 40: 50.0 %, 33.8 % to 66.2 %; 4 of 4: 100 %, 39.8 % (Clopper-Pearson). */
  private static TableRow found(String hours, long opened, double lower, double upper) {
    return Fleets.found(hours, "failed", opened, Math.min(opened, 20))
        .with(FindingsByHours.FOUND_SHARE.estimate(), Math.min(opened, 20) / (double) opened)
        .with(FindingsByHours.FOUND_SHARE.lower(), lower)
        .with(FindingsByHours.FOUND_SHARE.upper(), upper)
        .with(EvidenceColumns.VERDICT, opened < 20 ? "too-few" : "ok")
        .build();
  }

  private static String prose(Block block) {
    return block instanceof Block.Prose prose ? prose.text() : "no prose";
  }

  @Test
  void aBandOfWhichFewWereOpenedHasItsFiguresInTheTableOnly() {
    Block block =
        blocks(
                Clock.HOURS,
                found("0-4000", 40, 0.338, 0.662),
                found("4000-8000", 4, 0.398, 1),
                Fleets.found("unknown", "failed", 0, 0)
                    .with(EvidenceColumns.VERDICT, "insufficient")
                    .build())
            .get(1);
    assertEquals(
        List.of("4 opened", "none opened"),
        words(block).stream().filter(word -> word.endsWith("opened")).toList());
    assertEquals(
        List.of(
            List.of("0-4000", "60", "40", "50.0 % (34–66)", "ok"),
            List.of("4000-8000", "60", "4", "100.0 % (40–100)*", "too-few"),
            List.of("unknown", "60", "0", "–", "insufficient")),
        cells(block));
  }

  @Test
  void whatFailedMeansIsSaidAndWhatAgesByAnotherClock() {
    String text =
        "Of the parts opened at such hours, how many were found in each condition: a share at the"
            + " openings made, not a chance. Where only what looks suspect is opened it says little"
            + " of the rest. Failed is cracked or broken, for valve spring.";
    TableRow row = found("all", 40, 0.338, 0.662);
    assertEquals(text, prose(blocks(Clock.HOURS, row).get(0)));
    assertEquals(
        text + " The valve spring ages by starts: its bands of hours tell nothing.",
        prose(blocks(Clock.STARTS, row).get(0)));
  }

  @Test
  void withoutAnOpeningThereIsASentence() {
    List<Block> blocks =
        blocks(
            Clock.HOURS,
            Fleets.found("all", "failed", 0, 0)
                .with(EvidenceColumns.VERDICT, "insufficient")
                .build());
    assertEquals(
        List.of("On record as opened: none of valve spring."),
        blocks.stream().map(FoundByHoursTest::prose).toList());
  }

  @Test
  void withoutARowThereIsNothingToSay() {
    assertEquals(List.of(), blocks(Clock.HOURS));
    Tables none = new Tables(List.of());
    assertEquals(Optional.empty(), new FoundByHours(none, Fleets.valve(Clock.HOURS)).section());
  }

  private static List<String> words(Block block) {
    return block instanceof Block.Chart chart
        ? chart.drawings().stream()
            .map(Drawing::marks)
            .flatMap(List::stream)
            .filter(Mark.Words.class::isInstance)
            .map(mark -> ((Mark.Words) mark).text())
            .toList()
        : List.of();
  }

  private static List<List<String>> cells(Block block) {
    return block instanceof Block.Chart chart
        ? chart.table().rows().get(0).cells().stream()
            .map(row -> row.stream().map(FoundByHoursTest::text).toList())
            .toList()
        : List.of();
  }

  private static String text(Cell cell) {
    if (cell instanceof Cell.Words words) {
      return words.text();
    }
    if (cell instanceof Cell.Figure figure) {
      return figure.text();
    }
    return cell instanceof Cell.Estimate estimate ? estimate.text() : "–";
  }
}
