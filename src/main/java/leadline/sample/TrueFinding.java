package leadline.sample;

import java.util.Optional;
import java.util.Set;
import leadline.fleet.Action;
import leadline.fleet.FoundWord;
import leadline.fleet.Part;
import leadline.fleet.Revealed;
import leadline.quantity.RunningHours;
import leadline.sample.PartModel.Change;
import leadline.sample.TrueLife.End;

/**
 * What an overhaul really saw of a part and did to it.
 *
 * @param changes the dated changes that touch the part
 * @param age of the part that came out
 * @param found none where the part was left shut
 * @param ended why the part's life ended, if it did
 */
record TrueFinding(
    Part part,
    Set<Change> changes,
    RunningHours age,
    Optional<FoundWord> found,
    Action action,
    Optional<Revealed> revealed,
    Optional<End> ended) {}
