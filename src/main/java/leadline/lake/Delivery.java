package leadline.lake;

import java.util.Optional;
import java.util.Set;
import leadline.fleet.RecordKind;
import leadline.settings.Source;

/**
 * How a batch's files came.
 *
 * @param inbox the folder that they were read from; empty where an older program did not keep it
 * @param source what their source says of them
 * @param unread kinds of record of which a file could not be read
 * @param inPlaceOf the batch whose files were read again, and whose place this batch takes
 */
public record Delivery(
    String inbox, Source source, Set<RecordKind> unread, Optional<String> inPlaceOf) {

  /** Of a batch that an older program committed. */
  static final Delivery UNTOLD = new Delivery("", Source.UNNAMED, Set.of(), Optional.empty());

  public Delivery {
    unread = Set.copyOf(unread);
  }
}
