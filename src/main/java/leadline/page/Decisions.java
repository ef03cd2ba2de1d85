package leadline.page;

import java.util.List;
import leadline.fleet.Catalogue;

/** What needs a decision this month, by all rules. */
final class Decisions {

  static final String HEADING = "What needs a decision this month";
  static final String NONE = "No rule found anything in the tables that needs a decision.";

  private static final List<Decision> RULES =
      List.of(
          new OverduePositions(),
          new BreakdownsOfTheMonth(),
          new BrokenSprings(),
          new RefusedFigures(),
          new PoorReports());

  private Decisions() {}

  /** Of one rule. */
  record Asked(String heading, List<Block.Point> points) {}

  /** Of the rules that found something, in their order. */
  static List<Asked> of(Tables tables, Catalogue catalogue) {
    return RULES.stream()
        .map(rule -> new Asked(rule.heading(), rule.points(tables, catalogue)))
        .filter(asked -> !asked.points().isEmpty())
        .toList();
  }
}
