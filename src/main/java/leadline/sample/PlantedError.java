package leadline.sample;

/**
 * An error in a vessel's records, planted.
 *
 * @param file the word with which the file's name begins
 * @param record the overhaul's identifier, or the machine and the day or month
 * @param part the part, where the error is in its finding; else empty
 * @param truth what ought to stand there, where the error is in one figure or serial; else empty
 */
public record PlantedError(
    String vessel, String file, String record, String part, RecordError kind, String truth) {}
