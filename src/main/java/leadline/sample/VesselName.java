package leadline.sample;

import java.util.List;
import java.util.Locale;

/** An invented name, two words in one. */
record VesselName(String identifier) {

  private static final List<String> FIRST =
      List.of(
          "amber", "bramble", "briar", "cinder", "copper", "fennel", "flint", "furze", "hazel",
          "kelp", "lichen", "mallow", "marl", "nettle", "quartz", "sedge", "shingle", "sorrel",
          "teasel", "thistle", "umber", "willow", "yarrow");

  private static final List<String> SECOND =
      List.of(
          "auk",
          "avocet",
          "bittern",
          "bunting",
          "curlew",
          "dotterel",
          "dunlin",
          "fulmar",
          "gannet",
          "godwit",
          "heron",
          "knot",
          "lapwing",
          "merlin",
          "petrel",
          "phalarope",
          "pipit",
          "plover",
          "sanderling",
          "scaup",
          "shearwater",
          "skua",
          "smew",
          "turnstone",
          "wagtail",
          "wheatear",
          "whimbrel",
          "wigeon",
          "wren");

  private static final int NAMES = FIRST.size() * SECOND.size();

  /** Steps through all names; prime to the lengths of both lists. */
  private static final int STEP = 100;

  /**
   * The name of a vessel, of which no other vessel of the fleet bears the same.
   *
   * @param number from 1
   */
  static VesselName of(int number, Draw draw) {
    int at = (draw.branch("names").below(NAMES) + (number - 1) % NAMES * STEP) % NAMES;
    String name = FIRST.get(at % FIRST.size()) + SECOND.get(at / FIRST.size());
    int round = (number - 1) / NAMES + 1;
    return new VesselName(round == 1 ? name : name + "-" + round);
  }

  String inFull() {
    return identifier.substring(0, 1).toUpperCase(Locale.ROOT) + identifier.substring(1);
  }
}
