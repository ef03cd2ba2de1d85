package leadline.lake;

import java.io.Serializable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The newest identifier of each vessel that was renamed.
 *
 * @param newest by every former identifier
 */
record VesselNames(Map<String, String> newest) implements Serializable {

  VesselNames {
    newest = new HashMap<>(newest);
  }

  /** Follows renamings, the oldest first: a later one of the newest identifier renames them all. */
  static VesselNames after(List<Map<String, String>> renamings) {
    Map<String, String> newest = new HashMap<>();
    for (Map<String, String> renaming : renamings) {
      newest.replaceAll((former, now) -> renaming.getOrDefault(now, now));
      newest.putAll(renaming);
      newest.keySet().removeAll(renaming.values());
    }
    return new VesselNames(newest);
  }

  String newest(String vessel) {
    return newest.getOrDefault(vessel, vessel);
  }
}
