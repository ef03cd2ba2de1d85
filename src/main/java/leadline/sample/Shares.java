package leadline.sample;

/** Shares are from 0 to 1. */
final class Shares {

  private Shares() {}

  static void check(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share is from 0 to 1, not " + share);
    }
  }
}
