package leadline.lake;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import leadline.fleet.CellType;
import leadline.fleet.Column;
import leadline.fleet.Written;
import leadline.quantity.RunningHours;
import org.apache.iceberg.types.Type;
import org.apache.iceberg.types.Types;

/** Cells of the plain layout as Iceberg values. */
final class CellCodec {

  private CellCodec() {}

  static Type typeOf(CellType<?> type) {
    if (type instanceof CellType.Whole) {
      return Types.LongType.get();
    } else if (type instanceof CellType.Decimal) {
      return Types.DoubleType.get();
    } else if (type instanceof CellType.Hours) {
      return Types.DecimalType.of(12, 1);
    } else if (type instanceof CellType.Day) {
      return Types.DateType.get();
    } else if (type instanceof CellType.Moment) {
      return Types.TimestampType.withZone();
    }
    return Types.StringType.get();
  }

  /** The value as Iceberg keeps it; words by their spelling, hours as decimals. */
  static Object encode(Object value) {
    if (value instanceof RunningHours hours) {
      return BigDecimal.valueOf(hours.tenths(), 1);
    } else if (value instanceof Instant moment) {
      return moment.atOffset(ZoneOffset.UTC);
    } else if (value instanceof Written word) {
      return word.word();
    }
    return value;
  }

  @SuppressWarnings("unchecked") // each branch yields the value type of its cell type
  static <T> T decode(Column<T> column, Object stored) {
    CellType<T> type = column.type();
    if (type instanceof CellType.Hours) {
      return (T) RunningHours.ofTenths(((BigDecimal) stored).unscaledValue().longValueExact());
    } else if (type instanceof CellType.Moment) {
      return (T) ((OffsetDateTime) stored).toInstant();
    } else if (type instanceof CellType.Day) {
      return (T) (LocalDate) stored;
    } else if (type instanceof CellType.Word<?> word) {
      return (T) decodeWord(word, stored.toString());
    } else if (type instanceof CellType.Whole || type instanceof CellType.Decimal) {
      return (T) stored;
    }
    return (T) stored.toString();
  }

  private static <E extends Enum<E> & Written> E decodeWord(CellType.Word<E> type, String text) {
    return Written.read(type.words(), text)
        .orElseThrow(() -> new LakeException("the lake holds the unknown word '" + text + "'"));
  }
}
