package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import leadline.page.HtmlFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The conditions by hours on the component pages, read back and held against the table. */
class FoundByHoursPagesTest {

  static final Path FILE = Path.of("tables", "findings_by_hours.csv");

  private static List<Map<String, String>> published;
  private static List<HtmlFile> pages;

  @BeforeAll
  static void read() throws IOException {
    published =
        Expected.read(GoldenMonth.folder().resolve(FILE)).stream()
            .filter(row -> row.get("level").equals("fleet"))
            .toList();
    pages =
        HtmlFile.all(GoldenMonth.folder()).stream()
            .filter(page -> !page.toString().equals("index.html"))
            .toList();
  }

  @Test
  void everyOpenedPartHasATableWithAllItsBandsAndConditions() {
    int rows = 0;
    for (HtmlFile page : pages) {
      for (String part : parts(page)) {
        Map<String, List<Map<String, String>>> bands = bands(page, part);
        List<Element> tables =
            page.elements("table").stream().filter(table -> isOf(part, table)).toList();
        if (bands.getOrDefault("all", List.of()).get(0).get("opened").equals("0")) {
          assertEquals(List.of(), tables, page + " " + part);
          continue;
        }
        assertEquals(1, tables.size(), page + " " + part);
        List<Map<String, String>> expected =
            bands.values().stream().map(FoundByHoursPagesTest::asRow).toList();
        assertEquals(expected, ReportPagesTest.rowsOf(tables.get(0)), page + " " + part);
        rows += expected.size();
      }
    }
    assertTrue(rows > 30, "rows: " + rows);
  }

  @Test
  void everyMarkOfAChartSaysTheFigureOfTheTableBelowIt() {
    int marks = 0;
    for (HtmlFile page : pages) {
      for (Element figure : page.elements("figure")) {
        if (HtmlFile.below(figure, "text").stream().noneMatch(FoundByHoursPagesTest::isPanel)) {
          continue;
        }
        Set<String> cells =
            HtmlFile.below(ReportPagesTest.tableBelow(figure), "td").stream()
                .map(Element::getTextContent)
                .collect(Collectors.toSet());
        for (Element title : HtmlFile.below(figure, "title")) {
          assertTrue(
              cells.contains(title.getTextContent().replaceFirst(".*: ", "")),
              page + ": " + title.getTextContent());
          marks++;
        }
      }
    }
    assertTrue(marks > 100, "marks: " + marks);
  }

  @Test
  void whatNobodyOpenedIsNamed() {
    String text = text("fuel-injector.html");
    assertTrue(text.contains("On record as opened: none of thrust piece, shims."), text);
    assertTrue(text.contains("Failed is cracked or broken, for main spring, NRV spring."), text);
    assertFalse(text.contains("thrust piece: conditions found"), text);
  }

  private static String text(String name) {
    return pages.stream()
        .filter(page -> page.toString().equals(name))
        .map(page -> page.document().getDocumentElement().getTextContent())
        .findFirst()
        .orElseThrow();
  }

  private static boolean isPanel(Element text) {
    return text.getAttribute("class").equals("panel");
  }

  private static boolean isOf(String part, Element table) {
    return ((Element) table.getParentNode().getParentNode())
        .getAttribute("id")
        .equals("found-" + part + "-table");
  }

  private static Set<String> parts(HtmlFile page) {
    return published.stream()
        .filter(row -> page.toString().equals(row.get("component") + ".html"))
        .map(row -> row.get("part"))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Map<String, List<Map<String, String>>> bands(HtmlFile page, String part) {
    return published.stream()
        .filter(row -> page.toString().equals(row.get("component") + ".html"))
        .filter(row -> row.get("part").equals(part))
        .collect(
            Collectors.groupingBy(
                row -> row.get("hours_band"), LinkedHashMap::new, Collectors.toList()));
  }

  /** The rows of a band as one, the conditions in its columns. */
  private static Map<String, String> asRow(List<Map<String, String>> band) {
    Map<String, String> row = new LinkedHashMap<>();
    for (String shared : List.of("hours_band", "overhauled", "opened")) {
      row.put(shared, band.get(0).get(shared));
    }
    Set<String> verdicts = new TreeSet<>();
    for (Map<String, String> condition : band) {
      for (String limit : List.of("", "_lo95", "_hi95")) {
        row.put(condition.get("found") + "_share" + limit, condition.get("found_share" + limit));
      }
      verdicts.add(condition.get("verdict"));
    }
    row.put("verdict", verdicts.size() == 1 ? verdicts.iterator().next() : "ok but for *");
    return row;
  }
}
