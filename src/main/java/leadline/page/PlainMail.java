package leadline.page;

import java.util.List;
import leadline.publish.Paragraphs;

/** Text of lines of at most 80 characters. */
final class PlainMail implements MailText {

  private static final int NAME = 26;
  private static final int CELL = 10;

  private final StringBuilder text = new StringBuilder();

  @Override
  public void title(String title) {
    addLine(MailText.inLine(title));
    addLine("=".repeat(Math.min(title.length(), Paragraphs.WIDTH)));
  }

  @Override
  public void heading(String heading) {
    addLine("");
    addLine(heading);
    addLine("-".repeat(heading.length()));
  }

  @Override
  public void sentence(String sentence) {
    Paragraphs paragraph = new Paragraphs();
    paragraph.add(MailText.inLine(sentence));
    text.append(paragraph);
  }

  @Override
  public void point(String sentence) {
    sentence("- " + sentence);
  }

  @Override
  public void pointBelow(String sentence) {
    Paragraphs paragraph = new Paragraphs();
    paragraph.addBelow("- " + MailText.inLine(sentence));
    text.append(paragraph);
  }

  @Override
  public void table(List<String> heads, List<List<String>> rows) {
    addRow(heads);
    rows.forEach(this::addRow);
  }

  /** A name too long for its column stands above its row. */
  private void addRow(List<String> cells) {
    String name = MailText.inLine(cells.get(0));
    StringBuilder line = new StringBuilder();
    if (name.length() > NAME) {
      sentence(name);
      line.append(" ".repeat(NAME));
    } else {
      line.append(name).append(" ".repeat(NAME - name.length()));
    }
    for (String cell : cells.subList(1, cells.size())) {
      line.append(" ".repeat(Math.max(1, CELL - cell.length()))).append(MailText.inLine(cell));
    }
    addLine(line.toString());
  }

  private void addLine(String line) {
    text.append(line).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
