package leadline.fleet;

import java.io.Serializable;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Which vessels exchange items, so that a serial is one item on all of them.
 *
 * @param groups of vessels, none of which is in two
 */
public record ItemExchange(List<NavigableSet<String>> groups) implements Serializable {

  /** Each vessel has its own items. */
  public static final ItemExchange NONE = new ItemExchange(List.of());

  public ItemExchange {
    groups = List.copyOf(groups);
  }

  /**
   * Vessels of one list exchange items.
   *
   * @param groups lists of vessels
   */
  public static ItemExchange among(List<List<String>> groups) {
    return new ItemExchange(
        groups.stream().<NavigableSet<String>>map(vessels -> new TreeSet<>(vessels)).toList());
  }

  /** A name for the vessels with which this one exchanges items: its own where with none. */
  public String poolOf(String vessel) {
    return groups.stream()
        .filter(group -> group.contains(vessel))
        .findFirst()
        .map(NavigableSet::first)
        .orElse(vessel);
  }
}
