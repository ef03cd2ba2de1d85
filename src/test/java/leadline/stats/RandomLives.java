package leadline.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Weibull lives of shape 1.7 and scale 9,000, watched in every way there is. */
final class RandomLives {

  private static final double INSPECTION_INTERVAL = 4000;

  private RandomLives() {}

  static List<Life> watchedFromNew(Random random) {
    List<Life> lives = new ArrayList<>();
    int count = 20 + random.nextInt(40);
    for (int index = 0; index < count; index++) {
      double end = 9000 * Math.pow(-Math.log(random.nextDouble()), 1 / 1.7);
      double lastLook = 3000 + random.nextInt(12_000);
      double before = Math.floor(end / INSPECTION_INTERVAL) * INSPECTION_INTERVAL;
      lives.add(
          end > lastLook
              ? Life.outlived(lastLook)
              : random.nextBoolean()
                  ? Life.failedAt(Math.max(1, Math.rint(end)))
                  : Life.failedBetween(before, before + INSPECTION_INTERVAL));
    }
    return lives;
  }

  /** Some of the lives are known only from an age, below the first at which anything is known. */
  static List<Life> someWithDelayedEntry(Random random) {
    return watchedFromNew(random).stream()
        .map(
            life ->
                random.nextInt(3) == 0 && life.lower() > 1
                    ? life.enteredAt(Math.floor(random.nextDouble() * life.lower()))
                    : life)
        .toList();
  }

  /** The same with ages in another unit. */
  static Life scaled(Life life, double factor) {
    double lower = factor * life.lower();
    Life changed =
        life instanceof Life.Outlived
            ? Life.outlived(lower)
            : life instanceof Life.FailedAt
                ? Life.failedAt(lower)
                : Life.failedBetween(lower, factor * life.upper());
    return changed.enteredAt(factor * life.entry());
  }

  /** An exact age made an interval around it, of this share of it. */
  static Life widened(Life life, double width) {
    return life instanceof Life.FailedAt
        ? Life.failedBetween(life.lower() * (1 - width / 2), life.upper() * (1 + width / 2))
            .enteredAt(life.entry())
        : life;
  }
}
