package leadline.stats;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Parameters of which some are free and the others follow from them, linearly: all = free columns
 * times the free ones + what is fixed.
 *
 * @param kept which of all parameters are the free ones, rising
 */
record Restriction(List<Integer> kept, RealMatrix columns, RealVector fixed) {

  /** All free. */
  static Restriction none(int parameters) {
    return keeping(parameters, IntStream.range(0, parameters));
  }

  /**
   * The others are 0.
   *
   * @param kept rising
   */
  static Restriction keeping(int parameters, IntStream kept) {
    List<Integer> indices = kept.boxed().toList();
    RealMatrix columns = MatrixUtils.createRealMatrix(parameters, indices.size());
    for (int column = 0; column < indices.size(); column++) {
      columns.setEntry(indices.get(column), column, 1);
    }
    return new Restriction(indices, columns, new ArrayRealVector(parameters));
  }

  /** All free but one, which is set. */
  static Restriction setting(int parameters, int index, double value) {
    Restriction others =
        keeping(parameters, IntStream.range(0, parameters).filter(other -> other != index));
    others.fixed().setEntry(index, value);
    return others;
  }

  /** The free ones of all parameters. */
  RealVector free(RealVector all) {
    return new ArrayRealVector(
        kept.stream().mapToDouble(index -> all.getEntry(index)).toArray(), false);
  }

  RealVector all(RealVector free) {
    return columns.operate(free).add(fixed);
  }

  RealVector gradient(RealVector ofAll) {
    return columns.preMultiply(ofAll);
  }

  /** Symmetric to the last digit. */
  RealMatrix curvature(RealMatrix ofAll) {
    RealMatrix curvature = columns.transposeMultiply(ofAll.multiply(columns));
    return curvature.add(curvature.transpose()).scalarMultiply(0.5);
  }
}
