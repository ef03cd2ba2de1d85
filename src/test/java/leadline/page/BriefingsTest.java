package leadline.page;

import static leadline.page.Fleets.due;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.Renewal;
import leadline.publish.Issue;
import leadline.publish.PublishedTable;
import leadline.publish.RunManifest;
import leadline.publish.Standing;
import leadline.quantity.ReportMonth;
import leadline.quantity.RunningHours;
import leadline.summary.DueForecast;
import leadline.summary.DueList;
import leadline.summary.EvidenceColumns;
import leadline.summary.JobCards;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;
import leadline.summary.VesselColumns;
import leadline.summary.VesselQueries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** Briefings from invented rows. */
class BriefingsTest {

  private static final Instant KNOWN_AT = Instant.parse("2025-01-10T12:00:00Z");
  private static final List<String> PARTS = List.of("valve-spring", "plate");
  private static final Catalogue CATALOGUE =
      new Catalogue(
          List.of(
              new Component(
                  "compressor-valve",
                  PositionsPer.PLACE,
                  Set.of("air-compressor"),
                  RunningHours.ofHours(1_500),
                  PARTS.stream().map(BriefingsTest::part).toList())));

  @TempDir private Path folder;

  private final List<TableRow> due = new ArrayList<>();
  private final List<TableRow> cards = new ArrayList<>();
  private final List<TableRow> queries = new ArrayList<>();
  private final List<TableRow> findings = new ArrayList<>();

  private static Part part(String name) {
    return new Part(
        name,
        PartShape.SPRING,
        FailureShows.MAY_STAY_UNSEEN,
        Set.of(FoundWord.BROKEN),
        Set.of(FoundWord.WORN),
        Set.of(),
        Renewal.ON_CONDITION,
        Clock.HOURS,
        "compressor");
  }

  private static TableRow.Builder card(String vessel, String position, String part) {
    return JobCards.SPEC
        .row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(VesselColumns.VESSEL, vessel)
        .with(VesselColumns.MACHINE, "AC")
        .with(SharedColumns.COMPONENT, "compressor-valve")
        .with(VesselColumns.POSITION, position)
        .with(SharedColumns.PART, part)
        .with(JobCards.SEEN_FROM, "2021-02-03")
        .with(JobCards.SEEN, 4_321.6)
        .with(JobCards.KEPT_FAILED, "no")
        .with(JobCards.LAPS, 0L);
  }

  private static TableRow query(String id, String overhaul, String question) {
    return VesselQueries.SPEC
        .row()
        .with(SharedColumns.MONTH, "2024-12")
        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
        .with(VesselQueries.VESSEL, "dunlin")
        .with(VesselQueries.QUERY, id)
        .with(VesselQueries.KIND, "broken-and-kept")
        .with(VesselQueries.RECORD, overhaul)
        .with(VesselQueries.OVERHAUL, overhaul)
        .with(VesselQueries.QUESTION, question)
        .with(VesselQueries.EVIDENCE, "e")
        .with(VesselQueries.SETTLED_BY, "s")
        .with(VesselQueries.FIRST_ASKED, KNOWN_AT)
        .with(VesselQueries.AGE_DAYS, 1L)
        .build();
  }

  private void write() throws IOException {
    new Briefings(CATALOGUE, cards)
        .write(
            new Issue(
                new RunManifest(
                    "run-1",
                    ReportMonth.parse("2024-12"),
                    KNOWN_AT,
                    "0.1.0",
                    "ab".repeat(32),
                    List.of(),
                    Map.of(),
                    Map.of(),
                    Map.of()),
                Standing.CURRENT,
                List.of(
                    new PublishedTable(DueList.SPEC, due),
                    new PublishedTable(VesselQueries.SPEC, queries),
                    new PublishedTable(PartFindings.SPEC, findings)),
                List.of("Keep clear of the spray.", "Class and flag prevail.", "No proof.")),
            folder);
  }

  private HtmlFile sheet(String vessel) throws IOException {
    write();
    return HtmlFile.read(folder.resolve("briefing/" + vessel + ".html"));
  }

  private static String text(Element element) {
    return element.getTextContent().replaceAll("\\s+", " ").strip();
  }

  private static List<List<String>> rows(HtmlFile page) {
    return page.elements("div").stream()
        .filter(element -> element.getAttribute("class").equals("card"))
        .flatMap(card -> HtmlFile.below(HtmlFile.below(card, "tbody").get(0), "tr").stream())
        .map(row -> HtmlFile.in(row).stream().map(BriefingsTest::text).toList())
        .toList();
  }

  @Test
  void aPartHasItsHoursFindingLapsAndBoxes() throws IOException {
    due.add(due("dunlin", "AC", "@1/1", "due-soon").with(DueList.HOURS, 1_234.4).build());
    cards.add(
        card("dunlin", "@1/1", "valve-spring")
            .with(JobCards.AGE, 1_234.4)
            .with(JobCards.LAPS, 2L)
            .with(JobCards.LAST_ON, "2024-03-01")
            .with(JobCards.LAST_OPENED, "opened")
            .with(JobCards.LAST_FOUND, "worn")
            .with(JobCards.LAST_ACTION, "lapped")
            .with(JobCards.PRESSURE, 345.0)
            .with(JobCards.PRESSURE_ON, "2024-03-01")
            .build());
    HtmlFile page = sheet("dunlin");
    assertEquals(
        List.of(
            List.of("valve-spring", "1,234", "worn, lapped", "2", "insufficient", "", "", "", ""),
            List.of("plate", "\u2013", "nothing on record", "\u2013", "\u2013", "", "", "", "")),
        rows(page));
    String caption = text(page.elements("caption").get(1));
    assertTrue(caption.contains("last opening pressure: 345 bar, 2024-03-01"), caption);
    assertTrue(caption.contains("1,234 h, on 2024-03-01"), caption);
  }

  @Test
  void anUnknownAgeIsUnknownSinceADayAndAtLeastTheHoursSeen() throws IOException {
    findings.add(
        Fleets.finding(50, 40)
            .with(PartFindings.FAILED, 4L)
            .with(PartFindings.FAILED_SHARE.estimate(), 0.1)
            .with(PartFindings.FAILED_SHARE.lower(), 0.0279)
            .with(PartFindings.FAILED_SHARE.upper(), 0.2366)
            .with(EvidenceColumns.VERDICT, "ok")
            .build());
    due.add(due("dunlin", "AC", "@1/1", "overdue").with(DueList.SINCE, "unknown").build());
    cards.add(card("dunlin", "@1/1", "valve-spring").build());
    HtmlFile page = sheet("dunlin");
    assertEquals(
        List.of("valve-spring", "unknown, \u2265\u00a04,322", "nothing on record", "0"),
        rows(page).get(0).subList(0, 4));
    assertEquals("fleet 10.0 (2.8\u201323.7)", rows(page).get(0).get(4));
    String caption = text(page.elements("caption").get(1));
    assertTrue(caption.contains("hours: unknown since 2021-02-03"), caption);
    assertTrue(caption.contains("unknown since 2024-03-01, at least 1,234 h"), caption);
  }

  @Test
  void anItemThatOnlyJustCameIntoSightIsPlainlyUnknown() throws IOException {
    due.add(
        due("dunlin", "AC", "@1/1", "overdue")
            .with(DueList.HOURS, 1_900.0)
            .with(DueList.SHUT_PART, "valve-spring")
            .with(DueList.SHUT_HOURS, 0.0)
            .build());
    cards.add(
        card("dunlin", "@1/1", "valve-spring")
            .with(JobCards.SEEN_FROM, "2024-12-31")
            .with(JobCards.SEEN, 0.0)
            .build());
    HtmlFile page = sheet("dunlin");
    assertEquals(
        List.of("valve-spring", "unknown", "nothing on record", "0", "hours unknown"),
        rows(page).get(0).subList(0, 5));
    String caption = text(page.elements("caption").get(1));
    assertTrue(
        caption.contains("hours: nothing is on record of this item before 2024-12-31"), caption);
    assertTrue(caption.contains("valve spring: never opened on record"), caption);
    assertFalse(caption.contains(" 0 h"), caption);
  }

  @Test
  void onlyWhatGoesOntoTheTestStandHasAPressure() throws IOException {
    due.add(due("dunlin", "AC", "@1/1", "overdue").build());
    String text = text(sheet("dunlin").document().getDocumentElement());
    assertFalse(text.contains("pressure as found"), text);
    assertFalse(text.contains("last opening pressure"), text);
  }

  @Test
  void asManyQuestionsStandOnTheSheetAsThereIsRoomFor() throws IOException {
    due.add(due("dunlin", "AC", "@1/1", "overdue").build());
    for (int i = 0; i < 11; i++) {
      queries.add(query("Q-" + i, "W7", "question " + i + "?"));
    }
    String text = text(sheet("dunlin").document().getDocumentElement());
    assertTrue(text.contains("question 7?") && text.contains("3 more on the return sheet."), text);
    assertFalse(text.contains("question 8?"), text);
  }

  @Test
  void theSheetLeadsToTheReportAndToTheComponent() throws IOException {
    due.add(due("dunlin", "AC", "@1/1", "overdue").build());
    assertEquals(
        List.of("../report/index.html", "../report/compressor-valve.html"),
        sheet("dunlin").elements("a").stream().map(link -> link.getAttribute("href")).toList());
  }

  @Test
  void piecesAreThoseThatTheFleetRenewsRoundedUp() throws IOException {
    findings.add(
        Fleets.finding(50, 40)
            .with(PartFindings.RENEWED, 30L)
            .with(EvidenceColumns.VERDICT, "ok")
            .build());
    for (String position : List.of("@1/1", "@1/2", "@2/1")) {
      due.add(due("dunlin", "AC", position, "overdue").build());
    }
    Element kit = sheet("dunlin").elements("tbody").get(0);
    List<String> pieces =
        HtmlFile.below(kit, "tr").stream().map(row -> text(HtmlFile.in(row).get(2))).toList();
    assertEquals(List.of("2", "\u2013"), pieces); // 3 * 30 / 50 = 1.8
  }

  @Test
  void theBatchIsTheGroupOfThePositionOverdueByMost() throws IOException {
    due.add(
        due("dunlin", "AC", "@1/1", "due-soon").with(DueForecast.DUE_EARLY, "2025-01-02").build());
    due.add(due("dunlin", "DG1", "@1/1", "overdue").with(DueList.REMAINING, -5.0).build());
    due.add(due("dunlin", "DG2", "@1/1", "overdue").with(DueList.REMAINING, -900.0).build());
    due.add(due("dunlin", "DG2", "@1/2", "not-due").with(DueList.REMAINING, 400.0).build());
    HtmlFile page = sheet("dunlin");
    String facts = text(page.elements("dl").get(0));
    assertTrue(facts.contains("MachineDG2"), facts);
    assertTrue(facts.contains("Positions in this batch2"), facts);
    assertTrue(facts.contains("Also overdue or due soonAC 1 position, DG1 1 position"), facts);
  }

  @Test
  void aVesselWithNothingDueHasNoSheet() throws IOException {
    due.add(due("dunlin", "AC", "@1/1", "overdue").build());
    due.add(due("teal", "AC", "@1/1", "not-due").build());
    due.add(due("wigeon", "AC", "@1/1", "unknown").build());
    write();
    assertTrue(Files.exists(folder.resolve("briefing/dunlin.html")));
    assertFalse(Files.exists(folder.resolve("briefing/teal.html")));
    assertFalse(Files.exists(folder.resolve("briefing/wigeon.html")));
  }

  @Test
  void onlyQuestionsAboutThesePositionsAreAsked() throws IOException {
    due.add(due("dunlin", "AC", "@1/1", "overdue").build());
    cards.add(
        card("dunlin", "@1/1", "plate")
            .with(JobCards.LAST_OVERHAUL, "W5")
            .with(JobCards.LAST_ON, "2023-01-01")
            .build());
    queries.add(query("Q-1", "W7", "the last overhaul?"));
    queries.add(query("Q-2", "W5", "the last finding?"));
    queries.add(query("Q-3", "W1", "long ago?"));
    String text = text(sheet("dunlin").document().getDocumentElement());
    assertTrue(text.contains("the last overhaul?") && text.contains("the last finding?"), text);
    assertFalse(text.contains("long ago?"), text);
  }

  @Test
  void whatShipsWriteIsTextAndNothingElse() throws IOException {
    List<String> texts =
        List.of(
            "</table><script>alert(1)</script>",
            "javascript:alert(1)",
            "\u202Eretsam",
            "=cmd|'/c calc'!A0",
            "x".repeat(10_000));
    for (int i = 0; i < texts.size(); i++) {
      queries.add(query("Q-" + i, "W7", texts.get(i)));
    }
    due.add(due("dunlin", "AC", "@1/1", "overdue").build());
    assertTrue(isolated(sheet("dunlin")).containsAll(texts), "questions");
    due.clear();
    queries.clear();
    for (int i = 0; i < texts.size(); i++) {
      due.add(
          due("dunlin", "AC", "@1/" + (i + 1), "overdue").with(DueList.ITEM, texts.get(i)).build());
    }
    due.add(due("../../<b>", "AC", "@1/1", "overdue").build());
    HtmlFile page = sheet("dunlin");
    assertTrue(isolated(page).containsAll(texts), "items");
    assertTrue(page.elements("script").isEmpty());
    page.elements("a")
        .forEach(link -> assertTrue(link.getAttribute("href").startsWith("../report/")));
    try (var files = Files.list(folder.resolve("briefing"))) {
      assertEquals(2, files.count(), "a vessel's name leads nowhere else");
    }
  }

  private static List<String> isolated(HtmlFile page) {
    return page.elements("bdi").stream().map(Element::getTextContent).toList();
  }
}
