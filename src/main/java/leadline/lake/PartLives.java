package leadline.lake;

import java.math.BigDecimal;
import leadline.fleet.MachineEntry;
import leadline.history.PartLife;
import leadline.quantity.RunningHours;
import org.apache.iceberg.Schema;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.types.Types;

/** The table of part lives, of every run. */
final class PartLives {

  static final Schema SCHEMA =
      new Schemas()
          .text("run", "the run that rebuilt the life")
          .text("vessel", "the vessel")
          .text("machine", "the machine at whose overhauls the life was followed")
          .text("model", "the machine's model")
          .text("component", "the component")
          .text("item", "the item's serial, or its position where it has none")
          .text("part", "the part")
          .count("life_no", "1 for the part's first life on record in the item")
          .text("origin", "from what the age is counted")
          .optional("entry_h", hours(), "age from which the life is known, h; empty without an age")
          .text("observation", "what the life says of the age at failure")
          .optional("lower_h", hours(), "working at this age, h")
          .optional("upper_h", hours(), "failed by this age, h; empty while none is known")
          .text("ended_by", "how the life left the records")
          .build();

  private PartLives() {}

  private static Types.DecimalType hours() {
    return Types.DecimalType.of(12, 1);
  }

  static Record encode(Schema schema, String run, MachineEntry machine, PartLife life) {
    Record row = GenericRecord.create(schema);
    row.setField("run", run);
    row.setField("vessel", machine.id().vessel());
    row.setField("machine", machine.id().machine());
    row.setField("model", machine.model());
    row.setField("component", life.component().name());
    row.setField("item", life.item().label());
    row.setField("part", life.part().name());
    row.setField("life_no", (long) life.number());
    row.setField("origin", life.origin().word());
    row.setField("observation", life.observation().word());
    life.observation()
        .workedAt()
        .ifPresent(
            age -> {
              row.setField("entry_h", decimal(life.entry()));
              row.setField("lower_h", decimal(age));
            });
    life.observation().failedBy().ifPresent(age -> row.setField("upper_h", decimal(age)));
    row.setField("ended_by", life.endedBy().word());
    return row;
  }

  private static BigDecimal decimal(RunningHours hours) {
    return BigDecimal.valueOf(hours.tenths(), 1);
  }
}
