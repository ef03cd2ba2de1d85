package leadline.history;

import java.time.Instant;
import java.util.Optional;
import leadline.fleet.Action;
import leadline.history.PartStanding.LastFinding;
import leadline.quantity.RunningHours;

/**
 * What visits wrote of a part in an item since it came into sight.
 *
 * @param from when the piece now fitted was renewed, or came into sight
 * @param laps of that piece
 */
record PartNotes(Instant from, int laps, Optional<LastFinding> last) {

  static PartNotes from(Instant inSight) {
    return new PartNotes(inSight, 0, Optional.empty());
  }

  PartNotes and(PlacedVisit visit, PartFinding finding) {
    if (finding.rows().isEmpty()) {
      return this;
    }
    Optional<LastFinding> written =
        Optional.of(
            new LastFinding(
                finding.overhaul(),
                visit.removedAt(),
                finding.inspection(),
                finding.found(),
                finding.actions()));
    if (finding.isRenewed()) {
      return new PartNotes(visit.removedAt(), 0, written);
    }
    int lapped = finding.actions().contains(Action.LAPPED) ? 1 : 0;
    return new PartNotes(from, laps + lapped, written);
  }

  PartStanding standing(PartLedger ledger, RunningHours now) {
    return new PartStanding(
        ledger.part(),
        ledger.age().at(now),
        from,
        now.minus(ledger.seenFrom()),
        ledger.workedAt(),
        ledger.isKeptFailed(),
        laps,
        last);
  }
}
