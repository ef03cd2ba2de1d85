package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.publish.Issue;
import leadline.publish.PublishedTable;
import leadline.publish.RunManifest;
import leadline.publish.Standing;
import leadline.quantity.ReportMonth;
import leadline.summary.ComponentRates;
import leadline.summary.EvidenceColumns;
import leadline.summary.IntakeLog;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.UnmappedWords;
import leadline.summary.ValueType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** What ships write is shown as they wrote it and does nothing; very much of it stays readable. */
class HostilePagesTest {

  private static final Instant KNOWN_AT = Instant.parse("2025-01-10T12:00:00Z");

  private static final TableColumn<String> VESSEL = key("vessel");
  private static final TableColumn<String> QUERY = key("query");
  private static final TableColumn<String> QUESTION = key("question");
  private static final TableSpec QUERIES =
      new TableSpec("vessel_queries", "what is asked", List.of(VESSEL, QUERY, QUESTION));

  private static final List<String> TEXTS =
      List.of(
          "<script>alert(1)</script>",
          "</script></table></main><img src=x onerror=alert(1)>",
          "javascript:alert(1)",
          "\" onmouseover=\"alert(1)",
          "' autofocus onfocus='alert(1)",
          "=cmd|'/c calc'!A0",
          "&lt;b&gt; &amp; &#60;",
          "<!-- --> ]]> <![CDATA[",
          "${page.title()} $unsafe{page} @if(true)",
          "\u202Egnirps nekorb\u202C and \u200Fmarks\u2067",
          "Düse gewechselt, ノズル, ψ 😀",
          "x".repeat(10_000));

  @TempDir private Path folder;

  private static TableColumn<String> key(String name) {
    return new TableColumn<>(name, new ValueType.Text(), "", TableColumn.Need.KEY, name);
  }

  private static Issue issue(List<PublishedTable> tables) {
    return new Issue(
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
        tables,
        List.of("Keep clear of the spray.", "Class and flag prevail.", "No proof of safety."));
  }

  private HtmlFile report(List<PublishedTable> tables) throws IOException {
    new Pages(new Catalogue(List.of())).write(issue(tables), folder);
    return HtmlFile.read(folder.resolve("report/index.html"));
  }

  private static PublishedTable questions(List<String> texts) {
    List<TableRow> rows = new ArrayList<>();
    for (String text : texts) {
      rows.add(question(text, "Q-" + rows.size(), "Is \"" + text + "\" right?"));
    }
    return new PublishedTable(QUERIES, rows);
  }

  private static PublishedTable words(List<String> texts) {
    return new PublishedTable(
        UnmappedWords.SPEC,
        texts.stream()
            .map(
                text ->
                    UnmappedWords.SPEC
                        .row()
                        .with(SharedColumns.MONTH, "2024-12")
                        .with(SharedColumns.KNOWN_AT, KNOWN_AT)
                        .with(UnmappedWords.RECORD, "findings")
                        .with(UnmappedWords.COLUMN, "found")
                        .with(UnmappedWords.WORD, text)
                        .with(UnmappedWords.ROWS, 1L)
                        .with(UnmappedWords.VESSELS, 1L)
                        .with(UnmappedWords.FIRST_BATCH, "b")
                        .with(UnmappedWords.FIRST_FILE, text)
                        .with(UnmappedWords.FIRST_LINE, 2L)
                        .with(UnmappedWords.LAST_BATCH, "b")
                        .with(UnmappedWords.LAST_FILE, text)
                        .with(UnmappedWords.LAST_LINE, 2L)
                        .build())
            .toList());
  }

  @Test
  void everyTextIsReadBackAsItWasWritten() throws IOException {
    HtmlFile page = report(List.of(questions(TEXTS), words(TEXTS)));
    Set<String> cells = new HashSet<>();
    Stream.of("td", "th")
        .forEach(tag -> page.elements(tag).forEach(cell -> cells.add(cell.getTextContent())));
    for (String text : TEXTS) {
      assertTrue(cells.contains(text), text);
      assertTrue(cells.contains("Is \"" + text + "\" right?"), text);
    }
  }

  @Test
  void noTextBecomesAnElementAnAttributeOrALink() throws IOException {
    HtmlFile plain = report(List.of(questions(List.of("plain")), words(List.of("plain"))));
    Set<String> known = namesIn(plain);
    Files.delete(folder.resolve("report/index.html"));
    Files.delete(folder.resolve("report"));
    HtmlFile page = report(List.of(questions(TEXTS), words(TEXTS)));
    assertEquals(known, namesIn(page));
    page.elements("a")
        .forEach(link -> assertFalse(link.getAttribute("href").contains("javascript")));
    String html = Files.readString(page.path());
    assertEquals(2, html.split("<script>", -1).length, "one script");
    assertEquals(2, html.split("</script>", -1).length, "one script");
  }

  /** All names of elements and attributes of a page. */
  private static Set<String> namesIn(HtmlFile page) {
    Set<String> names = new HashSet<>();
    for (Element element : page.elements("*")) {
      names.add(element.getTagName());
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        names.add(element.getTagName() + "." + element.getAttributes().item(i).getNodeName());
      }
    }
    return names;
  }

  @Test
  void aNameInASentenceCannotTurnWhatFollows() throws IOException {
    HtmlFile page = report(List.of(questions(List.of("\u202Eretsam"))));
    String sentences =
        page.elements("ul").stream().map(Element::getTextContent).toList().toString();
    assertTrue(sentences.contains("\u2068\u202Eretsam\u2069 1. Send the vessel"), sentences);
  }

  @Test
  void eachVesselIsAskedItsOldestQuestionsFirst() throws IOException {
    List<TableRow> rows = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      rows.add(question("dunlin", "Q-" + i, "old " + i));
    }
    rows.add(question("teal", "Q-9", "only"));
    HtmlFile page = report(List.of(new PublishedTable(QUERIES, rows)));
    List<String> cells = page.elements("td").stream().map(Element::getTextContent).toList();
    assertTrue(cells.containsAll(List.of("old 0", "old 4", "only")), cells.toString());
    assertFalse(cells.contains("old 5"), "the sixth");
    String text = page.document().getDocumentElement().getTextContent();
    assertTrue(text.contains("The 5 oldest questions to each vessel; the file has all 10."), text);
    assertTrue(text.contains("\u2068dunlin\u2069: 9 questions,"), text);
    assertTrue(text.contains("\u2068teal\u2069: 1 question,"), text);
  }

  private static TableRow question(String vessel, String query, String question) {
    return QUERIES.row().with(VESSEL, vessel).with(QUERY, query).with(QUESTION, question).build();
  }

  @Test
  void aMonthWithoutAnyRowsIsStillAPage() throws IOException {
    HtmlFile page = report(List.of());
    String text = page.document().getDocumentElement().getTextContent();
    assertTrue(text.contains("No rule found anything in the tables that needs a decision."));
    assertTrue(text.contains("Keep clear of the spray."));
  }

  @Test
  void aReportOfTwoHundredVesselsStaysSmall() throws IOException {
    List<TableRow> questions = new ArrayList<>();
    List<TableRow> files = new ArrayList<>();
    List<TableRow> rates = new ArrayList<>();
    for (int vessel = 0; vessel < 200; vessel++) {
      rates.add(rate("vessel-%03d".formatted(vessel)));
      for (int question = 0; question < 6; question++) {
        files.add(Fleets.file("findings_%03d_%d.csv".formatted(vessel, question), 1));
        questions.add(
            question(
                "vessel-%03d".formatted(vessel),
                "Q-" + question,
                "The reading is left out; send it as the log has it. ".repeat(6)));
      }
    }
    HtmlFile page =
        report(
            List.of(
                new PublishedTable(QUERIES, questions),
                new PublishedTable(IntakeLog.SPEC, files),
                new PublishedTable(ComponentRates.SPEC, rates)));
    long bytes = Files.size(page.path());
    assertTrue(bytes < 5_000_000, bytes + " bytes");
    String text = page.document().getDocumentElement().getTextContent();
    assertTrue(text.contains("The 5 oldest questions to each vessel; the file has all 1,200."));
    assertTrue(text.contains("1,000 of 1,200 rows; all are in the file."));
  }

  private static TableRow rate(String vessel) {
    return Fleets.rate("fuel-injector", "vessel", vessel, "since-start", 3, 412_000)
        .with(EvidenceColumns.VERDICT, "too-few")
        .build();
  }
}
