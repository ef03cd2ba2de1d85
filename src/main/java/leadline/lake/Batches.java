package leadline.lake;

import static leadline.lake.Stored.moment;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;
import leadline.origin.FileDigest;
import leadline.settings.Source;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;
import org.apache.iceberg.types.Types;

/**
 * The list of committed batches: a batch's row in it is what makes its rows visible. A withdrawal's
 * row in the list of withdrawals makes them invisible to whoever knows of it.
 */
public final class Batches {

  private static final Schema SCHEMA =
      new Schemas()
          .count("sequence", "place in the list of committed batches, from 1")
          .text("batch", "the batch's identifier")
          .moment("committed_at", "when the batch was committed")
          .text("program_version", "version of the program that loaded it")
          .rows(
              "files",
              new Schemas()
                  .text("name", "the file's path below the inbox")
                  .text("digest", "SHA-256 of its bytes")
                  .count("rows_read", "rows read")
                  .count("rows_stored", "rows stored")
                  .count("rows_refused", "rows refused")
                  .count("cells_trimmed", "cells with blanks around them"),
              "the export files it loaded")
          .optional("inbox", Types.StringType.get(), "the folder that they were read from")
          .optional("source", Types.StringType.get(), "the source's name, where it says so")
          .optional(
              "snapshots",
              Types.StringType.get(),
              "the kinds of which the source exports all records, with commas between them")
          .optionalWords("renamed", "by a vessel's former identifier, the one it has now")
          .optional(
              "unread",
              Types.StringType.get(),
              "the kinds of which a file could not be read, with commas between them")
          .optional("in_place_of", Types.StringType.get(), "the batch whose files were read again")
          .build();

  private static final Schema WITHDRAWALS =
      new Schemas()
          .text("batch", "the batch that was taken back")
          .moment("withdrawn_at", "when it was taken back")
          .text("program_version", "version of the program that took it back")
          .build();

  private final Lake lake;

  Batches(Lake lake) {
    this.lake = lake;
  }

  /** All committed batches, the oldest first. */
  public List<Batch> committed() {
    return lake.find(LakeTable.BATCHES)
        .map(
            table -> Stored.list(table, Batches::decode, Comparator.comparingLong(Batch::sequence)))
        .orElse(List.of());
  }

  /** What was known at a moment; nothing where no batch was committed by then. */
  public Optional<KnownAt> knownAt(Instant moment) {
    return KnownAt.of(moment, committed(), withdrawals());
  }

  private List<Withdrawal> withdrawals() {
    return lake.find(LakeTable.WITHDRAWALS)
        .map(table -> Stored.list(table, Batches::withdrawal, Comparator.comparing(Withdrawal::at)))
        .orElse(List.of());
  }

  /** The files of the batches that count. */
  public Set<FileDigest> loadedFiles() {
    return knownAt(Instant.MAX).map(KnownAt::counting).orElse(List.of()).stream()
        .flatMap(batch -> batch.files().stream())
        .map(LoadedFile::digest)
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Commits a batch whose rows have been appended: from now on they are visible. The moment is the
   * given one, or just after the last commit where the clock has gone back.
   */
  public Batch commit(
      String id, Instant now, String programVersion, List<LoadedFile> files, Delivery delivery) {
    Batch batch =
        new Batch(
            committed().size() + 1L, id, momentAfterAll(now), programVersion, files, delivery);
    Table table = lake.table(LakeTable.BATCHES, SCHEMA);
    lake.append(table, RowFiles.write(table, List.of(encode(table.schema(), batch)).iterator()));
    return batch;
  }

  /** Commits the withdrawal of a batch that counts: from now on its rows are invisible. */
  public Withdrawal withdraw(String batch, Instant now, String programVersion) {
    Withdrawal withdrawal = new Withdrawal(batch, momentAfterAll(now), programVersion);
    Table table = lake.table(LakeTable.WITHDRAWALS, WITHDRAWALS);
    Record row = GenericRecord.create(table.schema());
    row.setField("batch", withdrawal.batch());
    row.setField("withdrawn_at", moment(withdrawal.at()));
    row.setField("program_version", withdrawal.programVersion());
    lake.append(table, RowFiles.write(table, List.of(row).iterator()));
    return withdrawal;
  }

  private Instant momentAfterAll(Instant now) {
    Instant rounded = now.truncatedTo(ChronoUnit.MILLIS);
    Instant earliest =
        knownAt(Instant.MAX).map(known -> known.at().plus(1, ChronoUnit.MILLIS)).orElse(rounded);
    return rounded.isBefore(earliest) ? earliest : rounded;
  }

  private static Withdrawal withdrawal(Record row) {
    return new Withdrawal(
        Stored.text(row, "batch"),
        Stored.moment(row, "withdrawn_at"),
        Stored.text(row, "program_version"));
  }

  private static Record encode(Schema schema, Batch batch) {
    Record row = GenericRecord.create(schema);
    row.setField("sequence", batch.sequence());
    row.setField("batch", batch.id());
    row.setField("committed_at", moment(batch.committedAt()));
    row.setField("program_version", batch.programVersion());
    List<Record> files = new ArrayList<>();
    for (LoadedFile file : batch.files()) {
      Record entry =
          GenericRecord.create(schema.findType("files").asListType().elementType().asStructType());
      entry.setField("name", file.name());
      entry.setField("digest", file.digest().hex());
      entry.setField("rows_read", file.rowsRead());
      entry.setField("rows_stored", file.rowsStored());
      entry.setField("rows_refused", file.rowsRefused());
      entry.setField("cells_trimmed", file.cellsTrimmed());
      files.add(entry);
    }
    row.setField("files", files);
    Delivery delivery = batch.delivery();
    row.setField("inbox", delivery.inbox());
    row.setField("source", delivery.source().name());
    row.setField("snapshots", words(delivery.source().snapshots()));
    row.setField("renamed", delivery.source().renamed());
    row.setField("unread", words(delivery.unread()));
    delivery.inPlaceOf().ifPresent(batchBefore -> row.setField("in_place_of", batchBefore));
    return row;
  }

  private static Batch decode(Record row) {
    List<LoadedFile> files = new ArrayList<>();
    for (Record file : Stored.rows(row, "files")) {
      files.add(
          new LoadedFile(
              Stored.text(file, "name"),
              new FileDigest(Stored.text(file, "digest")),
              Stored.count(file, "rows_read"),
              Stored.count(file, "rows_stored"),
              Stored.count(file, "rows_refused"),
              Stored.count(file, "cells_trimmed")));
    }
    return new Batch(
        Stored.count(row, "sequence"),
        Stored.text(row, "batch"),
        Stored.moment(row, "committed_at"),
        Stored.text(row, "program_version"),
        files,
        delivery(row));
  }

  /** An older program kept nothing of it. */
  private static Delivery delivery(Record row) {
    if (row.getField("inbox") == null) {
      return Delivery.UNTOLD;
    }
    Map<String, String> renamed = new TreeMap<>();
    ((Map<?, ?>) row.getField("renamed"))
        .forEach((former, now) -> renamed.put(former.toString(), now.toString()));
    return new Delivery(
        Stored.text(row, "inbox"),
        new Source(Stored.text(row, "source"), kinds(row, "snapshots"), renamed),
        kinds(row, "unread"),
        Optional.ofNullable(row.getField("in_place_of")).map(Object::toString));
  }

  private static String words(Set<RecordKind> kinds) {
    return kinds.stream().sorted().map(RecordKind::word).collect(Collectors.joining(","));
  }

  private static Set<RecordKind> kinds(Record row, String field) {
    return Arrays.stream(Stored.text(row, field).split(",", -1))
        .flatMap(word -> Written.read(RecordKind.class, word).stream())
        .collect(Collectors.toUnmodifiableSet());
  }
}
