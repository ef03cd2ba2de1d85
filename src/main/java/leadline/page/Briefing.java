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
    List<String> reading,
    List<Page.Link> links) {

  private static final int BESIDE_PARTS = 5;
  private static final int FEW_LINES = 47;
  private static final int SOME_LINES = 80;
  private static final int ON_TWO_SHEETS = 6;
  private static final int ON_A_SHEET = 3;
  private static final int MOST_QUESTIONS = 8;
  private static final int LEAST_QUESTIONS = 2;
  private static final int QUESTIONS_A_CARD = 2;

  public Briefing {
    facts = List.copyOf(facts);
    cautions = List.copyOf(cautions);
    workshopPoints = List.copyOf(workshopPoints);
    kits = List.copyOf(kits);
    cards = List.copyOf(cards);
    questions = List.copyOf(questions);
    reading = List.copyOf(reading);
    links = List.copyOf(links);
  }

  /** The classes of the style sheet: the fewer the lines, the larger the letters and boxes. */
  public String style() {
    int lines =
        cards.stream().mapToInt(card -> card.parts().size() + BESIDE_PARTS).sum()
            + kits.stream().mapToInt(kit -> kit.lines().size() + BESIDE_PARTS).sum();
    if (lines <= FEW_LINES) {
      return "briefing roomy";
    }
    return lines > SOME_LINES && cards.size() <= ON_TWO_SHEETS ? "briefing dense" : "briefing";
  }

  /**
   * The most sheets of A4 that it prints on: two for up to six positions; else one, and one for
   * each three positions but the first.
   */
  public int mostSheets() {
    return cards.size() <= ON_TWO_SHEETS ? 2 : 1 + (cards.size() - 1 + ON_A_SHEET - 1) / ON_A_SHEET;
  }

  /** Those that there is room for; the return sheet has all. */
  public List<Question> questionsShown() {
    int room = Math.max(LEAST_QUESTIONS, MOST_QUESTIONS - QUESTIONS_A_CARD * (cards.size() - 1));
    return questions.subList(0, Math.min(questions.size(), room));
  }

  /** How many more the return sheet has; empty for none. */
  public String questionsLeftOut() {
    int left = questions.size() - questionsShown().size();
    return left == 0 ? "" : left + " more on the return sheet.";
  }

  /** What the fleet found of a component's parts, and what to have ready of them. */
  public record Kit(String component, long positions, List<KitLine> lines) {
    public Kit {
      lines = List.copyOf(lines);
    }
  }

  public record KitLine(String part, String fleet, String pieces, String rule) {}

  /** A position to be overhauled. */
  public record Card(
      String position, List<Page.Fact> facts, List<PartLine> parts, List<Blank> blanks) {
    public Card {
      blanks = List.copyOf(blanks);
      facts = List.copyOf(facts);
      parts = List.copyOf(parts);
    }
  }

  /** A part with its boxes. */
  public record PartLine(String part, Cell age, String last, String laps, String chance) {}

  /**
   * To be filled in by hand.
   *
   * @param unit behind it; empty for none
   * @param style {@code blank}, or {@code blank wide-blank} for words
   */
  public record Blank(String name, String unit, String style) {}

  public record Question(String query, String record, String question) {}
}
