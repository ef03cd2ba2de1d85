package leadline.settings;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.PathType;

/** The JSON Schema of a settings file; its descriptions tell people what is allowed. */
final class SettingsSchema {

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          registry ->
              registry.schemaRegistryConfig(
                  SchemaRegistryConfig.builder().pathType(PathType.JSON_PATH).build()));

  private final Schema schema;

  SettingsSchema(JsonNode tree) {
    schema = REGISTRY.getSchema(tree);
  }

  /** Reports one breach of each setting that is not known to be wrong already. */
  void check(JsonNode settings, SettingErrors errors) {
    for (Error error : schema.validate(settings)) {
      SchemaBreach breach = new SchemaBreach(error, schema.getSchemaNode());
      if (!errors.isFaulty(breach.path())) {
        errors.add(breach.path(), breach.sentence());
      }
    }
  }
}
