package leadline.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leadline.fleet.Catalogue;
import leadline.fleet.RecordKind;
import leadline.quantity.ReportMonth;
import leadline.summary.DueList;
import leadline.summary.TableColumn;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;
import leadline.summary.VesselColumns;
import leadline.summary.VesselQueries;

/**
 * {@code returns/returns_VESSEL_MONTH.csv} and {@code .xlsx}: the sheet of each vessel that is
 * asked something. A sheet may be sent back under its name.
 */
public final class ReturnSheets implements Documents {

  private final Catalogue catalogue;

  public ReturnSheets(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  @Override
  public void write(Issue issue, Path folder) throws IOException {
    Path returns = Files.createDirectories(folder.resolve(RecordKind.RETURNS.word()));
    for (ReturnSheet sheet : sheets(issue)) {
      String name = name(sheet.vessel(), issue.manifest().month());
      ReturnText.write(sheet, returns.resolve(name + ".csv"));
      ReturnWorkbook.write(sheet, issue.cautions(), returns.resolve(name + ".xlsx"));
    }
  }

  private List<ReturnSheet> sheets(Issue issue) {
    Map<String, List<TableRow>> queries = byVessel(issue, VesselQueries.SPEC, VesselQueries.VESSEL);
    Map<String, List<TableRow>> due = byVessel(issue, DueList.SPEC, VesselColumns.VESSEL);
    TreeSet<String> vessels = new TreeSet<>(queries.keySet());
    vessels.addAll(due.keySet());
    return vessels.stream()
        .map(
            vessel ->
                ReturnSheet.of(
                    vessel,
                    queries.getOrDefault(vessel, List.of()),
                    due.getOrDefault(vessel, List.of()),
                    catalogue))
        .filter(sheet -> !sheet.rows().isEmpty())
        .toList();
  }

  private static Map<String, List<TableRow>> byVessel(
      Issue issue, TableSpec spec, TableColumn<String> vessel) {
    Map<String, List<TableRow>> rows = new LinkedHashMap<>();
    issue.tables().stream()
        .filter(table -> table.spec().equals(spec))
        .flatMap(table -> table.rows().stream())
        .forEach(
            row -> rows.computeIfAbsent(row.need(vessel), first -> new ArrayList<>()).add(row));
    return rows;
  }

  private static String name(String vessel, ReportMonth month) {
    return RecordKind.RETURNS.word() + "_" + VesselFile.name(vessel) + "_" + month;
  }
}
