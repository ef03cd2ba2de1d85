package leadline.page;

import java.util.List;
import java.util.stream.Stream;
import leadline.fleet.Component;

/** What an engineer writes below a position's parts. */
final class Blanks {

  private static final List<Briefing.Blank> OF_THE_TEST =
      List.of(
          new Briefing.Blank("Opening pressure as found", "bar", "blank"),
          new Briefing.Blank("as left", "bar", "blank"),
          new Briefing.Blank("test passed", "", "blank"));

  private static final List<Briefing.Blank> OF_ALL =
      List.of(
          new Briefing.Blank("Item fitted", "", "blank wide-blank"),
          new Briefing.Blank("date", "", "blank"),
          new Briefing.Blank("signed", "", "blank wide-blank"));

  private Blanks() {}

  static List<Briefing.Blank> of(Component component) {
    return isTested(component)
        ? Stream.of(OF_THE_TEST, OF_ALL).flatMap(List::stream).toList()
        : OF_ALL;
  }

  /** Whether it goes onto the test stand: a test proves a part of it. */
  static boolean isTested(Component component) {
    return component.parts().stream().anyMatch(part -> !part.provenBy().isEmpty());
  }
}
