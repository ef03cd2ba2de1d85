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
   * A sentence.
   *
   * @param links to the rows that it stands on; empty for a sentence without
   */
  record Point(String sentence, List<Page.Link> links) {
    /** A number and its unit stay on one line. */
    public Point {
      sentence = sentence.replaceAll("(\\d) (%|h\\b)", "$1\u00a0$2");
      links = List.copyOf(links);
    }

    static Point of(String sentence) {
      return new Point(sentence, List.of());
    }
  }

  /** Words, each with what it means. */
  record Terms(List<Page.Fact> terms) implements Block {
    public Terms {
      terms = List.copyOf(terms);
    }
  }
}
