package leadline.publish;

import java.util.List;

/**
 * A month as a run found it, ready to be published.
 *
 * @param standing {@code CURRENT} moves the month's link and {@code latest}; {@code AS_KNOWN_THEN}
 *     gets a link of its own, named after the manifest's known-at
 * @param cautions the paragraphs that go with every copy of the figures
 */
public record Issue(
    RunManifest manifest, Standing standing, List<PublishedTable> tables, List<String> cautions) {

  public Issue {
    tables = List.copyOf(tables);
    cautions = List.copyOf(cautions);
  }
}
