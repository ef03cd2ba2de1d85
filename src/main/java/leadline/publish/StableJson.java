package leadline.publish;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import leadline.quantity.ReportMonth;

/** JSON files for people and programs: indented, snake case, the same bytes on every system. */
final class StableJson {

  static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .addModule(
              new SimpleModule()
                  .addSerializer(Instant.class, ToStringSerializer.instance)
                  .addSerializer(ReportMonth.class, ToStringSerializer.instance))
          .build();

  private static final DefaultIndenter LINE_FEED = new DefaultIndenter("  ", "\n");

  private StableJson() {}

  static void write(ObjectNode json, Path file) throws IOException {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(LINE_FEED);
    printer.indentArraysWith(LINE_FEED);
    Files.writeString(
        file, MAPPER.writer(printer).writeValueAsString(json) + "\n", StandardCharsets.UTF_8);
  }
}
