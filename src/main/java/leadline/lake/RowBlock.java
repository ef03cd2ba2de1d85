package leadline.lake;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import leadline.fleet.CellType;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.RecordKind;
import leadline.fleet.SourcedRow;
import leadline.fleet.Written;
import leadline.history.ArrivedRow;
import leadline.origin.Arrival;
import leadline.origin.FileDigest;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;

/**
 * Rows of one vessel packed into bytes, so that grouping a fleet's rows by vessel moves a few large
 * blocks and not millions of small objects.
 */
@SuppressWarnings("EnumOrdinal") // a block lives no longer than the job that packed it
public final class RowBlock implements Serializable {

  private final byte[] bytes;
  private final int rows;

  private RowBlock(byte[] bytes, int rows) {
    this.bytes = bytes;
    this.rows = rows;
  }

  /** Hands out each row with its batch. The rows carry no raw text. */
  public void forEach(Consumer<ArrivedRow> reader) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      Reader rowReader = new Reader(in);
      for (int row = 0; row < rows; row++) {
        rowReader.next(reader);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a packed block of rows is damaged", e);
    }
  }

  /** Packs rows. */
  static final class Writer {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);
    private final Map<String, Integer> digests = new HashMap<>();
    private int rows;

    void add(Cells cells, Arrival arrival) {
      try {
        out.writeByte(cells.kind().ordinal());
        out.writeLong(arrival.batch());
        writeFile(arrival.origin());
        out.writeLong(arrival.origin().line());
        for (Column<?> column : cells.kind().layout().columns()) {
          writeCell(cells, column);
        }
        rows++;
      } catch (IOException e) {
        throw new UncheckedIOException("cannot pack a row", e);
      }
    }

    /** A file is named once in a block, then by its number. */
    private void writeFile(Origin origin) throws IOException {
      String name = origin.digest().hex() + origin.file();
      Integer number = digests.putIfAbsent(name, digests.size());
      out.writeInt(number == null ? -1 : number);
      if (number == null) {
        writeText(name);
      }
    }

    private <T> void writeCell(Cells cells, Column<T> column) throws IOException {
      T value = cells.find(column).orElse(null);
      out.writeBoolean(value != null);
      if (value != null) {
        writeValue(value);
      }
    }

    private void writeValue(Object value) throws IOException {
      if (value instanceof RunningHours hours) {
        out.writeLong(hours.tenths());
      } else if (value instanceof Instant moment) {
        out.writeLong(moment.getEpochSecond());
        out.writeInt(moment.getNano());
      } else if (value instanceof LocalDate day) {
        out.writeLong(day.toEpochDay());
      } else if (value instanceof Long number) {
        out.writeLong(number);
      } else if (value instanceof Double number) {
        out.writeDouble(number);
      } else if (value instanceof Enum<?> word) {
        out.writeByte(word.ordinal());
      } else {
        writeText(value.toString());
      }
    }

    /** Unlike {@link DataOutputStream#writeUTF}, for texts of any length. */
    private void writeText(String text) throws IOException {
      byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
      out.writeInt(encoded.length);
      out.write(encoded);
    }

    RowBlock finish() {
      return new RowBlock(bytes.toByteArray(), rows);
    }
  }

  private static final class Reader {
    private final DataInputStream in;
    private final List<String> files = new ArrayList<>();

    Reader(DataInputStream in) {
      this.in = in;
    }

    void next(Consumer<ArrivedRow> reader) throws IOException {
      RecordKind kind = RecordKind.values()[in.readByte()];
      long batch = in.readLong();
      String file = file(in.readInt());
      Origin origin =
          new Origin(file.substring(64), new FileDigest(file.substring(0, 64)), in.readLong());
      Cells.Builder cells = Cells.of(kind);
      for (Column<?> column : kind.layout().columns()) {
        if (in.readBoolean()) {
          put(cells, column);
        }
      }
      SourcedRow row = new SourcedRow(cells.build(), origin);
      reader.accept(new ArrivedRow(batch, row));
    }

    private String text() throws IOException {
      return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
    }

    private String file(int number) throws IOException {
      if (number < 0) {
        files.add(text());
        return files.get(files.size() - 1);
      }
      return files.get(number);
    }

    private <T> void put(Cells.Builder cells, Column<T> column) throws IOException {
      cells.with(column, read(column.type()));
    }

    @SuppressWarnings("unchecked") // each branch yields the value type of its cell type
    private <T> T read(CellType<T> type) throws IOException {
      if (type instanceof CellType.Hours) {
        return (T) RunningHours.ofTenths(in.readLong());
      } else if (type instanceof CellType.Moment) {
        return (T) Instant.ofEpochSecond(in.readLong(), in.readInt());
      } else if (type instanceof CellType.Day) {
        return (T) LocalDate.ofEpochDay(in.readLong());
      } else if (type instanceof CellType.Whole) {
        return (T) Long.valueOf(in.readLong());
      } else if (type instanceof CellType.Decimal) {
        return (T) Double.valueOf(in.readDouble());
      } else if (type instanceof CellType.Word<?> word) {
        return (T) constant(word, in.readByte());
      }
      return (T) text();
    }

    private static <E extends Enum<E> & Written> E constant(CellType.Word<E> word, int ordinal) {
      return word.words().getEnumConstants()[ordinal];
    }
  }
}
