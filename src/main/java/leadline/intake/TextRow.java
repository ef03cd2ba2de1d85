package leadline.intake;

import java.util.List;
import leadline.problem.LineFault;

/**
 * A row before it is split into fields.
 *
 * @param line the physical line on which it begins
 * @param raw without the last line end
 * @param faults why it cannot be split into fields; none for a row with balanced quotes
 */
record TextRow(long line, String raw, List<LineFault> faults) {}
