package leadline.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import leadline.fleet.OverhaulId;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;

/** Parts renewed and pieces taken out of stock that do not agree. */
public sealed interface SupplyProblem extends Problem {

  String part();

  /** The last day on which the other record may be dated. */
  LocalDate windowEnd();

  @Override
  default Optional<Instant> dueSince() {
    return Optional.of(Days.endOf(windowEnd()));
  }

  /**
   * A renewal for which no pieces left the stock.
   *
   * @param pieces that were fitted and are not accounted for
   */
  record RenewalWithoutMovement(
      OverhaulId overhaul, String part, long pieces, LocalDate windowEnd, Origin origin)
      implements SupplyProblem {
    @Override
    public String vessel() {
      return overhaul.vessel();
    }

    @Override
    public String record() {
      return overhaul.overhaul() + " " + part;
    }

    @Override
    public String question() {
      return "Was the %s renewed, and out of which stock?".formatted(part);
    }

    @Override
    public String evidence() {
      return "The %s is said to be renewed, but no movement out of stock by %s accounts for %d of the pieces."
          .formatted(part, windowEnd, pieces);
    }

    @Override
    public String request() {
      return "Send the movement out of stock, or the finding again with what was done.";
    }
  }

  /**
   * Pieces that left the stock and were fitted nowhere.
   *
   * @param pieces that left it and are not accounted for
   */
  record MovementWithoutRenewal(
      String vessel,
      String movement,
      String part,
      LocalDate movedOn,
      long pieces,
      LocalDate windowEnd,
      Origin origin)
      implements SupplyProblem {
    @Override
    public String record() {
      return movement + " " + part;
    }

    @Override
    public String question() {
      return "Where was the %s fitted that left the stock?".formatted(part);
    }

    @Override
    public String evidence() {
      return "Of the %s that left the stock on %s, no renewal accounts for %d of the pieces."
          .formatted(part, movedOn, pieces);
    }

    @Override
    public String request() {
      return "Send the finding with the renewal, or the movement that put the pieces back or wrote"
          + " them off.";
    }
  }

  /** A movement that names its overhaul, with another number of pieces than were fitted there. */
  record QuantitiesDisagree(
      OverhaulId overhaul,
      String part,
      long fitted,
      long moved,
      LocalDate windowEnd,
      Origin origin,
      List<Origin> origins)
      implements SupplyProblem {

    public QuantitiesDisagree {
      origins = List.copyOf(origins);
    }

    @Override
    public String vessel() {
      return overhaul.vessel();
    }

    @Override
    public String record() {
      return overhaul.overhaul() + " " + part;
    }

    @Override
    public String question() {
      return "How many pieces of the %s were fitted?".formatted(part);
    }

    @Override
    public String evidence() {
      return "Of the %s %d pieces were fitted and %d left the stock for it."
          .formatted(part, fitted, moved);
    }

    @Override
    public String request() {
      return "Send the finding or the movement again with the right number.";
    }
  }
}
