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

  /** To another page of the same folder. */
  public record Link(String file, String text) {}
}
