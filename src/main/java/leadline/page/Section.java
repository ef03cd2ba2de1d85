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

  /** The class of the style sheet: a heading is printed on the sheet of the table that follows. */
  public String style() {
    return blocks.stream()
            .filter(block -> !(block instanceof Block.Prose))
            .findFirst()
            .filter(Section::isLying)
            .isPresent()
        ? "lying"
        : "upright";
  }

  private static boolean isLying(Block block) {
    return block instanceof Block.Table shown && shown.table().sheet() == TableView.Sheet.LYING;
  }
}
