package leadline.settings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.networknt.schema.path.NodePath;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The environment's variables, put where a text of the settings says {@code ${NAME}} or {@code
 * ${NAME:-default}}. As in a shell, a variable that is empty counts as not set; what a variable
 * holds is taken as it is.
 */
record Environment(Map<String, String> variables) {

  private static final Pattern REFERENCE =
      Pattern.compile(
          "\\$\\{(?:(?<name>[A-Za-z_][A-Za-z0-9_]*)(?::-(?<default>(?:(?!\\$\\{)[^}])*))?\\})?");

  /** The same settings with every text expanded; a text that cannot be is an error. */
  JsonNode expand(JsonNode node, NodePath path, SettingErrors errors) {
    if (node instanceof ObjectNode object) {
      ObjectNode expanded = JsonNodeFactory.instance.objectNode();
      object
          .properties()
          .forEach(
              setting ->
                  expanded.set(
                      setting.getKey(),
                      expand(setting.getValue(), path.append(setting.getKey()), errors)));
      return expanded;
    }
    if (node instanceof ArrayNode array) {
      ArrayNode expanded = JsonNodeFactory.instance.arrayNode();
      for (int i = 0; i < array.size(); i++) {
        expanded.add(expand(array.get(i), path.append(i), errors));
      }
      return expanded;
    }
    return node.isTextual() ? TextNode.valueOf(expand(node.textValue(), path, errors)) : node;
  }

  private String expand(String text, NodePath path, SettingErrors errors) {
    Matcher reference = REFERENCE.matcher(text);
    StringBuilder expanded = new StringBuilder();
    while (reference.find()) {
      String value = value(reference, path, errors).orElse("");
      reference.appendReplacement(expanded, Matcher.quoteReplacement(value));
    }
    return reference.appendTail(expanded).toString();
  }

  private Optional<String> value(Matcher reference, NodePath path, SettingErrors errors) {
    String name = reference.group("name");
    if (name == null) {
      errors.add(
          path,
          "`${` is not closed or not understood; allowed are `${NAME}` and `${NAME:-default}`");
      return Optional.empty();
    }
    Optional<String> value =
        Optional.ofNullable(variables.get(name))
            .filter(set -> !set.isEmpty())
            .or(() -> Optional.ofNullable(reference.group("default")));
    if (value.isEmpty()) {
      errors.add(
          path,
          "the environment variable `%s` is not set; set it, or write a default: `${%s:-default}`"
              .formatted(name, name));
    }
    return value;
  }
}
