package leadline.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import leadline.fleet.OverhaulId;
import leadline.fleet.StockCount;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;

/** Parts renewed, pieces moved into stock and out of it, and counts of it that do not agree. */
public sealed interface SupplyProblem extends Problem {

  String part();

  /** The last day on which the other record may be dated. */
  LocalDate windowEnd();

  @Override
  default Optional<Instant> dueSince() {
    return Optional.of(Days.endOf(windowEnd()));
  }

  /** One about the finding of a part at an overhaul. */
  sealed interface OfFinding extends SupplyProblem {

    OverhaulId overhaul();

    @Override
    default String vessel() {
      return overhaul().vessel();
    }

    @Override
    default String record() {
      return overhaul().overhaul() + " " + part();
    }
  }

  /**
   * A renewal for which no pieces left the stock.
   *
   * @param pieces that were fitted and are not accounted for
   */
  record RenewalWithoutMovement(
      OverhaulId overhaul, String part, long pieces, LocalDate windowEnd, Origin origin)
      implements OfFinding {
    @Override
    public String question() {
      return "Was part %s renewed, and out of which stock?".formatted(part);
    }

    @Override
    public String evidence() {
      return "Part %s is said to be renewed, but no movement out of stock by %s accounts for %d of the pieces."
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
      return "Where was part %s fitted that left the stock?".formatted(part);
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
      implements OfFinding {

    public QuantitiesDisagree {
      origins = List.copyOf(origins);
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

  /**
   * A count that the one before and the movements between do not lead to.
   *
   * @param cameIn pieces booked into stock from the day of the one count to that of the other
   * @param left pieces booked out of it
   * @param least that should have been counted after
   * @param most that should have been
   * @param origins of the counts and the movements
   */
  record StockDoesNotAddUp(
      StockCount before,
      StockCount after,
      long cameIn,
      long left,
      long least,
      long most,
      List<Origin> origins)
      implements SupplyProblem {

    public StockDoesNotAddUp {
      origins = List.copyOf(origins);
    }

    @Override
    public String vessel() {
      return after.vessel();
    }

    @Override
    public String part() {
      return after.part();
    }

    @Override
    public String record() {
      return part() + " " + after.countedOn();
    }

    @Override
    public Origin origin() {
      return after.origin();
    }

    @Override
    public LocalDate windowEnd() {
      return after.countedOn();
    }

    @Override
    public String question() {
      return "Is a movement of the %s missing, or a count wrong?".formatted(part());
    }

    @Override
    public String evidence() {
      return "The count of the %s was %d on %s; from then to %s %s, so that it should be %s, and it was %d."
          .formatted(
              part(),
              before.onHand(),
              before.countedOn(),
              after.countedOn(),
              cameIn + left == 0
                  ? "no movement is on record"
                  : "%d came in and %d left".formatted(cameIn, left),
              least == most ? String.valueOf(least) : least + " to " + most,
              after.onHand());
    }

    @Override
    public String request() {
      return "Send the movement that is missing, or the count again with the right number.";
    }
  }
}
