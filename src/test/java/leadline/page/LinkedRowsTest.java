package leadline.page;

import static leadline.page.Fleets.due;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Clock;
import leadline.publish.Issue;
import leadline.publish.PublishedTable;
import leadline.publish.RunManifest;
import leadline.publish.Standing;
import leadline.quantity.ReportMonth;
import leadline.summary.ComponentRates;
import leadline.summary.DueList;
import leadline.summary.EvidenceColumns;
import leadline.summary.IntakeLog;
import leadline.summary.PartFindings;
import leadline.summary.SpringBreakage;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.ValueType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** Each sentence that asks for a decision leads to the very rows that it stands on. */
class LinkedRowsTest {

  private static final Catalogue CATALOGUE = new Catalogue(List.of(Fleets.valve(Clock.HOURS)));

  private static final TableColumn<String> VESSEL =
      new TableColumn<>("vessel", new ValueType.Text(), "", TableColumn.Need.KEY, "vessel");
  private static final TableSpec MONTH_SPEC =
      new TableSpec(
          "fleet_month",
          "each vessel's month",
          List.of(VESSEL, count("overdue"), count("due_soon"), count("questions")));

  @TempDir private Path folder;

  private HtmlFile report;

  private static TableColumn<Long> count(String name) {
    return new TableColumn<>(name, new ValueType.Count(), "1", TableColumn.Need.REQUIRED, name);
  }

  private static TableRow month(String vessel, long overdue, long soon, long questions) {
    return MONTH_SPEC
        .row()
        .with(VESSEL, vessel)
        .with(count("overdue"), overdue)
        .with(count("due_soon"), soon)
        .with(count("questions"), questions)
        .build();
  }

  private static TableRow rate(String level, String stratum, String window, long events) {
    return Fleets.rate("compressor-valve", level, stratum, window, events, 412_000).build();
  }

  @BeforeEach
  void publish() throws IOException {
    new Pages(CATALOGUE)
        .write(
            new Issue(
                new RunManifest(
                    "run-1",
                    ReportMonth.parse("2024-12"),
                    Fleets.KNOWN_AT,
                    "0.1.0",
                    "ab".repeat(32),
                    List.of(),
                    Map.of(),
                    Map.of(),
                    Map.of()),
                Standing.CURRENT,
                List.of(
                    new PublishedTable(
                        DueList.SPEC,
                        List.of(
                            due("dunlin", "AC", "@1/1", "overdue").build(),
                            due("knot", "AC", "@2/1", "overdue").build(),
                            due("knot", "AC", "@2/2", "due-soon").build(),
                            due("teal", "AC", "@1/1", "not-due").build())),
                    new PublishedTable(
                        MONTH_SPEC,
                        List.of(
                            month("dunlin", 1, 0, 2),
                            month("knot", 1, 1, 1),
                            month("teal", 0, 0, 0))),
                    new PublishedTable(
                        ComponentRates.SPEC,
                        List.of(
                            rate("fleet", "all", "month", 3),
                            rate("fleet", "all", "12-months", 9),
                            rate("fleet", "all", "since-start", 27),
                            rate("vessel", "dunlin", "month", 2),
                            rate("vessel", "knot", "month", 0),
                            rate("vessel", "teal", "month", 1))),
                    new PublishedTable(
                        SpringBreakage.SPEC,
                        List.of(
                            Fleets.spring(60, 40, 6).with(EvidenceColumns.VERDICT, "ok").build())),
                    new PublishedTable(
                        PartFindings.SPEC,
                        List.of(
                            Fleets.finding(61, 41)
                                .with(EvidenceColumns.VERDICT, "selective-opening")
                                .build())),
                    Fleets.queries("dunlin", "dunlin", "knot"),
                    new PublishedTable(
                        IntakeLog.SPEC,
                        List.of(
                            Fleets.file("hours_dunlin.csv", 0),
                            Fleets.file("hours_knot.csv", 2),
                            Fleets.file("stock_knot.csv", 1)))),
                List.of("Keep clear of the spray.", "Class and flag prevail.", "No proof.")),
            folder);
    report = HtmlFile.read(folder.resolve("report/index.html"));
  }

  /** The rows to which the links of the decisions lead, by the words of the link. */
  private Map<String, List<String>> linked(int... cells) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    HtmlFile.below(byId("decisions"), "a")
        .forEach(
            link ->
                rows.put(text(link), rows(byId(link.getAttribute("href").substring(1)), cells)));
    return rows;
  }

  private static List<String> rows(Element body, int... cells) {
    assertEquals("tbody", body.getTagName());
    return HtmlFile.below(body, "tr").stream()
        .map(
            row -> {
              List<Element> all = HtmlFile.in(row);
              List<String> shown = new ArrayList<>();
              for (int cell : cells) {
                shown.add(text(all.get(cell)));
              }
              return String.join(" ", shown);
            })
        .toList();
  }

  private Element byId(String id) {
    return report.elements("*").stream()
        .filter(element -> element.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("nothing is #" + id));
  }

  private static String text(Element element) {
    return element
        .getTextContent()
        .replaceAll("[\\s\u00a0]+", " ")
        .replaceAll("[\u2068\u2069]", "")
        .strip();
  }

  @Test
  void everySentenceHasItsRows() {
    Map<String, List<String>> rows = linked(0);
    assertEquals(
        Map.of(
            "2 positions overdue", List.of("dunlin", "knot"),
            "rates of the fleet", List.of("compressor-valve", "compressor-valve"),
            "vessels", List.of("dunlin", "teal"),
            "springs of twelve months", List.of("compressor-valve"),
            "compressor valve, valve spring", List.of("valve-spring"),
            "dunlin", List.of("dunlin"),
            "knot", List.of("knot"),
            "2 files with refused rows", List.of("hours_knot.csv", "stock_knot.csv")),
        rows);
  }

  @Test
  void theseRowsHoldTheFiguresOfTheSentence() {
    assertEquals(List.of("dunlin @1/1", "knot @2/1"), rows(byId("overdue-compressor-valve"), 0, 3));
    assertEquals(
        List.of("month breakdown 3", "12-months breakdown 9"),
        rows(byId("breakdowns-compressor-valve"), 1, 2, 3));
    assertEquals(List.of("dunlin 2", "teal 1"), rows(byId("broken-down-compressor-valve"), 0, 4));
    assertEquals(
        List.of("12-months 60 40 6"),
        rows(byId("spring-compressor-valve-valve-spring"), 2, 3, 4, 5));
    assertEquals(
        List.of("since-start 61 41"), rows(byId("part-compressor-valve-valve-spring"), 2, 3, 4));
    assertEquals(List.of("dunlin 2"), rows(byId("vessel-dunlin"), 0, 3));
    assertEquals(List.of("5 3 2", "5 4 1"), rows(byId("refused-rows"), 2, 3, 4));
  }

  @Test
  void aVesselLeadsToItsBriefingWhereItHasOne() {
    Map<String, String> briefings =
        HtmlFile.below(byId("fleet-month"), "tbody").stream()
            .flatMap(body -> HtmlFile.below(body, "a").stream())
            .collect(Collectors.toMap(LinkedRowsTest::text, link -> link.getAttribute("href")));
    assertEquals(
        Map.of("dunlin", "../briefing/dunlin.html", "knot", "../briefing/knot.html"), briefings);
    assertTrue(
        text(byId("due")).contains("Nothing overdue or due soon, and so no briefing: teal."));
  }

  @Test
  void whatTheColumnsMeanIsSaidOnThePage() {
    Set<String> explained =
        HtmlFile.below(byId("columns"), "dt").stream()
            .map(LinkedRowsTest::text)
            .collect(Collectors.toSet());
    report.elements("th").stream()
        .filter(head -> head.getAttribute("scope").equals("col"))
        .forEach(head -> assertTrue(explained.contains(text(head)), text(head)));
    assertTrue(explained.contains("not opened for, h"), explained.toString());
  }
}
