package leadline.page;

import java.util.List;

/** A page ready for its template. */
public record Page(
    String title, List<Fact> facts, String authority, List<Link> links, List<Section> sections) {

  public Page {
    facts = List.copyOf(facts);
    links = List.copyOf(links);
    sections = List.copyOf(sections);
  }

  /** One line about the run. */
  public record Fact(String name, String value) {}

  /**
   * A link.
   *
   * @param to another page, from this one's folder, or {@code #} and an id of this page
   */
  public record Link(String to, String text) {}
}
