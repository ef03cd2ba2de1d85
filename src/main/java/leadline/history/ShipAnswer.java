package leadline.history;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import leadline.fleet.Answer;
import leadline.fleet.Cells;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;

/**
 * A ship's answer that what a question is about is right as it stands.
 *
 * @param query the question's identifier
 * @param remark the ship's own words
 * @param batch the place of the batch that brought the answer in the list of committed batches
 */
public record ShipAnswer(String query, Instant answeredOn, Optional<String> remark, long batch) {

  /** The answers that stand, by arrival. */
  public static List<ShipAnswer> among(CurrentRecords records) {
    return records.arrived().stream()
        .filter(row -> row.row().cells().kind() == RecordKind.RETURNS)
        .filter(
            row ->
                row.row()
                    .cells()
                    .find(ReturnLayout.ANSWER)
                    .filter(Answer.AS_WRITTEN::equals)
                    .isPresent())
        .map(ShipAnswer::of)
        .toList();
  }

  private static ShipAnswer of(ArrivedRow row) {
    Cells cells = row.row().cells();
    return new ShipAnswer(
        cells.need(ReturnLayout.SHEET_ROW),
        cells.need(ReturnLayout.ANSWERED_ON),
        cells.find(ReturnLayout.REMARK),
        row.batch());
  }
}
