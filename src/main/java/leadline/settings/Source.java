package leadline.settings;

import java.io.Serializable;
import java.util.Map;
import java.util.Set;
import leadline.fleet.RecordKind;

/**
 * What the source of an inbox says of its exports.
 *
 * @param name the same in all its inboxes; empty where the inbox does not say
 * @param snapshots the kinds of record of which its exports hold every record that there is, so
 *     that one that is absent was deleted; of the others an absent record stands as before
 * @param renamed by a vessel's former identifier, the identifier that it has now
 */
public record Source(String name, Set<RecordKind> snapshots, Map<String, String> renamed)
    implements Serializable {

  /** Of an inbox without a file {@code source.json}. */
  public static final Source UNNAMED = new Source("", Set.of(), Map.of());

  public Source {
    snapshots = Set.copyOf(snapshots);
    renamed = Map.copyOf(renamed);
  }
}
