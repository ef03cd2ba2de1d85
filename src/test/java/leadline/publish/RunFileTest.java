package leadline.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadline.origin.FileDigest;
import leadline.quantity.ReportMonth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunFileTest {

  @TempDir Path folder;

  /** Written down by hand, but for the tables' digests. */
  @Test
  void theRunsAccountInFull() throws IOException {
    TableFiles table = TableFiles.write(SampleTable.table(), folder);
    RunFile.write(SampleIssue.manifest("run-1", "2024-12"), List.of(table), folder);
    Path csv = folder.resolve("tables/sample_rates.csv");
    Path parquet = folder.resolve("tables/sample_rates.parquet");
    String expected =
        """
        {
          "run" : "run-1",
          "month" : "2024-12",
          "known_at" : "2025-01-10T12:00:00Z",
          "program_version" : "0.1.0",
          "settings_digest" : "%s",
          "inputs" : [
            {
              "batch" : "batch-1",
              "committed_at" : "2025-01-10T11:59:58.500Z",
              "files" : [
                {
                  "name" : "kittiwake/hours.csv",
                  "digest" : "%s",
                  "read" : 12,
                  "stored" : 10,
                  "refused" : 2,
                  "cells_trimmed" : 1
                }
              ]
            }
          ],
          "records" : {
            "hours" : {
              "current" : 7,
              "duplicate" : 1,
              "superseded" : 1,
              "withdrawn" : 1
            }
          },
          "problems" : {
            "impossible-reading" : 3
          },
          "durations_s" : {
            "read" : 1.25,
            "count" : 0.5
          },
          "tables" : [
            {
              "name" : "sample_rates",
              "rows" : 19,
              "csv" : {
                "path" : "tables/sample_rates.csv",
                "bytes" : %d,
                "hash" : "sha256:%s"
              },
              "parquet" : {
                "path" : "tables/sample_rates.parquet",
                "bytes" : %d,
                "hash" : "sha256:%s"
              }
            }
          ]
        }
        """
            .formatted(
                "ab".repeat(32),
                "cd".repeat(32),
                Files.size(csv),
                FileDigest.of(csv).hex(),
                Files.size(parquet),
                FileDigest.of(parquet).hex());
    assertEquals(expected, Files.readString(folder.resolve("run.json"), StandardCharsets.UTF_8));
    assertEquals(Optional.of(ReportMonth.parse("2024-12")), RunFile.monthOf(folder));
  }

  @Test
  void rowsReadWereStoredOrRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new RunManifest.InputFile("hours.csv", "cd".repeat(32), 12, 10, 1, 0));
  }

  @Test
  void aRunsNameCannotLeadOutOfItsFolder() {
    assertThrows(
        IllegalArgumentException.class, () -> SampleIssue.manifest("../elsewhere", "2024-12"));
  }
}
