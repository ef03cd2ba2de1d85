package leadline.settings;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.path.NodePath;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadline.fleet.Written;

/** A value of a settings file with its place; absent ones are there, but empty. */
record Setting(JsonNode value, NodePath path, SettingErrors errors) {

  Setting at(String name) {
    return new Setting(value.path(name), path.append(name), errors);
  }

  /** The settings of an object, in the order of the file. */
  Stream<Setting> members() {
    return value.isObject()
        ? value.properties().stream().map(member -> at(member.getKey()))
        : Stream.empty();
  }

  /** The name under which this setting stands. */
  String name() {
    return path.getName(-1);
  }

  List<Setting> items() {
    return IntStream.range(0, value.isArray() ? value.size() : 0)
        .mapToObj(i -> new Setting(value.get(i), path.append(i), errors))
        .toList();
  }

  /** The text, unless it is absent or already known to be wrong. */
  Optional<String> text() {
    return Optional.of(value)
        .filter(node -> node.isTextual() && !errors.isFaulty(path))
        .map(JsonNode::textValue);
  }

  /** The word, as the layout writes it. */
  <E extends Enum<E> & Written> Optional<E> word(Class<E> words) {
    return text().flatMap(text -> Written.read(words, text));
  }

  /** The words of a list. */
  <E extends Enum<E> & Written> Set<E> words(Class<E> words) {
    return items().stream()
        .flatMap(item -> item.word(words).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The number, unless it is absent or already known to be wrong. */
  Optional<Long> wholeNumber() {
    return Optional.of(value)
        .filter(node -> node.isNumber() && !errors.isFaulty(path))
        .map(JsonNode::longValue);
  }

  void error(String sentence) {
    errors.add(path, sentence);
  }
}
