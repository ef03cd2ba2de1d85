package leadline.publish;

import leadline.summary.Verdict;

/** What a verdict tells a reader. */
public final class VerdictInWords {

  private VerdictInWords() {}

  /** Empty where there is nothing to beware of. */
  public static String of(Verdict verdict) {
    return switch (verdict) {
      case OK -> "";
      case TOO_FEW -> "fewer than 5 events, neither to rank nor to fit";
      case INSUFFICIENT -> "nothing to divide by";
      case SELECTIVE_OPENING -> "not opened as a routine, so no share of all";
      case WRONG_CLOCK -> "does not age by these hours";
    };
  }
}
