package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Clock;
import leadline.publish.PublishedTable;
import leadline.summary.ComponentRates;
import leadline.summary.DueList;
import leadline.summary.EvidenceColumns;
import leadline.summary.IntakeLog;
import leadline.summary.PartFindings;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;
import leadline.summary.VesselColumns;
import org.junit.jupiter.api.Test;

/** The sentences that the rules make, from rows written by hand. */
class DecisionTest {

  private static final Catalogue CATALOGUE = new Catalogue(List.of(Fleets.valve(Clock.HOURS)));

  private static List<String> sentences(Decision rule, PublishedTable... tables) {
    return rule.points(new Tables(List.of(tables)), CATALOGUE).stream()
        .map(point -> point.sentence().replace('\u00a0', ' '))
        .toList();
  }

  private static TableRow limits(TableRow.Builder row, double lower, double upper) {
    return row.with(ComponentRates.RATE.lower(), lower)
        .with(ComponentRates.RATE.upper(), upper)
        .build();
  }

  /** 3 in 412,000 h: 7.28 per million h, 95 % limits 1.50 to 21.28 (Garwood). */
  private static PublishedTable rates(double lowerOfMonth) {
    return new PublishedTable(
        ComponentRates.SPEC,
        List.of(
            limits(
                Fleets.rate("compressor-valve", "fleet", "all", "month", 3, 412_000),
                lowerOfMonth,
                21.28),
            limits(
                Fleets.rate("compressor-valve", "fleet", "all", "12-months", 4, 4_120_000),
                0.26,
                2.49),
            limits(Fleets.rate("compressor-valve", "vessel", "dunlin", "month", 2, 200_000), 1, 30),
            limits(Fleets.rate("compressor-valve", "vessel", "knot", "month", 0, 100_000), 0, 30),
            limits(
                Fleets.rate("compressor-valve", "vessel", "teal", "month", 1, 112_000), 0.2, 50)));
  }

  @Test
  void breakdownsStandBesideTheirYearAndTheirVessels() {
    assertEquals(
        List.of(
            "Compressor valve: 3 breakdowns in 412,000 h, 7.28 (1.50 to 21.3) per million h, on"
                + " \u2068dunlin\u2069 2, \u2068teal\u2069 1; over twelve months 4 in 4,120,000 h,"
                + " 0.97 (0.26 to 2.49). Chance alone may account for the difference."),
        sentences(new BreakdownsOfTheMonth(), rates(1.50)));
  }

  @Test
  void aMonthWhoseLimitsLieAboveTheYearsAsksWhatHasChanged() {
    assertEquals(
        List.of(
            "Compressor valve: 3 breakdowns in 412,000 h, 7.28 (2.60 to 21.3) per million h, on"
                + " \u2068dunlin\u2069 2, \u2068teal\u2069 1; over twelve months 4 in 4,120,000 h,"
                + " 0.97 (0.26 to 2.49). That is more than the year lets expect: decide who finds"
                + " out what has changed."),
        sentences(new BreakdownsOfTheMonth(), rates(2.60)));
  }

  private static PublishedTable springs(long opened, String verdict) {
    return new PublishedTable(
        SpringBreakage.SPEC,
        List.of(
            Fleets.spring(60, opened, 6)
                .with(SpringBreakage.BROKEN_SHARE.estimate(), 6.0 / opened)
                .with(SpringBreakage.BROKEN_SHARE.lower(), 0.057)
                .with(SpringBreakage.BROKEN_SHARE.upper(), 0.298)
                .with(SpringBreakage.SHARE_IF_UNOPENED_SOUND, 0.1)
                .with(SpringBreakage.SHARE_IF_UNOPENED_BROKEN, (66.0 - opened) / 60)
                .with(EvidenceColumns.VERDICT, verdict)
                .build()));
  }

  @Test
  void brokenSpringsComeWithWhatTheUnopenedOnesLeaveOpen() {
    assertEquals(
        List.of(
            "Compressor valve, valve spring: in twelve months 6 of 40 opened were broken, 15.0 %"
                + " (5.7 % to 29.8 %). 20 of 60 overhauls left it unopened: of all, between 10.0 %"
                + " and 43.3 % are broken. Decide whether every overhaul is to open it."),
        sentences(new BrokenSprings(), springs(40, "selective-opening")));
  }

  @Test
  void aSpringThatIsOpenedAsARoutineNeedsNoSuchDecision() {
    assertEquals(
        List.of(
            "Compressor valve, valve spring: in twelve months 6 of 60 opened were broken, 10.0 %"
                + " (5.7 % to 29.8 %). Every overhaul opened it."),
        sentences(new BrokenSprings(), springs(60, "ok")));
  }

  @Test
  void refusedFiguresNameTheirParts() {
    assertEquals(
        List.of(
            "Never opened on record: compressor valve, valve spring (opened at 0 of 12 overhauls)."
                + " Decide whether every overhaul is to open it."),
        sentences(
            new RefusedFigures(),
            new PublishedTable(
                PartFindings.SPEC,
                List.of(
                    Fleets.finding(12, 0).with(EvidenceColumns.VERDICT, "insufficient").build()))));
  }

  @Test
  void whatWasNeverOverhauledNeedsNoDecision() {
    assertEquals(
        List.of(),
        sentences(
            new RefusedFigures(),
            new PublishedTable(
                PartFindings.SPEC,
                List.of(
                    Fleets.finding(0, 0).with(EvidenceColumns.VERDICT, "insufficient").build()))));
  }

  @Test
  void oneBrokenOfOneOpenedIsInTheSingular() {
    assertEquals(
        List.of(
            "Compressor valve, valve spring: in twelve months 1 of 1 opened was broken, 100.0 %"
                + " (2.5 % to 100.0 %). Every overhaul opened it."),
        sentences(
            new BrokenSprings(),
            new PublishedTable(
                SpringBreakage.SPEC,
                List.of(
                    Fleets.spring(1, 1, 1)
                        .with(SpringBreakage.BROKEN_SHARE.estimate(), 1.0)
                        .with(SpringBreakage.BROKEN_SHARE.lower(), 0.025)
                        .with(SpringBreakage.BROKEN_SHARE.upper(), 1.0)
                        .with(EvidenceColumns.VERDICT, "too-few")
                        .build()))));
  }

  private static PublishedTable due(TableRow.Builder... rows) {
    return new PublishedTable(DueList.SPEC, Stream.of(rows).map(TableRow.Builder::build).toList());
  }

  private static TableRow.Builder beyond(double hours) {
    return Fleets.due("dunlin", "AC", "@1/1", "overdue")
        .with(DueList.HOURS, 1_500 + hours)
        .with(DueList.REMAINING, -hours);
  }

  @Test
  void overduePositionsAreCountedByComponentAndTheFurthestNamed() {
    assertEquals(
        List.of(
            "Compressor valve: 2 of 5 positions are overdue, on 1 vessel; furthest"
                + " \u2068dunlin\u2069, \u2068AC\u2069 @1/1, at 1,920 h, limit 1,500 h; 1 more is due"
                + " soon; 1 has unknown hours since overhaul. Decide for each on port and day, or"
                + " who may allow more hours."),
        sentences(
            new OverduePositions(),
            due(
                beyond(420),
                beyond(80).with(VesselColumns.POSITION, "@1/2"),
                Fleets.due("dunlin", "AC", "@1/3", "not-due"),
                Fleets.due("teal", "AC", "@1/1", "due-soon"),
                Fleets.due("teal", "AC", "@1/2", "unknown"))));
  }

  @Test
  void clausesAboutNothingAreLeftOut() {
    assertEquals(
        List.of(
            "Compressor valve: 1 of 1 position is overdue, on 1 vessel. Decide on port and day, or"
                + " who may allow more hours."),
        sentences(new OverduePositions(), due(Fleets.due("dunlin", "AC", "@1/1", "overdue"))));
    assertEquals(
        List.of(),
        sentences(new OverduePositions(), due(Fleets.due("dunlin", "AC", "@1/1", "due-soon"))));
  }

  @Test
  void severalMoreAreInThePlural() {
    assertEquals(
        List.of(
            "Compressor valve: 1 of 5 positions is overdue, on 1 vessel; 2 more are due soon; 2"
                + " have unknown hours since overhaul. Decide on port and day, or who may allow"
                + " more hours."),
        sentences(
            new OverduePositions(),
            due(
                Fleets.due("dunlin", "AC", "@1/1", "overdue"),
                Fleets.due("dunlin", "AC", "@1/2", "due-soon"),
                Fleets.due("dunlin", "AC", "@1/3", "due-soon"),
                Fleets.due("teal", "AC", "@1/1", "unknown"),
                Fleets.due("teal", "AC", "@1/2", "unknown"))));
  }

  @Test
  void questionsToOneVesselAndToMany() {
    assertEquals(
        List.of(
            "1 question to 1 vessel is open: \u2068dunlin\u2069 1. Send the vessel its return"
                + " sheet."),
        sentences(new PoorReports(), Fleets.queries("dunlin")));
    assertEquals(
        List.of(
            "3 questions to 2 vessels are open: \u2068teal\u2069 2, \u2068dunlin\u2069 1. Send each"
                + " vessel its return sheet."),
        sentences(new PoorReports(), Fleets.queries("dunlin", "teal", "teal")));
    assertEquals(
        List.of(
            "6 questions to 6 vessels are open; most of them to \u2068a\u2069 1, \u2068b\u2069 1,"
                + " \u2068c\u2069 1, \u2068d\u2069 1, \u2068e\u2069 1. Send each vessel its return"
                + " sheet."),
        sentences(new PoorReports(), Fleets.queries("a", "b", "c", "d", "e", "f")));
  }

  @Test
  void oneRefusedRowIsInTheSingular() {
    assertEquals(
        List.of(
            "1 of 5 rows of the exports broke a rule and is in no figure; it is in 1 of 1 file."
                + " Have it mended and sent again."),
        sentences(
            new PoorReports(),
            new PublishedTable(IntakeLog.SPEC, List.of(Fleets.file("hours_dunlin.csv", 1)))));
    assertEquals(
        List.of(
            "3 of 10 rows of the exports broke a rule and are in no figure; they are in 1 of 2"
                + " files. Have them mended and sent again."),
        sentences(
            new PoorReports(),
            new PublishedTable(
                IntakeLog.SPEC,
                List.of(Fleets.file("hours_dunlin.csv", 0), Fleets.file("stock_teal.csv", 3)))));
  }

  @Test
  void withoutTheirTablesRulesSayNothing() {
    for (Decision rule :
        List.of(
            new OverduePositions(),
            new BreakdownsOfTheMonth(),
            new BrokenSprings(),
            new RefusedFigures(),
            new PoorReports())) {
      assertEquals(List.of(), sentences(rule), rule.heading());
    }
  }
}
