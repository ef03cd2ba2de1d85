package leadline.summary;

import java.time.Instant;
import leadline.origin.FileDigest;

/**
 * An export file that a committed batch took in, with the batch's own counts.
 *
 * @param batchNo the batch's place in the order of arrival, from 1
 * @param name the file's path below the inbox
 */
public record IntakeFile(
    long batchNo,
    String batch,
    Instant committedAt,
    IntakeStanding standing,
    String name,
    FileDigest digest,
    long rowsRead,
    long rowsStored,
    long rowsRefused) {}
