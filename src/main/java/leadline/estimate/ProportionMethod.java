package leadline.estimate;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import leadline.stats.Limits;
import leadline.stats.Proportion;

/** Limits of a share, for each row. */
final class ProportionMethod implements Method {

  private record Share(DataRow row, Proportion proportion) {}

  @Override
  public String word() {
    return "proportion";
  }

  @Override
  public List<String> prints() {
    return List.of("clopper_pearson.", "wilson.", "mid_p.");
  }

  @Override
  public String reads() {
    return "x,n[,conf]";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    file.header().require(Set.of("x", "n"), Set.of("conf"));
    List<Share> shares = file.rows().stream().map(ProportionMethod::share).toList();
    Function<Share, Limits> exact =
        share -> share.proportion().clopperPearson(settings.confidence(share.row()));
    Function<Share, Limits> score =
        share -> share.proportion().wilson(settings.confidence(share.row()));
    Function<Share, Limits> midP =
        share -> share.proportion().midP(settings.confidence(share.row()));
    return new EstimateResults()
        .numbers("clopper_pearson.lower", shares, share -> exact.apply(share).lower())
        .numbers("clopper_pearson.upper", shares, share -> exact.apply(share).upper())
        .numbers("wilson.lower", shares, share -> score.apply(share).lower())
        .numbers("wilson.upper", shares, share -> score.apply(share).upper())
        .numbers("mid_p.lower", shares, share -> midP.apply(share).lower())
        .numbers("mid_p.upper", shares, share -> midP.apply(share).upper());
  }

  private static Share share(DataRow row) {
    long successes = row.count("x");
    long trials = row.count("n");
    if (trials == 0) {
      throw row.impossible("n", "must be 1 or more");
    }
    if (successes > trials) {
      throw row.impossible("x", "must not be more than n: " + successes + " of " + trials);
    }
    return new Share(row, new Proportion(successes, trials));
  }
}
