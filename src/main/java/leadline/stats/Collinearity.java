package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Covariates that say the same: one is a sum of multiples of others and a constant. */
final class Collinearity {

  /** Of what a covariate varies by: the rest is rounding. */
  private static final double NONE = 1e-10;

  private Collinearity() {}

  /** Names of the first covariates found so; a single one does not vary. Empty where all differ. */
  static List<String> of(RegressionData data) {
    List<RealVector> before = new ArrayList<>();
    for (int covariate = 0; covariate < data.covariates().size(); covariate++) {
      RealVector column = new ArrayRealVector(data.column(covariate));
      RealVector varying = centred(column);
      if (varying.getNorm() <= NONE * column.getNorm()) {
        return List.of(data.covariates().get(covariate));
      }
      RealVector unit = varying.mapDivide(varying.getNorm());
      if (!before.isEmpty()) {
        List<String> alike = sum(data, before, unit);
        if (!alike.isEmpty()) {
          alike.add(data.covariates().get(covariate));
          return List.copyOf(alike);
        }
      }
      before.add(unit);
    }
    return List.of();
  }

  private static List<String> sum(RegressionData data, List<RealVector> before, RealVector unit) {
    List<String> names = new ArrayList<>();
    RealMatrix columns = MatrixUtils.createRealMatrix(unit.getDimension(), before.size());
    for (int index = 0; index < before.size(); index++) {
      columns.setColumnVector(index, before.get(index));
    }
    RealVector multiples = new QRDecomposition(columns).getSolver().solve(unit);
    if (columns.operate(multiples).subtract(unit).getNorm() < NONE) {
      for (int index = 0; index < before.size(); index++) {
        if (Math.abs(multiples.getEntry(index)) > NONE) {
          names.add(data.covariates().get(index));
        }
      }
    }
    return names;
  }

  private static RealVector centred(RealVector column) {
    double mean = 0;
    for (int index = 0; index < column.getDimension(); index++) {
      mean += column.getEntry(index) / column.getDimension();
    }
    return column.mapSubtract(mean);
  }
}
