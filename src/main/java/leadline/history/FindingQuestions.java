package leadline.history;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Action;
import leadline.fleet.Component;
import leadline.fleet.Finding;
import leadline.fleet.FoundWord;
import leadline.fleet.OverhaulId;
import leadline.fleet.Part;
import leadline.history.FindingProblem.BrokenAndKept;
import leadline.history.FindingProblem.FailedAndUntouched;
import leadline.history.FindingProblem.FoundWithoutOpened;
import leadline.history.FindingProblem.PartMissing;
import leadline.history.FindingProblem.PartNotOfComponent;
import leadline.origin.Origin;

/** Asks the ship about findings that leave open what happened. */
final class FindingQuestions {

  private static final Set<Action> CURES =
      EnumSet.of(Action.CLEANED, Action.LAPPED, Action.ADJUSTED);

  /** What no cleaning, lapping or adjusting mends. */
  private static final Set<FoundWord> BEYOND_CURE = EnumSet.of(FoundWord.BROKEN, FoundWord.CRACKED);

  private FindingQuestions() {}

  static List<FindingProblem> about(PlacedVisit visit, FindingsByOverhaul findings) {
    OverhaulId overhaul = visit.overhaul().id();
    Component component = visit.component();
    List<FindingProblem> questions = new ArrayList<>();
    for (Finding finding : findings.of(overhaul)) {
      if (component.part(finding.part()).isEmpty()) {
        questions.add(
            new PartNotOfComponent(overhaul, finding.part(), component.name(), finding.origin()));
      }
    }
    for (Part part : component.parts()) {
      about(overhaul, findings.of(overhaul, part)).ifPresent(questions::add);
    }
    return questions;
  }

  private static Optional<FindingProblem> about(OverhaulId overhaul, PartFinding finding) {
    if (finding.found().isEmpty()) {
      return Optional.empty();
    }
    String part = finding.part().name();
    Origin origin = finding.origin();
    if (finding.isFailed()) {
      return aboutFailed(overhaul, finding);
    }
    if (finding.inspection() instanceof Inspection.Opened opened) {
      return opened.verdict() == Condition.MISSING
          ? Optional.of(new PartMissing(overhaul, part, origin))
          : Optional.empty();
    }
    return Optional.of(new FoundWithoutOpened(overhaul, part, finding.found(), origin));
  }

  private static Optional<FindingProblem> aboutFailed(OverhaulId overhaul, PartFinding failed) {
    String part = failed.part().name();
    if (failed.isRenewed()) {
      return Optional.empty();
    }
    if (failed.found().stream().anyMatch(BEYOND_CURE::contains)) {
      return Optional.of(new BrokenAndKept(overhaul, part, failed.found(), failed.origin()));
    }
    return failed.actions().stream().anyMatch(CURES::contains)
        ? Optional.empty()
        : Optional.of(new FailedAndUntouched(overhaul, part, failed.found(), failed.origin()));
  }
}
