package leadline.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leadline.stats.Life;

/**
 * Weibull lives of shape 1.7 and scale 9,000 hours, ages in whole tenths, followed for 3,000 to
 * 15,000 hours: of those that ended by then, a third each seen to end, found ended between looks
 * 4,000 hours apart, and found ended at the one look that there was.
 */
final class GeneratedLives {

  private static final long GENERATOR = 20_263;
  private static final int LIVES = 250;
  private static final double LOOKS_APART = 4000;

  private GeneratedLives() {}

  static List<Life> mixed() {
    Random random = new Random(GENERATOR);
    List<Life> lives = new ArrayList<>();
    for (int count = 0; count < LIVES; count++) {
      double end = tenths(9000 * Math.pow(-Math.log1p(-random.nextDouble()), 1 / 1.7)) + 0.1;
      double followed = tenths(3000 + 12_000 * random.nextDouble());
      double lookBefore = Math.floor(end / LOOKS_APART) * LOOKS_APART;
      lives.add(
          end > followed
              ? Life.outlived(followed)
              : switch (random.nextInt(3)) {
                case 0 -> Life.failedAt(end);
                case 1 -> Life.failedBetween(lookBefore, lookBefore + LOOKS_APART);
                default -> Life.failedBetween(0, followed);
              });
    }
    return lives;
  }

  private static double tenths(double hours) {
    return Math.floor(10 * hours) / 10;
  }
}
