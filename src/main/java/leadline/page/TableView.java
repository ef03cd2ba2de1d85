package leadline.page;

import java.util.List;

/**
 * A table as a page shows it.
 *
 * @param id distinct on its page; letters, digits, hyphens
 * @param remark what of the published table is left out; empty where nothing is
 * @param file of the published table, from the page's folder
 */
public record TableView(
    String id,
    String caption,
    String remark,
    String file,
    List<Head> heads,
    List<List<Cell>> rows) {

  private static final int MOST_UPRIGHT = 11;

  public TableView {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /** The classes of the style sheet: many columns need a sheet of paper laid on its side. */
  public String style() {
    return heads.stream().mapToInt(Head::published).sum() > MOST_UPRIGHT ? "table wide" : "table";
  }

  /**
   * The head of a column.
   *
   * @param columns of the published table, separated by blanks: one, or an estimate and its limits
   * @param style {@code words} or {@code number}
   */
  public record Head(String columns, String label, String style) {

    /** How many columns of the published table it holds. */
    int published() {
      return columns.split(" ").length;
    }
  }
}
