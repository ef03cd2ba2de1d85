package leadline.fleet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A closed set of words of the plain layout: each constant is written as {@link #word()}. */
public interface Written {

  /** The word as exports write it: lower case, hyphens between words. */
  default String word() {
    return ((Enum<?>) this).name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  static <E extends Enum<E> & Written> Optional<E> read(Class<E> words, String text) {
    return Arrays.stream(words.getEnumConstants())
        .filter(constant -> constant.word().equals(text))
        .findFirst();
  }

  static <E extends Enum<E> & Written> List<String> words(Class<E> words) {
    return Arrays.stream(words.getEnumConstants()).map(Written::word).toList();
  }
}
