package leadline.page;

import java.util.List;

/**
 * A table as a page shows it.
 *
 * @param id distinct on its page; letters, digits, hyphens
 * @param remark what of the published table is left out; empty where nothing is
 * @param file of the published table, from the page's folder
 * @param sheet how it is printed
 * @param rows one entry at least
 */
public record TableView(
    String id,
    String caption,
    String remark,
    String file,
    Sheet sheet,
    List<Head> heads,
    List<Rows> rows) {

  public TableView {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /** How a table is printed: a sheet of paper, and its classes of the style sheet. */
  public enum Sheet {
    UPRIGHT("table"),
    LYING("table wide"),
    /** Upright with many narrow columns, in small letters. */
    DENSE("table dense");

    private static final int MOST_UPRIGHT = 11;

    private final String style;

    Sheet(String style) {
      this.style = style;
    }

    static Sheet of(int columns) {
      return columns > MOST_UPRIGHT ? LYING : UPRIGHT;
    }

    public String style() {
      return style;
    }
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
