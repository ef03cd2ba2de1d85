package leadline.summary;

import java.util.List;

/** An estimate's column with those of its limits. */
public record EstimateColumns(
    TableColumn<Double> estimate, TableColumn<Double> lower, TableColumn<Double> upper) {

  /**
   * @param limits of what kind they are, such as {@code Garwood's exact}
   */
  static EstimateColumns of(String name, String unit, String meaning, String limits) {
    return new EstimateColumns(
        TableColumn.real(name, unit, meaning),
        TableColumn.real(name + "_lo95", unit, limits + " two-sided 95 % limits: the lower"),
        TableColumn.real(name + "_hi95", unit, limits + " two-sided 95 % limits: the upper"));
  }

  List<TableColumn<?>> all() {
    return List.of(estimate, lower, upper);
  }
}
