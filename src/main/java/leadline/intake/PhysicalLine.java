package leadline.intake;

import java.util.List;
import leadline.problem.LineFault;

/**
 * A stretch of a file up to a line end.
 *
 * @param number from 1
 * @param text without the line end; NUL and bytes that are not UTF-8 are shown as {@code \xNN}
 * @param end the line end as it stands: LF, CR LF, CR, or nothing at the end of the file
 * @param faults what the bytes broke
 */
record PhysicalLine(long number, String text, String end, List<LineFault> faults) {

  boolean isBlank() {
    return Blanks.isBlank(text);
  }
}
