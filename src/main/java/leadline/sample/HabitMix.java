package leadline.sample;

/**
 * The share of vessels with each habit of opening.
 *
 * @param always opens at nearly every overhaul
 * @param sometimes opens at two overhauls of five
 * @param never hardly ever opens
 * @param suspect opens what looks suspect
 */
public record HabitMix(double always, double sometimes, double never, double suspect) {

  /** 45, 35 and 20 %, each a little less for those that open what looks suspect. */
  public static final HabitMix USUAL = new HabitMix(.45, .35, .20, 0).withSuspect(.04);

  public HabitMix {
    Shares.check(always);
    Shares.check(sometimes);
    Shares.check(never);
    Shares.check(suspect);
    if (Math.abs(always + sometimes + never + suspect - 1) > 1e-9) {
      throw new IllegalArgumentException("shares of all habits add up to 1");
    }
  }

  public static HabitMix all(OpeningHabit habit) {
    return new HabitMix(
        habit == OpeningHabit.ALWAYS ? 1 : 0,
        habit == OpeningHabit.SOMETIMES ? 1 : 0,
        habit == OpeningHabit.NEVER ? 1 : 0,
        habit == OpeningHabit.SUSPECT ? 1 : 0);
  }

  /** The other three in their proportion, beside a share of vessels that open what is suspect. */
  public HabitMix withSuspect(double share) {
    if (suspect == 1) {
      throw new IllegalArgumentException("there is no other habit to leave a share to");
    }
    double others = (1 - share) / (1 - suspect);
    return new HabitMix(always * others, sometimes * others, never * others, share);
  }

  OpeningHabit habit(Draw draw) {
    double drawn = draw.uniform();
    if (drawn < always) {
      return OpeningHabit.ALWAYS;
    } else if (drawn < always + sometimes) {
      return OpeningHabit.SOMETIMES;
    }
    return drawn < always + sometimes + never ? OpeningHabit.NEVER : OpeningHabit.SUSPECT;
  }
}
