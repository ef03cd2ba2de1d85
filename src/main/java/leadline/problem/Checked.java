package leadline.problem;

import java.util.List;

/** A result, and the problems met on the way to it. */
public record Checked<T, P>(T value, List<P> problems) {

  public Checked {
    problems = List.copyOf(problems);
  }
}
