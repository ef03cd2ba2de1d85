package leadline.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadline.fleet.Action;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.Renewal;
import leadline.fleet.Revealed;
import leadline.quantity.RunningHours;
import leadline.sample.PartModel.Access;
import leadline.sample.TrueLife.End;

/**
 * Overhauls one item: opens what the vessel opens, judges part by part, renews, and now and then
 * does harm. Renewal on condition looks at age and not at what the part was yet to live, so that it
 * says nothing of the failure it forestalls.
 */
final class Workshop {

  private static final double STEEPNESS = 6;

  /** Wear at the end of the next interval at which half are renewed. */
  private static final double FIT_HALF_RENEWED = 1.0;

  /** Ships forestall what would stop the engine. */
  private static final double SHOWING_FIT_HALF_RENEWED = .7;

  /** A spring hardly shows its wear. */
  private static final double SPRING_HALF_RENEWED = 1.8;

  private static final double SEEN_BEYOND_LIMIT = .85;
  private static final double KEPT_BEYOND_LIMIT = .10;
  private static final double ROUTINE_BEYOND_LIMIT = .30;
  private static final double FIT_LAPPED = .30;
  private static final double HOURS_TO_HARM = 300;

  private final Component component;
  private final VesselCharacter vessel;
  private final Practice practice;
  private final PieceStore store;
  private final Draw draw;

  Workshop(
      Component component, VesselCharacter vessel, Practice practice, PieceStore store, Draw draw) {
    this.component = component;
    this.vessel = vessel;
    this.practice = practice;
    this.store = store;
    this.draw = draw;
  }

  /** What each part was found like and what was done; the item's pieces are still the old ones. */
  List<TrueFinding> inspect(Item item) {
    boolean opens = opensWhatCanBeLeftShut(item);
    List<TrueFinding> findings = new ArrayList<>(item.size());
    for (int index = 0; index < item.size(); index++) {
      Piece piece = item.piece(index);
      boolean open = opens || piece.model().access() == Access.DISMANTLED;
      findings.add(open ? judged(piece) : leftShut(piece));
    }
    return findings;
  }

  /** Puts in what was renewed. */
  void assemble(Item item, List<TrueFinding> findings, int day) {
    for (int index = 0; index < item.size(); index++) {
      if (findings.get(index).ended().isPresent()) {
        item.renew(index, store.piece(component, item.piece(index).part(), day));
      }
    }
    if (draw.chance(practice.workmanship())) {
      harm(item);
    }
  }

  private void harm(Item item) {
    List<Piece> exposed =
        item.pieces().filter(piece -> piece.part().failureShows() == FailureShows.ALWAYS).toList();
    if (!exposed.isEmpty()) {
      draw.oneOf(exposed).harm(HOURS_TO_HARM * draw.exponential());
    }
  }

  private boolean opensWhatCanBeLeftShut(Item item) {
    List<Piece> shut =
        item.pieces().filter(piece -> piece.model().access() == Access.BY_HABIT).toList();
    boolean failed = shut.stream().anyMatch(Piece::hasFailed);
    double wear = shut.stream().mapToDouble(Piece::wear).max().orElse(0);
    boolean habit = draw.chance(vessel.openingHabit().chance(failed, wear));
    return habit || shut.stream().anyMatch(Piece::isFailureSeenInService);
  }

  private TrueFinding leftShut(Piece piece) {
    return draw.chance(practice.unopenedRenewal())
        ? finding(piece, Optional.empty(), Action.RENEWED, Optional.of(End.RENEWED_UNOPENED))
        : finding(piece, Optional.empty(), Action.NONE, Optional.empty());
  }

  private TrueFinding judged(Piece piece) {
    Part part = piece.part();
    if (piece.hasFailed()) {
      return finding(
          piece,
          Optional.of(oneOf(part.failed())),
          Action.RENEWED,
          Optional.of(piece.isFailureSeenInService() ? End.FAILED_IN_SERVICE : End.FOUND_FAILED));
    } else if (part.renewal() == Renewal.ROUTINE) {
      return renewed(piece, condition(part, ROUTINE_BEYOND_LIMIT), End.RENEWED);
    } else if (draw.chance(renewalChance(piece))) {
      FoundWord condition = condition(part, SEEN_BEYOND_LIMIT);
      return renewed(piece, condition, condition == FoundWord.SOUND ? End.RENEWED : End.REJECTED);
    }
    return finding(
        piece, Optional.of(condition(part, KEPT_BEYOND_LIMIT)), care(part), Optional.empty());
  }

  private static TrueFinding renewed(Piece piece, FoundWord condition, End end) {
    return finding(piece, Optional.of(condition), Action.RENEWED, Optional.of(end));
  }

  /** Logistic in the wear that the part will have at the end of the next interval. */
  private double renewalChance(Piece piece) {
    double wearNext = piece.wear() + component.interval().hours() / piece.model().scale();
    double logit = STEEPNESS * (wearNext - halfRenewed(piece.part())) + vessel.renewalLeaning();
    return 1 / (1 + StrictMath.exp(-logit));
  }

  private static double halfRenewed(Part part) {
    if (part.isSpring()) {
      return SPRING_HALF_RENEWED;
    }
    return part.failureShows() == FailureShows.ALWAYS ? SHOWING_FIT_HALF_RENEWED : FIT_HALF_RENEWED;
  }

  private FoundWord condition(Part part, double beyondLimit) {
    return draw.chance(beyondLimit) && !part.beyondLimit().isEmpty()
        ? oneOf(part.beyondLimit())
        : FoundWord.SOUND;
  }

  private Action care(Part part) {
    if (part.isSpring()) {
      return Action.NONE;
    }
    return draw.chance(FIT_LAPPED) ? Action.LAPPED : Action.CLEANED;
  }

  private FoundWord oneOf(Set<FoundWord> words) {
    return draw.oneOf(words.stream().sorted().toList());
  }

  private static TrueFinding finding(
      Piece piece, Optional<FoundWord> found, Action action, Optional<End> ended) {
    return new TrueFinding(
        piece.part(),
        piece.model().changes(),
        RunningHours.ofTenths(piece.age()),
        found,
        action,
        piece
            .failure()
            .filter(failure -> found.isPresent())
            .map(
                failure ->
                    piece.isFailureSeenInService() ? Revealed.IN_SERVICE : Revealed.AT_OPENING),
        ended);
  }
}
