package leadline.page;

import java.util.Optional;

/** An estimate with its limits as people read it. */
record EstimateInWords(FigureFormat format) {

  String of(Optional<Double> estimate, Optional<Double> lower, Optional<Double> upper) {
    return figure(estimate) + " " + limits(lower, upper);
  }

  String figure(Optional<Double> estimate) {
    return estimate.map(format::inWords).orElse("no estimate");
  }

  /** In brackets. */
  String limits(Optional<Double> lower, Optional<Double> upper) {
    return "(" + between(lower, upper) + ")";
  }

  private String between(Optional<Double> lower, Optional<Double> upper) {
    if (lower.isPresent()) {
      return format.inWords(lower.get())
          + upper.map(to -> " to " + format.inWords(to)).orElse(" or more");
    }
    return upper.map(to -> "at most " + format.inWords(to)).orElse("no limits");
  }
}
