package leadline.page;

import java.util.List;

/**
 * A table as a page shows it.
 *
 * @param id distinct on its page; letters, digits, hyphens
 * @param remark what of the published table is left out; empty where nothing is
 * @param file of the published table, from the page's folder
 * @param rows one entry at least
 */
public record TableView(
    String id, String caption, String remark, String file, List<Head> heads, List<Rows> rows) {

  private static final int MOST_UPRIGHT = 11;

  public TableView {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /** The classes of the style sheet: many columns need a sheet of paper laid on its side. */
  public String style() {
    return heads.size() > MOST_UPRIGHT ? "table wide" : "table";
  }

  /**
   * The head of a column.
   *
   * @param columns of the published table, separated by blanks: one, or an estimate and its limits
   * @param style {@code words} or {@code number}
   * @param meaning of the column
   */
  public record Head(String columns, String label, String style, String meaning) {}

  /**
   * Rows one below the other.
   *
   * @param id of a sentence that stands on them, distinct on its page; empty for none
   */
  public record Rows(String id, List<List<Cell>> cells) {
    public Rows {
      cells = List.copyOf(cells);
    }
  }
}
