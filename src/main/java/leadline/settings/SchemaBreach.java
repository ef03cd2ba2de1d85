package leadline.settings;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** A breach of a schema, told to people in the words of the schema's descriptions. */
record SchemaBreach(Error error, JsonNode schema) {

  /** The place of the setting, also of one that should not be there, or should and is not. */
  NodePath path() {
    return isUnknownSetting() || isMissingSetting()
        ? error.getInstanceLocation().append(error.getProperty())
        : error.getInstanceLocation();
  }

  String sentence() {
    JsonNode broken = brokenSchema();
    if (isUnknownSetting()) {
      return "there is no setting `%s` here; allowed are %s"
          .formatted(error.getProperty(), quoted(names(broken.path("properties"))));
    }
    if (isMissingSetting()) {
      JsonNode missing = broken.path("properties").path(error.getProperty());
      return "the setting `%s` is missing; expected is %s"
          .formatted(error.getProperty(), expected(missing));
    }
    return "%s is not allowed here; expected is %s".formatted(written(), expected(broken));
  }

  private boolean isUnknownSetting() {
    return error.getKeyword().equals("additionalProperties");
  }

  private boolean isMissingSetting() {
    return error.getKeyword().equals("required");
  }

  /** The schema object in which the broken keyword stands. */
  private JsonNode brokenSchema() {
    NodePath keyword = error.getSchemaLocation().getFragment();
    JsonNode at = schema;
    for (int i = 0; i < keyword.getNameCount() - 1; i++) {
      at = at.isArray() ? at.path((int) keyword.getElement(i)) : at.path(keyword.getName(i));
    }
    return at;
  }

  private String written() {
    JsonNode value = error.getInstanceNode();
    return switch (value.getNodeType()) {
      case STRING -> "`" + value.textValue() + "`";
      case OBJECT -> "an object";
      case ARRAY -> value.isEmpty() ? "an empty list" : "this list";
      case BINARY, BOOLEAN, MISSING, NULL, NUMBER, POJO -> value.toString();
    };
  }

  private String expected(JsonNode allowed) {
    if (allowed.has("$ref") && !allowed.has("description")) {
      return expected(schema.at(allowed.path("$ref").textValue().substring("#".length())));
    }
    String description = allowed.path("description").asText();
    if (allowed.has("enum")) {
      String words = "one of " + quoted(texts(allowed.path("enum")));
      return description.isEmpty() ? words : words + " (" + description + ")";
    }
    return allowed.has("minimum")
        ? "%s, from %s to %s"
            .formatted(description, allowed.path("minimum"), allowed.path("maximum"))
        : description;
  }

  private static Stream<String> names(JsonNode object) {
    return object.properties().stream().map(Map.Entry::getKey);
  }

  private static Stream<String> texts(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).map(JsonNode::textValue);
  }

  private static String quoted(Stream<String> words) {
    return words.map(word -> "`" + word + "`").collect(Collectors.joining(", "));
  }
}
