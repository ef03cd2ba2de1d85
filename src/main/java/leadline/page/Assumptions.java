package leadline.page;

import java.util.List;
import java.util.stream.Stream;

/** What the figures of a component take for granted. */
final class Assumptions {

  private Assumptions() {}

  static Section section() {
    return new Section(
        "assumptions",
        "What these figures assume",
        List.of(
            new Block.Points(
                Stream.of(
                        "Hours are the machine's running hours, from counter readings; where a"
                            + " reading was repaired, the share of such hours stands beside the"
                            + " rate.",
                        "A rate takes breakdowns to come at random, at the same pace at any age. For"
                            + " parts that wear it is an average over the ages that ran, no more.",
                        "Models and vessels are put together in the fleet's rows as they are; what"
                            + " is true of the fleet may be true of none of them. A vessel's own"
                            + " figures rest on few events, and its injectors share one engine, one"
                            + " fuel, one crew.",
                        "A failure found at an opening began at some age between the last opening"
                            + " that found the part sound and this one. The age at which it was found"
                            + " is not taken for the age at which it broke.",
                        "A part that nobody opened, and that no test proves, counts as neither sound"
                            + " nor failed. Springs' curves rest on the vessels that open the spring"
                            + " as a routine, in at least 0.8 of planned overhauls; they stand for"
                            + " the others only if the springs of the others fare alike.",
                        "Parts renewed on condition while they still worked count as working at that"
                            + " age. If they were about to fail, the lives come out too long.",
                        "A part renewed whose finding is blank, or was refused, counts as working"
                            + " when last seen to work. Broken parts are nearly always renewed,"
                            + " sound ones mostly kept, so that lost findings make parts seem to last"
                            + " longer. In twelve invented fleets, whose truth is known, springs did"
                            + " by 2.2 % (standard error 1.1) with one finding in twelve left blank.",
                        "A part lapped or refitted keeps its age. A part of unknown origin is not"
                            + " taken for new.",
                        "The curve by the openings assumes no form. The fitted curve assumes a"
                            + " Weibull distribution; beyond the oldest part on record, where the"
                            + " chart is hatched, nothing but that assumption speaks.",
                        "Limits of a fit with fewer than 10 failures may miss the true value somewhat"
                            + " more often than their level says. Limits of restricted means are"
                            + " approximate; with fewer than 10 completed intervals the true mean"
                            + " may well lie below them.",
                        "Limits by bootstrap of vessels take vessels, not springs, as independent;"
                            + " limits by profile likelihood or binomial take springs as"
                            + " independent.")
                    .map(Block.Point::of)
                    .toList())));
  }
}
