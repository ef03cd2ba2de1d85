package leadline.summary;

import java.util.List;
import java.util.Optional;

/**
 * A refused row of an export.
 *
 * @param line the line on which the row begins, from 1
 * @param record the word of what the file holds, such as {@code findings}
 * @param vessel the vessel that the row names, where one could be read
 */
public record RefusedLine(
    IntakeFile file, long line, String record, Optional<String> vessel, List<BrokenRule> broken) {

  public RefusedLine {
    broken = List.copyOf(broken);
  }

  /**
   * A rule that the row broke.
   *
   * @param unmappedWord the cell's text, where the column does not know that word
   */
  public record BrokenRule(String rule, String column, Optional<String> unmappedWord) {}
}
