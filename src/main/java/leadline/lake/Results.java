package leadline.lake;

import java.util.List;
import leadline.summary.TableRow;
import leadline.summary.TableSpec;

/** The summary rows of runs. They are visible once their run is committed. */
public final class Results {

  private final Lake lake;

  public Results(Lake lake) {
    this.lake = lake;
  }

  public void append(String run, TableSpec spec, List<TableRow> rows) {
    new ResultTable(lake, spec).append(lake, run, rows);
  }

  public List<TableRow> rows(Run run, TableSpec spec) {
    return new ResultTable(lake, spec).rows(run.id());
  }
}
