package leadline.stats;

/** The logarithm of a likelihood over the plane of a shape and an offset. */
interface LikelihoodSurface {

  /**
   * The value at a point, with its slopes and curvatures.
   *
   * @param shape more than 0
   */
  Expansion at(double shape, double offset);
}
