package leadline.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadline.fleet.Catalogue;
import leadline.publish.Documents;
import leadline.publish.Issue;
import leadline.publish.MonthInWords;
import leadline.publish.Paragraphs;
import leadline.summary.TableRow;

/** The month for a mail: {@code month.txt} in lines of 80 characters, and {@code month.md}. */
public final class MonthMail implements Documents {

  private final Catalogue catalogue;

  public MonthMail(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  @Override
  public void write(Issue issue, Path folder) throws IOException {
    MailText plain = new PlainMail();
    write(issue, plain);
    Files.writeString(folder.resolve("month.txt"), plain.toString(), StandardCharsets.UTF_8);
    MailText markdown = new MarkdownMail();
    write(issue, markdown);
    Files.writeString(folder.resolve("month.md"), markdown.toString(), StandardCharsets.UTF_8);
  }

  private void write(Issue issue, MailText mail) {
    Tables tables = Tables.of(issue);
    mail.title("Fleet report, " + Named.month(issue.manifest().month()));
    Header.facts(issue).forEach(fact -> mail.sentence(fact.name() + ": " + fact.value()));
    mail.heading(Decisions.HEADING);
    List<Decisions.Asked> decisions = Decisions.of(tables, catalogue);
    if (decisions.isEmpty()) {
      mail.sentence(Decisions.NONE);
    }
    for (Decisions.Asked asked : decisions) {
      asked.points().forEach(point -> mail.point(asked.heading() + ": " + point.sentence()));
    }
    NamedTable.find(tables, "fleet_month").ifPresent(month -> addVessels(mail, month));
    mail.heading("Rates, intervals, springs");
    for (Paragraphs.Paragraph paragraph :
        MonthInWords.paragraphs(issue.manifest(), issue.tables(), catalogue).all()) {
      if (paragraph.indent().isEmpty()) {
        mail.point(paragraph.text());
      } else {
        mail.pointBelow(paragraph.text());
      }
    }
    mail.heading("Cautions");
    issue.cautions().forEach(mail::point);
  }

  private static void addVessels(MailText mail, NamedTable month) {
    mail.heading("Positions due, and questions open");
    mail.table(
        List.of("vessel", "overdue", "due soon", "unknown", "questions", "grade"),
        month.rows().stream().map(row -> vessel(month, row)).toList());
    NothingDue.sentence(month).ifPresent(mail::sentence);
  }

  private static List<String> vessel(NamedTable month, TableRow row) {
    return List.of("vessel", "overdue", "due_soon", "due_unknown", "questions", "data_grade")
        .stream()
        .map(column -> month.text(row, column))
        .toList();
  }
}
