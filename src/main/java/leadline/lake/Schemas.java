package leadline.lake;

import java.util.ArrayList;
import java.util.List;
import org.apache.iceberg.Schema;
import org.apache.iceberg.types.Type;
import org.apache.iceberg.types.Types;

/** Builds schemas with field ids in order. */
final class Schemas {

  private final List<Types.NestedField> fields = new ArrayList<>();
  private int nextId = 1;

  Schemas required(String name, Type type, String meaning) {
    fields.add(Types.NestedField.required(nextId++, name, type, meaning));
    return this;
  }

  Schemas optional(String name, Type type, String meaning) {
    fields.add(Types.NestedField.optional(nextId++, name, type, meaning));
    return this;
  }

  Schemas text(String name, String meaning) {
    return required(name, Types.StringType.get(), meaning);
  }

  Schemas count(String name, String meaning) {
    return required(name, Types.LongType.get(), meaning);
  }

  Schemas moment(String name, String meaning) {
    return required(name, Types.TimestampType.withZone(), meaning);
  }

  /** A map of words to words. */
  Schemas words(String name, String meaning) {
    return required(name, mapTo(Types.StringType.get()), meaning);
  }

  /** A map of words to words, which older rows may lack. */
  Schemas optionalWords(String name, String meaning) {
    return optional(name, mapTo(Types.StringType.get()), meaning);
  }

  /** A map of words to counts. */
  Schemas counts(String name, String meaning) {
    return required(name, mapTo(Types.LongType.get()), meaning);
  }

  /** A list of rows with fields of their own. */
  Schemas rows(String name, Schemas row, String meaning) {
    int element = nextId++;
    List<Types.NestedField> renumbered = new ArrayList<>();
    for (Types.NestedField field : row.fields) {
      renumbered.add(
          field.isRequired()
              ? Types.NestedField.required(nextId++, field.name(), field.type(), field.doc())
              : Types.NestedField.optional(nextId++, field.name(), field.type(), field.doc()));
    }
    return required(
        name, Types.ListType.ofRequired(element, Types.StructType.of(renumbered)), meaning);
  }

  private Type mapTo(Type values) {
    int key = nextId++;
    int value = nextId++;
    return Types.MapType.ofRequired(key, value, Types.StringType.get(), values);
  }

  Schema build() {
    return new Schema(fields);
  }
}
