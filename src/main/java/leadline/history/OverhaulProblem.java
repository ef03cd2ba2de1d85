package leadline.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import leadline.fleet.Item;
import leadline.fleet.MachineEntry;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.fleet.Position;
import leadline.history.HourSeries.Bounded;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.Days;
import leadline.quantity.Period;
import leadline.quantity.RunningHours;

/** A contradiction between an overhaul and the other records of the vessel. */
public sealed interface OverhaulProblem extends Problem {

  OverhaulId overhaul();

  @Override
  default String vessel() {
    return overhaul().vessel();
  }

  @Override
  default String record() {
    return overhaul().overhaul();
  }

  @Override
  default String question() {
    return "What does the sheet of overhaul %s say?".formatted(overhaul().overhaul());
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
    public String evidence() {
      return "The overhaul of %s is not counted: the machine's hours and overhauls are known %s."
          .formatted(removedOn, known);
    }

    @Override
    public String request() {
      return "Send the machine's hours around that day, or the right date.";
    }
  }

  /** The machine hours of an overhaul against the machine's series, which is used instead. */
  record HoursDisagree(OverhaulId overhaul, RunningHours written, Bounded series, Origin origin)
      implements OverhaulProblem {
    @Override
    public String evidence() {
      return ("The overhaul's %s machine hours are %s h %s the %s h that the machine's log gives"
              + " for that day (between %s and %s), which are used.")
          .formatted(
              written,
              written.differenceTo(series.hours()),
              written.isAbove(series.hours()) ? "above" : "below",
              series.hours(),
              series.lower(),
              series.upper());
    }

    @Override
    public String request() {
      return "Send the hours or the date as the sheet has them.";
    }
  }

  /**
   * Another item came out than the one on record there.
   *
   * @param fittedBy the overhaul that fitted the item on record, where one did
   * @param elsewhere where other records have the item that came out, in words
   * @param mistyped each serial of which one character may be mistyped, as a question
   */
  record RemovedNotFitted(
      OverhaulId overhaul,
      Position position,
      Item believed,
      Item removed,
      Optional<String> fittedBy,
      String elsewhere,
      List<String> mistyped,
      Origin origin)
      implements OverhaulProblem {

    public RemovedNotFitted {
      mistyped = List.copyOf(mistyped);
    }

    static RemovedNotFitted of(
        OtherItemOut met, Optional<Stint> other, List<MistypedSerial> mistyped) {
      String removed = met.removed().label();
      return new RemovedNotFitted(
          met.removal().id(),
          met.position(),
          met.believed(),
          met.removed(),
          met.fittedBy().map(fitting -> fitting.id().overhaul()),
          other
              .map(stint -> "%s is on record %s.".formatted(removed, stint.inWords()))
              .orElse("No other record names %s.".formatted(removed)),
          mistyped.stream().map(MistypedSerial::question).toList(),
          met.removal().origin());
    }

    @Override
    public String evidence() {
      return ("%s was removed from %s, where %s is on record as fitted%s. %s Neither's hours there"
              + " are counted.")
          .formatted(
              removed.label(),
              position,
              believed.label(),
              fittedBy.map(fitting -> " by overhaul " + fitting).orElse(""),
              elsewhere);
    }

    @Override
    public String request() {
      return mistyped.isEmpty()
          ? "Send the missing exchange, or the right serial."
          : "One character may be mistyped: %s? Send the right serial, or the missing exchange."
              .formatted(String.join("; or ", mistyped));
    }
  }

  /**
   * An item fitted again, with no removal from where it was fitted before.
   *
   * @param first where it was by which records, in words
   * @param second where else
   */
  record FittedTwice(OverhaulId overhaul, Item item, String first, String second, Origin origin)
      implements OverhaulProblem {
    @Override
    public String evidence() {
      return ("%s was fitted again without having come out: it is on record %s and %s. Its hours"
              + " at neither are counted.")
          .formatted(item.label(), first, second);
    }

    @Override
    public String request() {
      return "Send the missing removal, or the right serial.";
    }
  }

  /**
   * An item that the records have at two positions at once.
   *
   * @param first where it was by which records, in words
   * @param second where else
   */
  record InTwoPlaces(OverhaulId overhaul, Item item, String first, String second, Origin origin)
      implements OverhaulProblem {
    @Override
    public String evidence() {
      return "%s is on record %s and %s at the same time. Its hours at neither are counted."
          .formatted(item.label(), first, second);
    }

    @Override
    public String request() {
      return "Send the right serial or dates.";
    }
  }

  /**
   * An overhaul of an item in a workshop while the item was at work. It counts, but no item's hours
   * or parts follow from it.
   *
   * @param meanwhile where the item was by which records, in words
   */
  record OverhauledWhileFitted(
      OverhaulId overhaul, Item item, LocalDate on, String meanwhile, Origin origin)
      implements OverhaulProblem {

    static OverhauledWhileFitted of(Overhaul overhaul, Stint meanwhile) {
      return new OverhauledWhileFitted(
          overhaul.id(),
          meanwhile.item(),
          overhaul.removedOn(),
          meanwhile.inWords(),
          overhaul.origin());
    }

    @Override
    public String evidence() {
      return ("%s was overhauled at no position on %s, when it is on record %s. What was found is"
              + " counted for no item.")
          .formatted(item.label(), on, meanwhile);
    }

    @Override
    public String request() {
      return "Send the unit and place, the right serial or the right date.";
    }
  }

  /**
   * An item that nobody has named for two policy intervals of its last machine. Its lives ended at
   * its last record, working.
   *
   * @param since hours that its last machine has run since
   */
  record ItemNotSeenSince(
      OverhaulId overhaul,
      Item item,
      String machine,
      LocalDate last,
      RunningHours since,
      RunningHours interval,
      Origin origin)
      implements OverhaulProblem {

    /** Asks where the item is, if its last visit was that long ago. */
    static Optional<ItemNotSeenSince> of(
        Item item, PlacedVisit last, Map<MachineId, MachineLog> machines) {
      MachineLog machine = Objects.requireNonNull(machines.get(last.overhaul().machine()));
      RunningHours since = machine.hoursAt(machine.end()).max(last.hours()).minus(last.hours());
      RunningHours interval = last.component().interval();
      return since.isAbove(interval.plus(interval))
          ? Optional.of(
              new ItemNotSeenSince(
                  last.overhaul().id(),
                  item,
                  machine.entry().id().machine(),
                  last.overhaul().removedOn(),
                  since,
                  interval,
                  last.overhaul().origin()))
          : Optional.empty();
    }

    @Override
    public String evidence() {
      return ("%s was last seen on %s, in this overhaul, and is not on record as fitted again. The"
              + " machine %s has run %s h since, more than two intervals of %s h.")
          .formatted(item.label(), last, machine, since, interval);
    }

    @Override
    public String request() {
      return "Say where it is: spare on board, ashore, or scrapped; or send the missing fitting.";
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
