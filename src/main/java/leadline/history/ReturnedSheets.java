package leadline.history;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.fleet.Cells;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;

/**
 * What a ship wrote into its return sheets, as versions of the records that the rows speak of.
 *
 * <p>A row makes a new version of the record that stands: with the cells filled in, {@code
 * answered_on} as {@code revised_at}, and the row's own arrival. So it wins over what the ship
 * wrote before, and changes nothing where the record was revised later. Of a record that is not
 * there yet it makes the first version, where it says all that such a record needs.
 */
final class ReturnedSheets {

  private final Map<RecordKey, RecordVersions> records = new LinkedHashMap<>();

  private ReturnedSheets(List<RecordVersions> revisable) {
    revisable.forEach(record -> records.put(RecordKey.of(record.cells()), record));
  }

  /** The vessel's records, with what the sheets among them say of the others. */
  static List<RecordVersions> appliedTo(List<RecordVersions> decided) {
    ReturnedSheets sheets =
        new ReturnedSheets(decided.stream().filter(ReturnedSheets::isRevisable).toList());
    decided.stream()
        .map(RecordVersions::standing)
        .filter(row -> row.row().cells().kind() == RecordKind.RETURNS)
        .sorted(RecordVersions.FIRST_TO_STANDING)
        .forEach(sheets::apply);
    return Stream.concat(
            decided.stream().filter(record -> !isRevisable(record)),
            sheets.records.values().stream())
        .toList();
  }

  private static boolean isRevisable(RecordVersions record) {
    RecordKind kind = record.cells().kind();
    return kind == RecordKind.OVERHAULS || kind == RecordKind.FINDINGS;
  }

  private void apply(ArrivedRow row) {
    ReturnedAnswer answer = new ReturnedAnswer(row.row().cells());
    if (answer.changesARecord()) {
      answer.record().ifPresent(key -> apply(answer, row, key));
    }
  }

  private void apply(ReturnedAnswer answer, ArrivedRow row, RecordKey key) {
    Optional<RecordVersions> onRecord = Optional.ofNullable(records.get(key));
    if (onRecord.isEmpty()) {
      answer
          .made()
          .ifPresent(cells -> records.put(key, RecordVersions.returned(version(cells, row))));
    } else if (RecordVersions.FIRST_TO_STANDING.compare(onRecord.get().standing(), row) < 0) {
      Cells revised = answer.revised(onRecord.get().cells());
      records.put(key, onRecord.get().revisedBy(version(revised, row)));
    }
  }

  private static ArrivedRow version(Cells cells, ArrivedRow row) {
    return new ArrivedRow(row.batch(), new SourcedRow(cells, row.row().origin()));
  }
}
