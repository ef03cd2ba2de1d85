package leadline.page;

import java.util.List;

/**
 * What an engineer takes to the workshop, ready for its template.
 *
 * @param cautions before all else, like the points
 */
public record Briefing(
    String title,
    List<Page.Fact> facts,
    String authority,
    List<String> cautions,
    List<String> workshopPoints,
    List<Kit> kits,
    List<Card> cards,
    List<Question> questions,
    List<String> reading) {

  private static final int FEW_LINES = 40;

  private static final int ON_TWO_SHEETS = 4;
  private static final int ON_A_SHEET = 3;

  public Briefing {
    facts = List.copyOf(facts);
    cautions = List.copyOf(cautions);
    workshopPoints = List.copyOf(workshopPoints);
    kits = List.copyOf(kits);
    cards = List.copyOf(cards);
    questions = List.copyOf(questions);
    reading = List.copyOf(reading);
  }

  /** The class of the style sheet: few parts leave more room to write. */
  public String style() {
    return cards.stream().mapToInt(card -> card.parts().size()).sum() <= FEW_LINES
        ? "briefing roomy"
        : "briefing";
  }

  /**
   * The most sheets of A4 that it prints on: two, and one more for each three further positions.
   */
  public int mostSheets() {
    int further = Math.max(0, cards.size() - ON_TWO_SHEETS);
    return 2 + (further + ON_A_SHEET - 1) / ON_A_SHEET;
  }

  /** What the fleet found of a component's parts, and what to have ready of them. */
  public record Kit(String component, long positions, List<KitLine> lines) {
    public Kit {
      lines = List.copyOf(lines);
    }
  }

  public record KitLine(String part, String fleet, String pieces, String rule) {}

  /** A position to be overhauled. */
  public record Card(String position, List<Page.Fact> facts, List<PartLine> parts) {
    public Card {
      facts = List.copyOf(facts);
      parts = List.copyOf(parts);
    }
  }

  /** A part with its boxes. */
  public record PartLine(String part, Cell age, String last, String laps, String chance) {}

  public record Question(String query, String record, String question) {}
}
