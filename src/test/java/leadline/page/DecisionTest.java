package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.Renewal;
import leadline.publish.PublishedTable;
import leadline.quantity.RunningHours;
import leadline.summary.ComponentRates;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartFindings;
import leadline.summary.SpringBreakage;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.ValueType;
import org.junit.jupiter.api.Test;

/** The sentences that the rules make, from rows written by hand. */
class DecisionTest {

  private static final Catalogue CATALOGUE =
      new Catalogue(
          List.of(
              new Component(
                  "compressor-valve",
                  PositionsPer.UNIT,
                  Set.of("air-compressor"),
                  RunningHours.ofHours(1_500),
                  List.of(
                      new Part(
                          "valve-spring",
                          PartShape.SPRING,
                          FailureShows.ALWAYS,
                          Set.of(),
                          Set.of(),
                          Set.of(),
                          Renewal.ON_CONDITION,
                          Clock.HOURS,
                          "compressor unit")))));

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
                + " and 43.3 %. Decide whether every overhaul is to open it."),
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
            "Never opened on record: compressor valve, valve spring (0 of 12 overhauls). Decide"
                + " which of them are to be opened."),
        sentences(
            new RefusedFigures(),
            new PublishedTable(
                PartFindings.SPEC,
                List.of(
                    Fleets.finding(12, 0).with(EvidenceColumns.VERDICT, "insufficient").build()))));
  }

  private static TableColumn<String> text(String name) {
    return new TableColumn<>(name, new ValueType.Text(), "", TableColumn.Need.KEY, name);
  }

  @Test
  void overduePositionsAreCountedByComponent() {
    TableColumn<String> vessel = text("vessel");
    TableColumn<String> component = text("component");
    TableColumn<String> position = text("position");
    TableColumn<String> standing = text("standing");
    TableSpec due =
        new TableSpec("due_list", "what is due", List.of(vessel, component, position, standing));
    List<TableRow> rows =
        Stream.of(
                List.of("dunlin", "@1", "overdue"),
                List.of("dunlin", "@2", "overdue"),
                List.of("dunlin", "@3", "later"),
                List.of("teal", "@1", "due-soon"),
                List.of("teal", "@2", "unknown"))
            .map(
                values ->
                    due.row()
                        .with(vessel, values.get(0))
                        .with(component, "compressor-valve")
                        .with(position, values.get(1))
                        .with(standing, values.get(2))
                        .build())
            .toList();
    assertEquals(
        List.of(
            "Compressor valve: of 5 positions 2 are overdue, on 1 vessel; 1 more due soon, 1 with"
                + " hours since overhaul unknown. Decide for each on port and day, or who may allow"
                + " more hours."),
        sentences(new OverduePositions(), new PublishedTable(due, rows)));
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
