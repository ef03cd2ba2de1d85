package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadline.fleet.FormulaGuard;
import leadline.page.HtmlFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The pages of the golden fleet, read back and held against the published tables. */
class ReportPagesTest {

  private static final Pattern NUMBER = Pattern.compile("-?\\d[\\d,]*(\\.\\d+)?");

  private static Path month;
  private static List<HtmlFile> pages;

  @BeforeAll
  static void read() throws IOException {
    month = GoldenMonth.folder();
    pages = HtmlFile.all(month);
  }

  @Test
  void thereIsAReportAndAPageForEachComponent() {
    Set<String> names = new HashSet<>();
    pages.forEach(page -> names.add(page.toString()));
    Set<String> expected = new HashSet<>(Set.of("index.html"));
    GoldenFleet.catalogue()
        .components()
        .forEach(component -> expected.add(component.name() + ".html"));
    assertEquals(expected, names);
  }

  @Test
  void everyRowOfATableOnAPageIsARowOfThePublishedTable() {
    Map<Path, Set<Map<String, String>>> projected = new HashMap<>();
    int rows = 0;
    for (HtmlFile page : pages) {
      for (Element table : page.elements("table")) {
        Path file = fileOf(page, table);
        if (file.endsWith(FoundByHoursPagesTest.FILE)) {
          continue; // a column for each condition: FoundByHoursPagesTest
        }
        List<String> heads = columns(table);
        Set<Map<String, String>> published = new HashSet<>();
        Expected.read(file).forEach(row -> published.add(only(row, heads)));
        for (Map<String, String> row : rowsOf(table)) {
          assertTrue(published.contains(row), () -> page + ": " + file.getFileName() + ": " + row);
          rows++;
        }
        projected.put(file, published);
      }
    }
    assertTrue(projected.size() >= 2, "tables: " + projected.keySet());
    assertTrue(rows > 20, "rows: " + rows);
  }

  @Test
  void whatIsReadIsTheExactNumberRounded() {
    int numbers = 0;
    for (HtmlFile page : pages) {
      for (Element table : page.elements("table")) {
        for (Element cell : cells(table)) {
          if (cell.hasAttribute("data-v")) {
            numbers += assertRounded(page, cell);
          }
        }
      }
    }
    assertTrue(numbers > 100, "numbers: " + numbers);
  }

  private static int assertRounded(HtmlFile page, Element cell) {
    String text = cell.getTextContent();
    List<String> exact = new ArrayList<>();
    for (String attribute : List.of("data-v", "data-lo", "data-hi")) {
      if (!cell.getAttribute(attribute).isEmpty()) {
        exact.add(cell.getAttribute(attribute));
      }
    }
    List<BigDecimal> read = new ArrayList<>();
    Matcher number = NUMBER.matcher(text);
    while (number.find()) {
      read.add(new BigDecimal(number.group().replace(",", "")));
    }
    assertEquals(exact.size(), read.size(), page + ": " + text + " for " + exact);
    BigDecimal unit = text.contains("%") ? BigDecimal.valueOf(100) : BigDecimal.ONE;
    for (int i = 0; i < read.size(); i++) {
      BigDecimal shown = read.get(i);
      BigDecimal off = new BigDecimal(exact.get(i)).multiply(unit).subtract(shown).abs();
      BigDecimal half =
          BigDecimal.ONE.movePointLeft(shown.scale()).multiply(new BigDecimal("0.501"));
      assertTrue(off.compareTo(half) <= 0, page + ": " + text + " for " + exact);
    }
    return read.size();
  }

  @Test
  void theFiguresOfAChartAreThoseOfTheTableBelowIt() {
    int figures = 0;
    for (HtmlFile page : pages) {
      for (Element figure : page.elements("figure")) {
        Set<String> texts = new HashSet<>();
        cells(HtmlFile.below(tableBelow(figure), "table").get(0))
            .forEach(cell -> texts.add(cell.getTextContent()));
        for (Element words : HtmlFile.below(figure, "text")) {
          if (words.getAttribute("class").equals("figure")
              && words.getTextContent().matches("[0-9].*")) {
            assertTrue(
                texts.contains(words.getTextContent()), page + ": " + words.getTextContent());
            figures++;
          }
        }
      }
    }
    assertTrue(figures > 5, "figures: " + figures);
  }

  @Test
  void everyPageCarriesAllCautionsAndSaysWhoDecides() {
    List<String> cautions = GoldenFleet.SHARED.cautions();
    for (HtmlFile page : pages) {
      String text = page.document().getDocumentElement().getTextContent();
      cautions.forEach(caution -> assertTrue(text.contains(caution), page + ": " + caution));
      Element header = page.elements("header").get(0);
      for (String last : cautions.subList(cautions.size() - 2, cautions.size())) {
        assertTrue(header.getTextContent().contains(last), page + ": " + last);
      }
    }
  }

  @Test
  void noPageAsksForAnythingElse() {
    for (HtmlFile page : pages) {
      for (Element element : page.elements("*")) {
        assertFalse(element.hasAttribute("src"), page + ": " + element.getTagName());
        assertFalse(element.hasAttribute("style"), page + ": " + element.getTagName());
        assertFalse(
            Set.of("link", "iframe", "object", "img", "image", "use")
                .contains(element.getTagName()),
            page + ": " + element.getTagName());
      }
      assertTrue(
          page.elements("meta").stream()
              .anyMatch(meta -> meta.getAttribute("content").startsWith("default-src 'none';")),
          page.toString());
    }
  }

  @Test
  void everyLinkLeadsSomewhere() {
    for (HtmlFile page : pages) {
      Set<String> ids = new HashSet<>();
      for (Element element : page.elements("*")) {
        if (element.hasAttribute("id")) {
          assertTrue(
              ids.add(element.getAttribute("id")), page + ": two " + element.getAttribute("id"));
        }
      }
      for (Element link : page.elements("a")) {
        String target = link.getAttribute("href");
        assertTrue(
            target.startsWith("#")
                ? ids.contains(target.substring(1))
                : page.path().resolveSibling(target.replaceFirst("#.*", "")).toFile().exists(),
            page + ": " + target);
      }
    }
  }

  @Test
  void aSentenceThatNeedsADecisionLeadsToTheRowsWithItsFirstFigure() {
    HtmlFile report =
        pages.stream()
            .filter(page -> page.toString().equals("index.html"))
            .findFirst()
            .orElseThrow();
    int links = 0;
    for (Element item : HtmlFile.below(byId(report, "decisions"), "li")) {
      for (Element link : HtmlFile.below(item, "a")) {
        Element rows = byId(report, link.getAttribute("href").substring(1));
        assertEquals("tbody", rows.getTagName());
        List<String> figures = new ArrayList<>();
        figures.add(String.valueOf(HtmlFile.below(rows, "tr").size()));
        HtmlFile.below(rows, "td").forEach(cell -> figures.add(cell.getTextContent()));
        HtmlFile.below(rows, "th").forEach(cell -> figures.add(cell.getTextContent()));
        Matcher number = NUMBER.matcher(item.getTextContent());
        int found = 0;
        while (number.find()) {
          found += figures.contains(number.group().replaceAll(",$", "")) ? 1 : 0;
        }
        assertTrue(found > 0, item.getTextContent() + " leads to " + figures);
        links++;
      }
    }
    assertTrue(links > 3, "links: " + links);
  }

  private static Element byId(HtmlFile page, String id) {
    return page.elements("*").stream()
        .filter(element -> element.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(page + ": nothing is #" + id));
  }

  static Element tableBelow(Element figure) {
    for (org.w3c.dom.Node node = figure.getNextSibling();
        node != null;
        node = node.getNextSibling()) {
      if (node instanceof Element element && element.getAttribute("class").contains("table")) {
        return element;
      }
    }
    throw new AssertionError("no table below a chart");
  }

  private static Path fileOf(HtmlFile page, Element table) {
    String link = HtmlFile.below(table, "a").get(0).getAttribute("href");
    return page.path().resolveSibling(link).normalize();
  }

  private static List<String> columns(Element table) {
    List<String> columns = new ArrayList<>();
    for (Element head : HtmlFile.below(HtmlFile.below(table, "thead").get(0), "th")) {
      columns.addAll(List.of(head.getAttribute("data-columns").split(" ")));
    }
    return columns;
  }

  private static Map<String, String> only(Map<String, String> row, List<String> columns) {
    Map<String, String> values = new LinkedHashMap<>();
    columns.forEach(column -> values.put(column, row.getOrDefault(column, "no such column")));
    return values;
  }

  static List<Map<String, String>> rowsOf(Element table) {
    List<Element> heads = HtmlFile.below(HtmlFile.below(table, "thead").get(0), "th");
    List<Map<String, String>> rows = new ArrayList<>();
    for (Element row : bodyRows(table)) {
      List<Element> cells = HtmlFile.in(row);
      Map<String, String> values = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        String[] columns = heads.get(i).getAttribute("data-columns").split(" ", -1);
        String[] attributes = {"data-v", "data-lo", "data-hi"};
        for (int j = 0; j < columns.length; j++) {
          values.put(columns[j], exact(cells.get(i), attributes[j]));
        }
      }
      rows.add(values);
    }
    return rows;
  }

  private static String exact(Element cell, String attribute) {
    if (cell.getAttribute("class").equals("none")) {
      return "";
    }
    return cell.hasAttribute("data-v")
        ? cell.getAttribute(attribute)
        : FormulaGuard.on(cell.getTextContent());
  }

  private static List<Element> cells(Element table) {
    List<Element> cells = new ArrayList<>();
    bodyRows(table).forEach(row -> cells.addAll(HtmlFile.in(row)));
    return cells;
  }

  private static List<Element> bodyRows(Element table) {
    return HtmlFile.below(table, "tbody").stream()
        .flatMap(body -> HtmlFile.below(body, "tr").stream())
        .toList();
  }
}
