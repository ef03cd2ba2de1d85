package leadline.publish;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Cells;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;
import leadline.fleet.ReturnedRow;
import leadline.origin.FileDigest;
import leadline.summary.DueForecast;
import leadline.summary.DueList;
import leadline.summary.SharedColumns;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.VesselColumns;
import leadline.summary.VesselQueries;

/**
 * What a vessel is asked to fill in: its open questions, and the overhauls that are overdue or due
 * soon with the parts of their components.
 *
 * @param rows of the plain layout, with what the ship fills in left empty
 */
record ReturnSheet(String vessel, List<Cells> rows) {

  private static final int DIGITS = 10;

  ReturnSheet {
    rows = List.copyOf(rows);
  }

  /**
   * The sheet of a vessel.
   *
   * @param queries the vessel's rows of the table of questions
   * @param due the vessel's rows of the due list
   */
  static ReturnSheet of(
      String vessel, List<TableRow> queries, List<TableRow> due, Catalogue catalogue) {
    List<Cells> rows = new ArrayList<>();
    queries.forEach(query -> rows.add(question(query)));
    due.stream()
        .filter(row -> DueList.COMING.contains(row.need(DueList.STANDING)))
        .forEach(row -> rows.addAll(overhaul(row, catalogue)));
    return new ReturnSheet(vessel, rows);
  }

  private static Cells question(TableRow query) {
    Cells.Builder row =
        Cells.of(RecordKind.RETURNS)
            .with(ReturnLayout.VESSEL, query.need(VesselQueries.VESSEL))
            .with(ReturnLayout.SHEET_ROW, query.need(VesselQueries.QUERY))
            .with(ReturnLayout.ABOUT, ReturnedRow.QUESTION)
            .with(ReturnLayout.SUBJECT, subject(query))
            .with(
                ReturnLayout.QUESTION,
                String.join(
                    " ",
                    query.need(VesselQueries.QUESTION),
                    query.need(VesselQueries.EVIDENCE),
                    query.need(VesselQueries.SETTLED_BY)));
    query
        .find(VesselQueries.OVERHAUL)
        .ifPresent(
            overhaul -> {
              row.with(ReturnLayout.OVERHAUL, overhaul);
              query.find(VesselQueries.PART).ifPresent(part -> row.with(ReturnLayout.PART, part));
            });
    return row.build();
  }

  private static String subject(TableRow query) {
    return words(
        query, List.of(VesselQueries.RECORD, VesselQueries.MACHINE, VesselQueries.COMPONENT));
  }

  /** A row for the overhaul, and one for each part of the component. */
  private static List<Cells> overhaul(TableRow due, Catalogue catalogue) {
    String id = identifier(due);
    List<Cells> rows = new ArrayList<>();
    rows.add(due(due, id, id).with(ReturnLayout.QUESTION, whenDue(due)).build());
    for (Part part : parts(due, catalogue)) {
      rows.add(due(due, id, id + " " + part.name()).with(ReturnLayout.PART, part.name()).build());
    }
    return rows;
  }

  private static List<Part> parts(TableRow due, Catalogue catalogue) {
    return catalogue
        .component(due.need(SharedColumns.COMPONENT))
        .map(Component::parts)
        .orElse(List.of());
  }

  private static Cells.Builder due(TableRow due, String overhaul, String sheetRow) {
    Cells.Builder row =
        Cells.of(RecordKind.RETURNS)
            .with(ReturnLayout.VESSEL, due.need(VesselColumns.VESSEL))
            .with(ReturnLayout.SHEET_ROW, sheetRow)
            .with(ReturnLayout.ABOUT, ReturnedRow.DUE_OVERHAUL)
            .with(
                ReturnLayout.SUBJECT,
                words(
                    due,
                    List.of(
                        VesselColumns.MACHINE,
                        SharedColumns.COMPONENT,
                        VesselColumns.POSITION,
                        DueList.ITEM)))
            .with(ReturnLayout.OVERHAUL, overhaul)
            .with(ReturnLayout.MACHINE, due.need(VesselColumns.MACHINE))
            .with(ReturnLayout.COMPONENT, due.need(SharedColumns.COMPONENT));
    number(due, DueList.UNIT).ifPresent(unit -> row.with(ReturnLayout.UNIT, unit));
    number(due, DueList.PLACE).ifPresent(place -> row.with(ReturnLayout.PLACE, place));
    return row;
  }

  /** Zero stands for a number that the position does not have. */
  private static Optional<Long> number(TableRow due, TableColumn<Long> column) {
    return due.find(column).filter(number -> number > 0);
  }

  private static String whenDue(TableRow due) {
    return "%s%s: %s since the last overhaul, where one is due every %s h by %s."
        .formatted(
            due.need(DueList.STANDING).replace('-', ' '),
            due.find(DueForecast.DUE_ON).map(day -> ", on " + day).orElse(""),
            due.find(DueList.HOURS)
                .map(hours -> CsvTable.shortest(hours) + " h")
                .orElseGet(() -> "at least " + CsvTable.shortest(due.need(DueList.RUN)) + " h"),
            CsvTable.shortest(due.need(DueList.LIMIT)),
            due.need(DueList.LIMIT_BY));
  }

  /** The same in every sheet until the position's next overhaul is on record. */
  private static String identifier(TableRow due) {
    String words =
        words(
            due,
            List.of(
                VesselColumns.VESSEL,
                VesselColumns.MACHINE,
                SharedColumns.COMPONENT,
                VesselColumns.POSITION,
                DueList.SINCE,
                DueList.OVERHAUL));
    return "D-" + FileDigest.of(words.getBytes(StandardCharsets.UTF_8)).hex().substring(0, DIGITS);
  }

  private static String words(TableRow row, List<TableColumn<String>> columns) {
    return columns.stream()
        .flatMap(column -> row.find(column).stream())
        .collect(Collectors.joining(" "));
  }
}
