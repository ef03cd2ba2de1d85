package leadline.chart;

import java.util.List;

/**
 * A finished chart.
 *
 * @param id distinct on its page; letters, digits and hyphens
 * @param title what it shows
 * @param description the same in words, for those who cannot see it
 * @param width in pixels of its own
 */
public record Drawing(
    String id, String title, String description, int width, int height, List<Mark> marks) {

  public Drawing {
    marks = List.copyOf(marks);
  }
}
