package leadline.publish;

/** Text broken between words into lines of at most 80 characters. */
final class Paragraphs {

  private static final int WIDTH = 80;

  private final StringBuilder text = new StringBuilder();

  void add(String paragraph) {
    wrap("", paragraph);
  }

  /** A paragraph that belongs to the one before. */
  void addBelow(String paragraph) {
    wrap("  ", paragraph);
  }

  private void wrap(String indent, String paragraph) {
    StringBuilder line = new StringBuilder(indent);
    for (String word : paragraph.split(" ", -1)) {
      if (line.length() + word.length() > WIDTH) {
        endLine(line);
        line = new StringBuilder(indent + "  ");
      }
      line.append(word).append(' ');
    }
    endLine(line);
  }

  private void endLine(StringBuilder line) {
    text.append(line.toString().stripTrailing()).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
