package leadline.publish;

/** Told of each point of a publication after which the process may die. */
@FunctionalInterface
public interface Boundary {

  Boundary UNWATCHED = point -> {};

  void reached(String point);
}
