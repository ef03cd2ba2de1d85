package leadline.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadline.publish.Issue;
import leadline.publish.VerdictInWords;
import leadline.summary.Verdict;

/** What goes with every copy of the figures. */
final class Reading {

  private Reading() {}

  static Section cautions(Issue issue) {
    return new Section(
        "cautions",
        "Cautions",
        List.of(new Block.Points(issue.cautions().stream().map(Block.Point::of).toList())));
  }

  /** Who decides, and what the figures are not: the last two of the cautions. */
  static String authority(Issue issue) {
    List<String> cautions = issue.cautions();
    return String.join(" ", cautions.subList(beforeAuthority(cautions), cautions.size()));
  }

  /** The cautions before those. */
  static List<String> workshopCautions(Issue issue) {
    return issue.cautions().subList(0, beforeAuthority(issue.cautions()));
  }

  private static int beforeAuthority(List<String> cautions) {
    return Math.max(0, cautions.size() - 2);
  }

  static Section howToRead() {
    List<Block.Point> points = new ArrayList<>();
    points.add(
        Block.Point.of(
            "Limits in brackets are two-sided 95 % limits: were the records drawn again and again,"
                + " about 19 of 20 such limits would enclose the true figure. They speak of chance,"
                + " not of wrong or missing records."));
    points.add(
        Block.Point.of(
            "A breakdown is a function lost in service; a part found failed at an opening is"
                + " another thing, and the two are never added."));
    points.add(
        Block.Point.of(
            "Not opened is neither sound nor broken: shares are of those opened, and counts of"
                + " overhauled and opened stand beside them."));
    points.add(
        Block.Point.of(
            "A dash is a figure that the records do not support; the verdict says why. That is a"
                + " result, not a gap."));
    Arrays.stream(Verdict.values())
        .filter(verdict -> !VerdictInWords.of(verdict).isEmpty())
        .forEach(
            verdict ->
                points.add(
                    Block.Point.of(
                        "Verdict %s: %s.".formatted(verdict.word(), VerdictInWords.of(verdict)))));
    points.add(
        Block.Point.of(
            "Numbers are rounded for reading; a copy as CSV and the files beside this page have"
                + " all digits. Months end at 24:00 UTC."));
    return new Section("reading", "How to read these figures", List.of(new Block.Points(points)));
  }
}
