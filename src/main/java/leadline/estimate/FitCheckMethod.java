package leadline.estimate;

import java.util.List;
import java.util.Locale;
import leadline.stats.FitCheck;
import leadline.stats.LifeData;
import leadline.stats.LifeDistribution;

/** Whether lives may have come from each distribution, by drawing others from its fit. */
final class FitCheckMethod implements Method {

  private static final int USUAL_SIMULATIONS = 999;
  private static final int USUAL_START = 1;

  @Override
  public String word() {
    return "fit-check";
  }

  @Override
  public List<String> prints() {
    return List.of("fit_check.");
  }

  @Override
  public String reads() {
    return "lower,upper,entry,weight[,group]; no entry";
  }

  @Override
  public EstimateResults of(DataFile file, EstimateSettings settings) {
    LifeData data = LifeRow.lives(file);
    int simulations = (int) wholeNumber(settings, Setting.SIMULATIONS, USUAL_SIMULATIONS);
    if (simulations < FitCheck.FEWEST) {
      throw settings.unusable(Setting.SIMULATIONS, "must be at least " + FitCheck.FEWEST);
    }
    long start = wholeNumber(settings, Setting.START, USUAL_START);
    EstimateResults results = new EstimateResults();
    for (LifeDistribution family : FitFamilies.of(settings)) {
      results.addAll(
          "fit_check." + FitFamilies.word(family),
          results(FitCheck.of(family, data, simulations, start)));
    }
    return results;
  }

  private static EstimateResults results(FitCheck check) {
    EstimateResults results = new EstimateResults();
    if (check instanceof FitCheck.Checked checked) {
      results
          .number(".statistic", checked.statistic())
          .number(".p", checked.p())
          .number(".p_se", checked.standardErrorOfP());
    } else if (check instanceof FitCheck.Insufficient insufficient) {
      results
          .status("", EstimateResults.Status.INSUFFICIENT)
          .word(".reason", insufficient.why().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    return results;
  }

  private static long wholeNumber(EstimateSettings settings, Setting setting, int usual) {
    double number = settings.number(setting).orElse(usual);
    if (!(number == Math.rint(number) && Math.abs(number) < 1e9)) {
      throw settings.unusable(setting, "must be a whole number below a thousand million");
    }
    return (long) number;
  }
}
