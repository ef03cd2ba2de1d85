package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A mail is read by programs that know nothing of where its words came from. */
class MonthMailTest {

  private static final List<String> HEADS = List.of("vessel", "overdue");

  @Test
  void noLineIsWiderThanEightyCharacters() {
    MailText mail = new PlainMail();
    for (String text : List.of("word ".repeat(60), "x".repeat(10_000), "ψ😀".repeat(200))) {
      mail.title(text.substring(0, 40));
      mail.sentence(text);
      mail.point(text);
      mail.pointBelow(text);
      mail.table(HEADS, List.of(List.of(text, "12")));
    }
    mail.toString()
        .lines()
        .forEach(line -> assertTrue(line.length() <= 80, line.length() + ": " + line));
    assertEquals(4 * 10_000, mail.toString().chars().filter(letter -> letter == 'x').count() - 40);
  }

  @Test
  void aTableStandsInColumns() {
    MailText mail = new PlainMail();
    mail.table(HEADS, List.of(List.of("dunlin", "3"), List.of("a".repeat(27), "12")));
    assertEquals(
        """
        vessel                       overdue
        dunlin                             3
        aaaaaaaaaaaaaaaaaaaaaaaaaaa
                                          12
        """,
        mail.toString());
  }

  @Test
  void breaksAndTurningMarksOfANameDoNotShowInPlainText() {
    MailText mail = new PlainMail();
    mail.sentence("\u2068\u202Eretsam\u2069 1\r\nBcc: all");
    assertEquals("retsam 1  Bcc: all\n", mail.toString());
  }

  @Test
  void inMarkdownNoDataIsAMarkALinkOrAnElement() {
    assertEquals("a\\|b", MarkdownMail.escaped("a|b"));
    assertEquals("\\`rm\\`", MarkdownMail.escaped("`rm`"));
    assertEquals("\\<script\\>", MarkdownMail.escaped("<script>"));
    assertEquals("\\[x\\](javascript:alert(1))", MarkdownMail.escaped("[x](javascript:alert(1))"));
    assertEquals("\\*\\*b\\*\\* \\_i\\_ \\~s\\~", MarkdownMail.escaped("**b** _i_ ~s~"));
    assertEquals("\\\\\\|", MarkdownMail.escaped("\\|"));
    assertEquals("\\# no heading", MarkdownMail.escaped("# no heading"));
    assertEquals("1\\. no list", MarkdownMail.escaped("1. no list"));
    assertEquals("http\\://x.example www\\.x", MarkdownMail.escaped("http://x.example www.x"));
    assertEquals("\\&lt;", MarkdownMail.escaped("&lt;"));
    assertEquals("two lines", MarkdownMail.escaped("two\nlines"));
  }

  @Test
  void aRowOfMarkdownHasAsManyCellsAsHeads() {
    MailText mail = new MarkdownMail();
    mail.table(HEADS, List.of(List.of("dun|lin", "3")));
    assertEquals(
        """
        | vessel | overdue |
        | --- | ---: |
        | dun\\|lin | 3 |

        """,
        mail.toString());
    assertFalse(mail.toString().contains("n|l"));
  }
}
