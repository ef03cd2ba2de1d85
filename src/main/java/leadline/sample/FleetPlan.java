package leadline.sample;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import leadline.fleet.Catalogue;

/**
 * What a fleet is to be like. The number of its vessels is no part of it: a vessel is the same in a
 * fleet of any size.
 *
 * @param catalogue the components that the vessels carry and record
 * @param firstDay first day of the records
 * @param lastDay last day of the records, after the first
 * @param readings the habits of logging hours from which each vessel's is drawn, all as likely
 */
public record FleetPlan(
    Catalogue catalogue,
    LocalDate firstDay,
    LocalDate lastDay,
    List<ReadingHabit> readings,
    Influences influences,
    HabitMix habits,
    Practice practice,
    ErrorRates errors) {

  /** The last day of the usual fleet's records, whenever it is made. */
  private static final LocalDate USUAL_LAST_DAY = LocalDate.of(2024, 12, 31);

  public FleetPlan {
    readings = List.copyOf(readings);
    if (readings.isEmpty() || !firstDay.isBefore(lastDay)) {
      throw new IllegalArgumentException("a fleet has records of some days, and logs its hours");
    }
  }

  /**
   * The usual fleet.
   *
   * @param years of records, at least 1, to the end of 2024
   */
  public static FleetPlan usual(Catalogue catalogue, int years) {
    return new FleetPlan(
        catalogue,
        USUAL_LAST_DAY.plusDays(1).minusYears(years),
        USUAL_LAST_DAY,
        List.of(ReadingHabit.values()),
        Influences.USUAL,
        HabitMix.USUAL,
        Practice.USUAL,
        ErrorRates.usual());
  }

  /** The day from which all vessels burn the new fuel: after a third of the time. */
  public LocalDate fuelChangedOn() {
    return firstDay.plusDays(days() / 3);
  }

  /** The day from which new nozzles are of the new type: after two thirds of the time. */
  public LocalDate nozzleTypeChangedOn() {
    return firstDay.plusDays(2 * days() / 3);
  }

  long days() {
    return ChronoUnit.DAYS.between(firstDay, lastDay) + 1;
  }

  /** The same fleet with the records of some components only. */
  public FleetPlan withComponents(Set<String> names) {
    Catalogue some =
        new Catalogue(
            catalogue.components().stream()
                .filter(component -> names.contains(component.name()))
                .toList());
    return new FleetPlan(some, firstDay, lastDay, readings, influences, habits, practice, errors);
  }

  public FleetPlan withReadings(ReadingHabit... habit) {
    return new FleetPlan(
        catalogue, firstDay, lastDay, List.of(habit), influences, habits, practice, errors);
  }

  public FleetPlan withInfluences(Influences other) {
    return new FleetPlan(catalogue, firstDay, lastDay, readings, other, habits, practice, errors);
  }

  public FleetPlan withHabits(HabitMix other) {
    return new FleetPlan(
        catalogue, firstDay, lastDay, readings, influences, other, practice, errors);
  }

  public FleetPlan withPractice(Practice other) {
    return new FleetPlan(catalogue, firstDay, lastDay, readings, influences, habits, other, errors);
  }

  public FleetPlan withErrors(ErrorRates other) {
    return new FleetPlan(
        catalogue, firstDay, lastDay, readings, influences, habits, practice, other);
  }
}
