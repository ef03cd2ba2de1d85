package leadline.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import leadline.fleet.Item;
import leadline.fleet.MachineId;
import leadline.fleet.Overhaul;
import leadline.fleet.OverhaulId;
import leadline.fleet.Position;
import leadline.origin.Origin;
import leadline.quantity.RunningHours;

/** A contradiction between overhauls in what they say of an item. */
public sealed interface ItemProblem extends OverhaulProblem {

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
      implements ItemProblem {

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
    public String question() {
      return "Which item came out in overhaul %s?".formatted(overhaul.overhaul());
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
      implements ItemProblem {
    @Override
    public String question() {
      return "When did %s come out before it was fitted again?".formatted(item.label());
    }

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
      implements ItemProblem {
    @Override
    public String question() {
      return "At which of the two positions was %s?".formatted(item.label());
    }

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
      implements ItemProblem {

    static OverhauledWhileFitted of(Overhaul overhaul, Stint meanwhile) {
      return new OverhauledWhileFitted(
          overhaul.id(),
          meanwhile.item(),
          overhaul.removedOn(),
          meanwhile.inWords(),
          overhaul.origin());
    }

    @Override
    public String question() {
      return "Which item did overhaul %s overhaul, and when?".formatted(overhaul.overhaul());
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
      implements ItemProblem {

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
    public String question() {
      return "Where is %s?".formatted(item.label());
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
}
