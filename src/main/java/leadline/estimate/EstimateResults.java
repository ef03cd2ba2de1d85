package leadline.estimate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import leadline.stats.Limits;

/**
 * Named results in the order in which they were added: numbers, words, truths and lists of one of
 * them. An infinite or undefined number prints as the string "Infinity", "-Infinity" or "NaN".
 */
public final class EstimateResults {

  /** Why a result is missing, and what stands in its place is a limit only. */
  public enum Status {
    /** The likelihood rises for ever towards the edge of what is possible. */
    NO_FINITE_MAXIMUM("no-finite-maximum"),
    /** The data do not tell. */
    INSUFFICIENT("insufficient"),
    /** The maximum lies on the edge of what is possible. */
    BOUNDARY("boundary");

    private final String word;

    Status(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final ObjectNode results = NODES.objectNode();

  EstimateResults number(String name, double value) {
    return put(name, node(value));
  }

  /** Undefined where empty. */
  EstimateResults number(String name, OptionalDouble value) {
    return number(name, value.orElse(Double.NaN));
  }

  EstimateResults numbers(String name, double... values) {
    return put(name, Arrays.stream(values).mapToObj(EstimateResults::node).toList());
  }

  /** One number of each element. */
  <T> EstimateResults numbers(String name, Collection<T> elements, ToDoubleFunction<T> value) {
    return numbers(name, elements.stream().mapToDouble(value).toArray());
  }

  /** A list of two. */
  EstimateResults limits(String name, Limits limits) {
    return numbers(name, limits.lower(), limits.upper());
  }

  EstimateResults word(String name, String word) {
    return put(name, TextNode.valueOf(word));
  }

  EstimateResults words(String name, List<String> words) {
    return put(name, words.stream().map(TextNode::valueOf).toList());
  }

  EstimateResults truth(String name, boolean truth) {
    return put(name, BooleanNode.valueOf(truth));
  }

  EstimateResults truths(String name, List<Boolean> truths) {
    return put(name, truths.stream().map(BooleanNode::valueOf).toList());
  }

  /** Says under {@code NAME.status} why the data support no more. */
  EstimateResults status(String name, Status status) {
    return word(name + ".status", status.word);
  }

  /** Adds the results of a part of the data, each name with the prefix before it. */
  EstimateResults addAll(String prefix, EstimateResults part) {
    part.results.properties().forEach(result -> put(prefix + result.getKey(), result.getValue()));
    return this;
  }

  /** One flat object, a line for each result. */
  public String json() {
    return results.toPrettyString();
  }

  private EstimateResults put(String name, List<? extends JsonNode> values) {
    ArrayNode array = NODES.arrayNode();
    array.addAll(values);
    return put(name, array);
  }

  private EstimateResults put(String name, JsonNode value) {
    if (results.has(name)) {
      throw new IllegalStateException("two results of one name: " + name);
    }
    results.set(name, value);
    return this;
  }

  private static JsonNode node(double value) {
    return Double.isFinite(value)
        ? DoubleNode.valueOf(value)
        : TextNode.valueOf(Double.toString(value));
  }
}
