package leadline.stats;

/**
 * A function of (shape, offset) with its first and second derivatives at one point. It can be set
 * anew, for it is filled once for each life at each step of a fit.
 */
final class PlaneJet {

  double value;
  double byShape;
  double byOffset;
  double byShapeTwice;
  double byBoth;
  double byOffsetTwice;

  void set(
      double newValue,
      double newByShape,
      double newByOffset,
      double newByShapeTwice,
      double newByBoth,
      double newByOffsetTwice) {
    value = newValue;
    byShape = newByShape;
    byOffset = newByOffset;
    byShapeTwice = newByShapeTwice;
    byBoth = newByBoth;
    byOffsetTwice = newByOffsetTwice;
  }

  void add(double weight, PlaneJet other) {
    value += weight * other.value;
    byShape += weight * other.byShape;
    byOffset += weight * other.byOffset;
    byShapeTwice += weight * other.byShapeTwice;
    byBoth += weight * other.byBoth;
    byOffsetTwice += weight * other.byOffsetTwice;
  }

  /** From the logarithm of a chance to the logarithm of its complement. */
  void complement() {
    double complement = Jet.logComplement(value);
    double odds = Math.exp(value - complement);
    compose(complement, -odds, -odds * (1 + odds));
  }

  /** From a negative value to the logarithm of its size. */
  void logOfSize() {
    compose(Math.log(-value), 1 / value, -1 / (value * value));
  }

  /** From the logarithm of a greater number to the logarithm of its excess over a lesser one. */
  void excessOver(PlaneJet lesser) {
    double excess = value + Jet.logComplement(lesser.value - value);
    double share = Math.exp(value - excess);
    double lesserShare = Math.exp(lesser.value - excess);
    if (lesserShare == 0) {
      return;
    }
    double shape = share * byShape - lesserShare * lesser.byShape;
    double offset = share * byOffset - lesserShare * lesser.byOffset;
    set(
        excess,
        shape,
        offset,
        share * (byShapeTwice + byShape * byShape)
            - lesserShare * (lesser.byShapeTwice + lesser.byShape * lesser.byShape)
            - shape * shape,
        share * (byBoth + byShape * byOffset)
            - lesserShare * (lesser.byBoth + lesser.byShape * lesser.byOffset)
            - shape * offset,
        share * (byOffsetTwice + byOffset * byOffset)
            - lesserShare * (lesser.byOffsetTwice + lesser.byOffset * lesser.byOffset)
            - offset * offset);
  }

  /** A function of this one, with its derivatives by it. */
  private void compose(double newValue, double first, double second) {
    set(
        newValue,
        first * byShape,
        first * byOffset,
        first * byShapeTwice + second * byShape * byShape,
        first * byBoth + second * byShape * byOffset,
        first * byOffsetTwice + second * byOffset * byOffset);
  }

  Expansion expansion() {
    return new Expansion(value, byShape, byOffset, byShapeTwice, byBoth, byOffsetTwice);
  }
}
