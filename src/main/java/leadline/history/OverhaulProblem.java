package leadline.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.history.HourSeries.Bounded;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/** A contradiction between an overhaul and the other records of the vessel. */
public sealed interface OverhaulProblem extends Problem
    permits ItemProblem,
        OverhaulProblem.OverhaulOutsideHours,
        OverhaulProblem.HoursDisagree,
        OverhaulProblem.PositionUnknown,
        OverhaulProblem.ComponentNotOnMachine,
        OverhaulProblem.FittedBeforeRemoved {

  OverhaulId overhaul();

  @Override
  default String vessel() {
    return overhaul().vessel();
  }

  @Override
  default String record() {
    return overhaul().overhaul();
  }

  /**
   * An overhaul outside the stretch in which its machine was observed. It counts nowhere.
   *
   * @param known the stretch in which the machine was observed, in words
   */
  record OverhaulOutsideHours(OverhaulId overhaul, LocalDate removedOn, String known, Origin origin)
      implements OverhaulProblem {

    static OverhaulOutsideHours of(Overhaul overhaul, Optional<Period> observed) {
      return new OverhaulOutsideHours(
          overhaul.id(),
          overhaul.removedOn(),
          observed
              .map(
                  stretch ->
                      "only from %s to %s"
                          .formatted(
                              Days.asWritten(stretch.start()), Days.asWritten(stretch.end())))
              .orElse("for no stretch of time"),
          overhaul.origin());
    }

    @Override
    public String question() {
      return "What were the machine's hours about %s?".formatted(removedOn);
    }

    @Override
    public String evidence() {
      return "The overhaul of %s is not counted: the machine's hours and overhauls are known %s."
          .formatted(removedOn, known);
    }

    @Override
    public String request() {
      return "Send the machine's hours around that day, or the right date.";
    }
  }

  /**
   * The machine hours of an overhaul against the machine's series, which is used instead.
   *
   * @param following later overhauls whose hours differ by the same, in time: one question for all
   */
  record HoursDisagree(
      OverhaulId overhaul,
      LocalDate removedOn,
      RunningHours written,
      Bounded series,
      List<OverhaulId> following,
      Origin origin)
      implements OverhaulProblem {

    public HoursDisagree {
      following = List.copyOf(following);
    }

    @Override
    public String question() {
      return following.isEmpty()
          ? "On which day, and at what machine hours, was overhaul %s?"
              .formatted(overhaul.overhaul())
          : "Which is right from %s on: the machine's log, or the hours that its overhauls state?"
              .formatted(removedOn);
    }

    @Override
    public String evidence() {
      String disagrees =
          ("The overhaul's %s machine hours are %s h %s the %s h that the machine's log gives"
                  + " for that day (between %s and %s), which are used.")
              .formatted(
                  written,
                  written.differenceTo(series.hours()),
                  written.isAbove(series.hours()) ? "above" : "below",
                  series.hours(),
                  series.lower(),
                  series.upper());
      return following.isEmpty()
          ? disagrees
          : disagrees
              + " From %s on the same difference stands between log and overhauls; it is in %d more, up to %s."
                  .formatted(
                      removedOn, following.size(), following.get(following.size() - 1).overhaul());
    }

    @Override
    public String request() {
      return following.isEmpty()
          ? "Send the hours or the date as the sheet has them."
          : "Send the hours that the log lacks, or has twice, before that day or, if the log is right,"
              + " the hours of these overhauls.";
    }
  }

  /** An overhaul of an unknown position: it counts, but no item's hours or parts follow from it. */
  record PositionUnknown(
      OverhaulId overhaul, String component, String named, String possible, Origin origin)
      implements OverhaulProblem {

    static PositionUnknown of(Overhaul overhaul, MachineEntry machine) {
      return new PositionUnknown(
          overhaul.id(),
          overhaul.component(),
          "unit %s and place %s".formatted(orEmpty(overhaul.unit()), orEmpty(overhaul.place())),
          "%d cylinders with %d places each"
              .formatted(machine.cylinders(), machine.placesPerCylinder()),
          overhaul.origin());
    }

    private static String orEmpty(Optional<Integer> number) {
      return number.map(String::valueOf).orElse("(empty)");
    }

    @Override
    public String question() {
      return "Of which unit and place was overhaul %s?".formatted(overhaul.overhaul());
    }

    @Override
    public String evidence() {
      return "The overhaul of a %s names %s of a machine with %s."
          .formatted(component, named, possible);
    }

    @Override
    public String request() {
      return "Send the unit and place.";
    }
  }

  /** An overhaul of a component that its machine does not carry. It counts nowhere. */
  record ComponentNotOnMachine(
      OverhaulId overhaul, String component, MachineId machine, String machineKind, Origin origin)
      implements OverhaulProblem {
    @Override
    public String question() {
      return "Of what was overhaul %s, and on which machine?".formatted(overhaul.overhaul());
    }

    @Override
    public String evidence() {
      return "The overhaul is of a %s on %s, but the catalogue has none on a %s."
          .formatted(component, machine.machine(), machineKind);
    }

    @Override
    public String request() {
      return "Send the right machine or component.";
    }
  }

  /** An item fitted before the one in its place came out. It counts as fitted at the removal. */
  record FittedBeforeRemoved(
      OverhaulId overhaul, LocalDate removedOn, LocalDate fittedOn, Origin origin)
      implements OverhaulProblem {
    @Override
    public String question() {
      return "On which days was the item taken out, and the next one fitted?";
    }

    @Override
    public String evidence() {
      return "The item is said to be fitted on %s, before the one in its place came out on %s; it"
              .formatted(fittedOn, removedOn)
          + " counts as fitted at the removal.";
    }

    @Override
    public String request() {
      return "Send the overhaul again with the right dates.";
    }
  }
}
