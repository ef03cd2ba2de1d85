package leadline.page;

import java.util.List;
import leadline.chart.Drawing;

/** A piece of a section. */
public sealed interface Block {

  record Prose(String text) implements Block {}

  /** Of what the blocks up to the next heading speak. */
  record Heading(String text) implements Block {}

  record Points(List<Point> points) implements Block {
    public Points {
      points = List.copyOf(points);
    }
  }

  record Table(TableView table) implements Block {}

  /** A chart, in several drawings where it is long, and the table of its figures. */
  record Chart(List<Drawing> drawings, TableView table) implements Block {
    public Chart {
      drawings = List.copyOf(drawings);
    }
  }

  /**
   * A sentence that stands on rows.
   *
   * @param link to these rows; empty for a sentence without
   * @param linkText where the link leads
   */
  record Point(String sentence, String link, String linkText) {
    /** A share and its sign stay on one line. */
    public Point {
      sentence = sentence.replaceAll("(\\d) %", "$1\u00a0%");
    }
  }
}
