package leadline.lake;

import static leadline.lake.Stored.moment;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.origin.FileDigest;
import org.apache.iceberg.Schema;
import org.apache.iceberg.Table;
import org.apache.iceberg.data.GenericRecord;
import org.apache.iceberg.data.Record;

/** The list of committed batches: a batch's row in it is what makes its rows visible. */
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
    List<Batch> upTo =
        committed().stream().filter(batch -> !batch.committedAt().isAfter(moment)).toList();
    return upTo.isEmpty()
        ? Optional.empty()
        : Optional.of(new KnownAt(upTo.get(upTo.size() - 1).committedAt(), upTo));
  }

  public Set<FileDigest> loadedFiles() {
    return committed().stream()
        .flatMap(batch -> batch.files().stream())
        .map(LoadedFile::digest)
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Commits a batch whose rows have been appended: from now on they are visible. The moment is the
   * given one, or just after the batch before where the clock has gone back.
   */
  public Batch commit(String id, Instant now, String programVersion, List<LoadedFile> files) {
    List<Batch> before = committed();
    Instant rounded = now.truncatedTo(ChronoUnit.MILLIS);
    Instant earliest =
        before.isEmpty()
            ? rounded
            : before.get(before.size() - 1).committedAt().plus(1, ChronoUnit.MILLIS);
    Batch batch =
        new Batch(
            before.size() + 1L,
            id,
            rounded.isBefore(earliest) ? earliest : rounded,
            programVersion,
            files);
    Table table = lake.table(LakeTable.BATCHES, SCHEMA);
    lake.append(table, RowFiles.write(table, List.of(encode(table.schema(), batch)).iterator()));
    return batch;
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
        files);
  }
}
