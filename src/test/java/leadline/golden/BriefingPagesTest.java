package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.page.HtmlFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The golden fleet's briefings and mail, read back and held against the published tables. */
class BriefingPagesTest {

  private static Path month;
  private static List<Map<String, String>> due;
  private static List<HtmlFile> briefings;

  @BeforeAll
  static void read() throws IOException {
    month = GoldenMonth.folder();
    due = Expected.read(month.resolve("tables/due_list.csv"));
    briefings = new ArrayList<>();
    try (Stream<Path> files = Files.list(month.resolve("briefing"))) {
      for (Path file : files.sorted().toList()) {
        briefings.add(HtmlFile.read(file));
      }
    }
  }

  private static boolean isComing(Map<String, String> row) {
    return Set.of("overdue", "due-soon").contains(row.get("standing"));
  }

  @Test
  void aVesselHasABriefingWhereSomethingIsOverdueOrDueSoon() {
    Set<String> coming =
        due.stream()
            .filter(BriefingPagesTest::isComing)
            .map(row -> row.get("vessel") + ".html")
            .collect(Collectors.toSet());
    Set<String> written = new HashSet<>();
    briefings.forEach(page -> written.add(page.toString()));
    assertEquals(coming, written);
    assertFalse(coming.isEmpty());
  }

  @Test
  void everyPositionOfTheBatchHasItsHoursAndItsLimit() {
    int cards = 0;
    for (HtmlFile page : briefings) {
      for (Element card : cards(page)) {
        Map<String, String> row = rowOf(page, card);
        String caption = text(HtmlFile.below(card, "caption").get(0));
        assertTrue(caption.contains("limit " + hours(row.get("limit_h"))), caption);
        assertTrue(caption.contains(row.get("since_on")), caption);
        assertTrue(
            row.get("hours_since_overhaul_h").isEmpty()
                ? caption.contains("unknown since") && caption.contains(hours(row.get("run_h")))
                : caption.contains(hours(row.get("hours_since_overhaul_h"))),
            caption);
        if (!row.get("shut_part").isEmpty()) {
          assertTrue(
              Double.parseDouble(row.get("shut_h")) < 1
                  ? caption.contains("never opened on record")
                  : caption.contains(hours(row.get("shut_h"))),
              caption);
        }
        cards++;
      }
    }
    assertTrue(cards >= briefings.size(), "cards: " + cards);
  }

  @Test
  void everyPartHasItsBoxes() {
    for (HtmlFile page : briefings) {
      for (Element card : cards(page)) {
        List<Element> rows = HtmlFile.below(HtmlFile.below(card, "tbody").get(0), "tr");
        List<String> parts =
            rows.stream().map(row -> text(HtmlFile.below(row, "th").get(0))).toList();
        assertEquals(parts(rowOf(page, card).get("component")), parts);
        for (Element row : rows) {
          List<String> styles =
              HtmlFile.below(row, "td").stream().map(cell -> cell.getAttribute("class")).toList();
          assertEquals(
              List.of("box", "box", "box", "tick"),
              styles.subList(styles.size() - 4, styles.size()));
        }
      }
    }
  }

  @Test
  void whatTheFleetFoundIsThePublishedRow() {
    Map<String, Map<String, String>> findings =
        Expected.read(month.resolve("tables/part_findings.csv")).stream()
            .filter(row -> row.get("level").equals("fleet"))
            .filter(row -> row.get("window").equals("since-start"))
            .collect(Collectors.toMap(row -> row.get("component") + row.get("part"), row -> row));
    int lines = 0;
    for (HtmlFile page : briefings) {
      for (Element kit : sections(page, "kit")) {
        String component = componentOf(text(HtmlFile.below(kit, "caption").get(0)));
        for (Element row : HtmlFile.below(HtmlFile.below(kit, "tbody").get(0), "tr")) {
          Map<String, String> found =
              findings.getOrDefault(component + text(HtmlFile.below(row, "th").get(0)), Map.of());
          String expected =
              found.get("opened").equals("0")
                  ? "never opened in %s overhauls".formatted(found.get("overhauled"))
                  : "%s of %s opened failed".formatted(found.get("failed"), found.get("opened"));
          assertTrue(text(row).contains(expected), text(row));
          lines++;
        }
      }
    }
    assertTrue(lines > 5, "lines: " + lines);
  }

  @Test
  void everyBriefingCarriesAllCautionsAndAsksForNothing() {
    for (HtmlFile page : briefings) {
      String text = text(page.document().getDocumentElement());
      GoldenFleet.SHARED
          .cautions()
          .forEach(caution -> assertTrue(text.contains(caution), page + ": " + caution));
      for (Element element : page.elements("*")) {
        assertFalse(
            Set.of("link", "script", "iframe", "img").contains(element.getTagName()),
            element.getTagName());
        assertFalse(element.hasAttribute("src") || element.hasAttribute("style"), page.toString());
      }
    }
  }

  @Test
  void theMailHasEachVesselsCountsAndEveryCaution() throws IOException {
    List<String> lines = Files.readAllLines(month.resolve("month.txt"));
    String markdown = Files.readString(month.resolve("month.md"));
    for (Map<String, String> row : Expected.read(month.resolve("tables/fleet_month.csv"))) {
      List<String> counts =
          Stream.of("vessel", "overdue", "due_soon", "due_unknown", "questions", "data_grade")
              .map(row::get)
              .toList();
      assertTrue(
          lines.stream().anyMatch(line -> List.of(line.split(" +")).equals(counts)),
          counts.toString());
      assertTrue(markdown.contains("| " + String.join(" | ", counts) + " |"), counts.toString());
    }
    String whole = String.join(" ", lines).replaceAll(" +", " ");
    GoldenFleet.SHARED.cautions().forEach(caution -> assertTrue(whole.contains(caution), caution));
    lines.forEach(line -> assertTrue(line.length() <= 80, line));
  }

  private static List<Element> sections(HtmlFile page, String style) {
    return page.elements("section").stream()
        .filter(section -> section.getAttribute("class").equals(style))
        .toList();
  }

  private static List<Element> cards(HtmlFile page) {
    return page.elements("div").stream()
        .filter(element -> element.getAttribute("class").equals("card"))
        .toList();
  }

  /** The row of the due list that the card is about. */
  private static Map<String, String> rowOf(HtmlFile page, Element card) {
    String caption = text(HtmlFile.below(card, "caption").get(0)).strip();
    String vessel = page.toString().replace(".html", "");
    String machine = text(page.elements("dd").get(1));
    return due.stream()
        .filter(row -> row.get("vessel").equals(vessel) && row.get("machine").equals(machine))
        .filter(row -> caption.startsWith(heading(row.get("component"), row.get("position"))))
        .findFirst()
        .orElseThrow(() -> new AssertionError(caption));
  }

  private static String heading(String component, String position) {
    return words(component) + " " + position.replaceFirst("^'", "") + " "; // the CSV's guard
  }

  private static String words(String component) {
    String words = component.replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String componentOf(String caption) {
    return GoldenFleet.catalogue().components().stream()
        .map(Component::name)
        .filter(name -> caption.startsWith(words(name) + ","))
        .findFirst()
        .orElseThrow(() -> new AssertionError(caption));
  }

  private static List<String> parts(String component) {
    return GoldenFleet.catalogue().component(component).orElseThrow().parts().stream()
        .map(Part::name)
        .toList();
  }

  private static String hours(String exact) {
    return String.format(Locale.ROOT, "%,.0f h", Double.parseDouble(exact));
  }

  private static String text(Element element) {
    return element.getTextContent().replaceAll("\\s+", " ");
  }
}
