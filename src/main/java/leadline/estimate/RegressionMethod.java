package leadline.estimate;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leadline.stats.RegressionData;
import leadline.stats.WeibullRegression;

/** Weibull lives whose hazards are proportional, whatever confines their ends. */
final class RegressionMethod implements Method {

  @Override
  public String word() {
    return "regression";
  }

  @Override
  public List<String> prints() {
    return List.of("regression.");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight[,group][,x_...]";
  }

  @Override
  public Groups groups() {
    return Groups.COMPARED;
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    List<CovariateColumn> columns = CovariateColumn.of(file, settings);
    Set<String> known = new TreeSet<>(CovariateColumn.named(file));
    columns.forEach(column -> known.add(column.name()));
    RegressionData.Builder data =
        new RegressionData.Builder(
            columns.stream().flatMap(column -> column.covariates().stream()).toList());
    for (LifeRow row : LifeRow.of(file, known)) {
      data.add(
          row.life(),
          columns.stream().flatMap(column -> column.values(row.row()).stream()).toList(),
          row.weight());
    }
    return RegressionResults.of(WeibullRegression.of(data.build()), columns, settings.confidence());
  }
}
