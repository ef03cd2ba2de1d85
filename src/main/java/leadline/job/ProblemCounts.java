package leadline.job;

import java.io.Serializable;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leadline.problem.Problem;

/**
 * How many problems of each kind were met, and one of each in words.
 *
 * @param examples of each kind the sentence that comes first in the alphabet, whatever the order in
 *     which vessels were rebuilt
 */
record ProblemCounts(SortedMap<String, Long> byKind, SortedMap<String, String> examples)
    implements Serializable {

  static final ProblemCounts NONE =
      new ProblemCounts(Collections.emptySortedMap(), Collections.emptySortedMap());

  static ProblemCounts of(List<Problem> problems) {
    SortedMap<String, Long> byKind = new TreeMap<>();
    SortedMap<String, String> examples = new TreeMap<>();
    for (Problem problem : problems) {
      byKind.merge(problem.kind(), 1L, Long::sum);
      examples.merge(problem.kind(), inWords(problem), ProblemCounts::first);
    }
    return new ProblemCounts(byKind, examples);
  }

  ProblemCounts plus(ProblemCounts other) {
    SortedMap<String, Long> byKinds = new TreeMap<>(byKind);
    other.byKind.forEach((kind, count) -> byKinds.merge(kind, count, Long::sum));
    SortedMap<String, String> bothExamples = new TreeMap<>(examples);
    other.examples.forEach((kind, words) -> bothExamples.merge(kind, words, ProblemCounts::first));
    return new ProblemCounts(byKinds, bothExamples);
  }

  private static String inWords(Problem problem) {
    return problem.vessel() + ", " + problem.record() + ": " + problem.sentence();
  }

  private static String first(String one, String other) {
    return one.compareTo(other) <= 0 ? one : other;
  }
}
