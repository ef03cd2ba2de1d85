package leadline.page;

import java.util.List;
import java.util.stream.Collectors;

/** Markdown in which no text given to it is a mark, a link or an element. */
final class MarkdownMail implements MailText {

  private final StringBuilder text = new StringBuilder();

  @Override
  public void title(String title) {
    addLine("# " + escaped(title));
    addLine("");
  }

  @Override
  public void heading(String heading) {
    addLine("");
    addLine("## " + escaped(heading));
    addLine("");
  }

  @Override
  public void sentence(String sentence) {
    addLine(escaped(sentence));
    addLine("");
  }

  @Override
  public void point(String sentence) {
    addLine("- " + escaped(sentence));
  }

  @Override
  public void pointBelow(String sentence) {
    addLine("  - " + escaped(sentence));
  }

  @Override
  public void table(List<String> heads, List<List<String>> rows) {
    addRow(heads);
    addLine(
        heads.stream()
            .skip(1)
            .map(head -> "---: |")
            .collect(Collectors.joining(" ", "| --- | ", "")));
    rows.forEach(this::addRow);
    addLine("");
  }

  private void addRow(List<String> cells) {
    addLine(
        cells.stream().map(MarkdownMail::escaped).collect(Collectors.joining(" | ", "| ", " |")));
  }

  /** Also addresses, of which readers make links by themselves. */
  static String escaped(String text) {
    return MailText.inLine(text)
        .strip()
        .replaceAll("([\\\\`*_\\[\\]<>|&~$])", "\\\\$1")
        .replaceAll("^([#+-])", "\\\\$1")
        .replaceAll("^(\\d+)([.)])", "$1\\\\$2")
        .replace("://", "\\://")
        .replaceAll("(?i)www\\.", "www\\\\.");
  }

  private void addLine(String line) {
    text.append(line).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
