package leadline.publish;

import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.Worksheet;

/** How a worksheet is laid out: printed on A4 on its side, with rows high enough for their text. */
final class Paper {

  private static final short AS_MANY_AS_NEEDED = 0;
  private static final double LINE_POINTS = 15;

  /** A column's width counts digits; letters are narrower, but lines break between words. */
  private static final double LETTERS_A_DIGIT = 1.1;

  private Paper() {}

  /** In the size of its letters, however many sheets that takes. */
  static void asItIs(Worksheet sheet) {
    sheet.paperSize(PaperSize.A4_PAPER);
    sheet.pageOrientation("landscape");
  }

  /** How many lines a text takes in a column of this width. */
  static int lines(String text, int width) {
    return 1 + (int) (text.length() / (LETTERS_A_DIGIT * width));
  }

  /** Not every spreadsheet program finds the height of a wrapped row by itself. */
  static void height(Worksheet sheet, int row, int lines) {
    sheet.rowHeight(row, LINE_POINTS * lines);
  }

  /** Made so small that all columns stand side by side. */
  static void oneSheetWide(Worksheet sheet) {
    asItIs(sheet);
    sheet.setFitToPage(true);
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight(AS_MANY_AS_NEEDED);
  }
}
