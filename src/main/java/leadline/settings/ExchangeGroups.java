package leadline.settings;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leadline.fleet.ItemExchange;

/** The groups of vessels that exchange items. */
record ExchangeGroups(Setting groups) {

  /** The exchange; a vessel in two groups is an error. */
  ItemExchange read() {
    Set<String> named = new HashSet<>();
    return ItemExchange.among(groups.items().stream().map(group -> vessels(group, named)).toList());
  }

  private static List<String> vessels(Setting group, Set<String> named) {
    List<String> vessels = group.items().stream().flatMap(item -> item.text().stream()).toList();
    for (Setting item : group.items()) {
      item.text()
          .filter(vessel -> !named.add(vessel))
          .ifPresent(
              vessel ->
                  item.error(
                      "the vessel `%s` is in a group already; a vessel is allowed in one"
                          .formatted(vessel)));
    }
    return vessels;
  }
}
