package leadline.publish;

import java.util.ArrayList;
import java.util.List;

/** Text broken between words into lines of at most 80 characters; a longer word is cut. */
public final class Paragraphs {

  public static final int WIDTH = 80;

  private static final String STEP = "  ";

  /**
   * A paragraph, not yet broken.
   *
   * @param indent before its first line; further lines have two blanks more
   */
  public record Paragraph(String indent, String text) {}

  private final List<Paragraph> paragraphs = new ArrayList<>();

  public void add(String paragraph) {
    paragraphs.add(new Paragraph("", paragraph));
  }

  /** A paragraph that belongs to the one before. */
  public void addBelow(String paragraph) {
    paragraphs.add(new Paragraph(STEP, paragraph));
  }

  public List<Paragraph> all() {
    return List.copyOf(paragraphs);
  }

  private static void wrap(StringBuilder text, Paragraph paragraph) {
    String indent = paragraph.indent();
    StringBuilder line = new StringBuilder(indent);
    for (String word : paragraph.text().split(" ", -1)) {
      if (line.length() + word.length() > WIDTH) {
        endLine(text, line);
        line = new StringBuilder(indent + STEP);
      }
      String rest = word;
      while (line.length() + rest.length() > WIDTH) {
        int cut = cut(rest, WIDTH - line.length());
        endLine(text, line.append(rest, 0, cut));
        rest = rest.substring(cut);
        line = new StringBuilder(indent + STEP);
      }
      line.append(rest).append(' ');
    }
    endLine(text, line);
  }

  /** Never within a pair that is one character. */
  private static int cut(String word, int most) {
    return Character.isHighSurrogate(word.charAt(most - 1)) ? most - 1 : most;
  }

  private static void endLine(StringBuilder text, StringBuilder line) {
    String written = line.toString().stripTrailing();
    if (!written.isEmpty()) {
      text.append(written).append('\n');
    }
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    paragraphs.forEach(paragraph -> wrap(text, paragraph));
    return text.toString();
  }
}
