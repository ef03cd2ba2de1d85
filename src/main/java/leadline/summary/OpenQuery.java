package leadline.summary;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.history.ShipAnswer;
import leadline.origin.BatchTimes;
import leadline.origin.Origin;
import leadline.problem.Problem;

/**
 * A question to a ship that nothing known answers, the ship's word that the records are right
 * included.
 *
 * @param alike the problems of one identifier, which are asked about once; at least one
 * @param firstAsked by the records known, whichever months were computed: when the batch was
 *     committed that first brought the standing version of the record in contradiction, the latest
 *     of them where there are several; or when what is missing became due, if that was later
 */
record OpenQuery(List<Problem> alike, Instant firstAsked) {

  static final Comparator<OpenQuery> OLDEST_FIRST =
      Comparator.comparing((OpenQuery query) -> query.firstAsked())
          .thenComparing(query -> query.problem().kind())
          .thenComparing(query -> query.problem().record());

  /** The vessel's questions, each once. */
  static List<OpenQuery> of(VesselAccount vessel) {
    Map<Origin, Instant> arrivals = arrivals(vessel);
    Map<String, Instant> answers = answers(vessel);
    return vessel.problems().stream()
        .collect(Collectors.groupingBy(Problem::query, LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .filter(alike -> !isAnswered(alike, arrivals, answers))
        .map(alike -> new OpenQuery(alike, firstAsked(alike, arrivals)))
        .sorted(OLDEST_FIRST)
        .toList();
  }

  /** The first of the problems. */
  Problem problem() {
    return alike.get(0);
  }

  /** Whole days. */
  long ageDays(Instant knownAt) {
    return ChronoUnit.DAYS.between(firstAsked, knownAt);
  }

  /** What each of the problems says, and where the records stand. */
  String evidence() {
    return Stream.concat(
            alike.stream().map(Problem::evidence).distinct(),
            Stream.of(
                alike.stream()
                    .flatMap(problem -> problem.origins().stream())
                    .distinct()
                    .map(Origin::toString)
                    .collect(Collectors.joining("; ", "(", ")"))))
        .collect(Collectors.joining(" "));
  }

  /** When each answer that the records are right arrived, by the question's identifier. */
  private static Map<String, Instant> answers(VesselAccount vessel) {
    return ShipAnswer.among(vessel.records()).stream()
        .collect(
            Collectors.toMap(
                ShipAnswer::query,
                answer -> vessel.batches().of(answer.batch()),
                OpenQuery::later));
  }

  /** An answer speaks of what there was to ask about when it arrived, and of nothing since. */
  private static boolean isAnswered(
      List<Problem> alike, Map<Origin, Instant> arrivals, Map<String, Instant> answers) {
    return Optional.ofNullable(answers.get(alike.get(0).query()))
        .filter(
            answered ->
                alike.stream()
                    .noneMatch(problem -> firstAsked(problem, arrivals).isAfter(answered)))
        .isPresent();
  }

  private static Map<Origin, Instant> arrivals(VesselAccount vessel) {
    BatchTimes batches = vessel.batches();
    return vessel.records().arrived().stream()
        .collect(
            Collectors.toMap(
                row -> row.row().origin(), row -> batches.of(row.batch()), OpenQuery::later));
  }

  private static Instant firstAsked(Collection<Problem> alike, Map<Origin, Instant> arrivals) {
    return alike.stream()
        .map(problem -> firstAsked(problem, arrivals))
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static Instant firstAsked(Problem problem, Map<Origin, Instant> arrivals) {
    return Stream.concat(
            problem.origins().stream().map(origin -> arrival(origin, arrivals)),
            problem.dueSince().stream())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static Instant arrival(Origin origin, Map<Origin, Instant> arrivals) {
    if (!arrivals.containsKey(origin)) {
      throw new IllegalStateException(origin + " is not among the records that stand");
    }
    return arrivals.getOrDefault(origin, Instant.MIN);
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }
}
