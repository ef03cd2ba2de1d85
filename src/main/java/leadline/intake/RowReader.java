package leadline.intake;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leadline.fleet.Catalogue;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.problem.EmptyCell;
import leadline.problem.LineFault;
import leadline.problem.RowFault;

/** Turns the fields of a file's rows into typed cells, by the file's header. */
final class RowReader {

  private final RecordKind kind;
  private final int fields;
  private final List<KnownField> known = new ArrayList<>();
  private final List<UnknownField> unknown = new ArrayList<>();

  private record KnownField(int index, Column<?> column, CellReader reader) {}

  private record UnknownField(int index, String name) {}

  RowReader(RecordKind kind, Header header, Catalogue catalogue, Instant now) {
    this.kind = kind;
    this.fields = header.names().size();
    CellReaders readers = new CellReaders(catalogue, now);
    for (int i = 0; i < fields; i++) {
      int index = i;
      String name = header.names().get(index);
      kind.layout()
          .named(name)
          .ifPresentOrElse(
              column -> known.add(new KnownField(index, column, readers.of(column))),
              () -> unknown.add(new UnknownField(index, name)));
    }
  }

  SortedSet<String> unknownColumns() {
    SortedSet<String> names = new TreeSet<>();
    unknown.forEach(field -> names.add(field.name()));
    return names;
  }

  ReadRow read(String[] texts) {
    Cells.Builder cells = Cells.of(kind);
    if (texts.length != fields) {
      return new ReadRow(
          cells,
          Collections.emptySortedMap(),
          0,
          List.of(new LineFault.WrongFieldCount(texts.length, fields)));
    }
    List<RowFault> faults = new ArrayList<>(0);
    int trimmedCells = 0;
    for (KnownField field : known) {
      String text = texts[field.index()];
      String trimmed = Blanks.trim(text);
      if (trimmed.length() < text.length()) {
        trimmedCells++;
      }
      if (!trimmed.isEmpty()) {
        field.reader().read(trimmed, cells, faults);
      } else if (field.column().mustBeInHeader()) {
        faults.add(new EmptyCell(field.column().name()));
      }
    }
    if (kind == RecordKind.RETURNS && faults.isEmpty()) {
      faults.addAll(ReturnRules.broken(cells.build()));
    }
    return new ReadRow(cells, extras(texts), trimmedCells, faults);
  }

  private SortedMap<String, String> extras(String[] texts) {
    if (unknown.isEmpty()) {
      return Collections.emptySortedMap();
    }
    SortedMap<String, String> extras = new TreeMap<>();
    for (UnknownField field : unknown) {
      if (!texts[field.index()].isEmpty()) {
        extras.put(field.name(), texts[field.index()]);
      }
    }
    return Collections.unmodifiableSortedMap(extras);
  }
}
