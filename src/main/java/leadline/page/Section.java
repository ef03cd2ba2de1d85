package leadline.page;

import java.util.List;

/**
 * What stands under one heading.
 *
 * @param id distinct on its page; letters, digits, hyphens
 */
public record Section(String id, String heading, List<Block> blocks) {
  public Section {
    blocks = List.copyOf(blocks);
  }
}
