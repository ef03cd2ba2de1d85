package leadline.settings;

import java.util.stream.Collectors;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.quantity.RunningHours;

/** The policy intervals with which a job replaces those of the catalogue. */
record PolicyIntervals(Setting byComponent) {

  /** The catalogue with these intervals; a component that it does not have is an error. */
  Catalogue in(Catalogue catalogue) {
    byComponent
        .members()
        .filter(interval -> catalogue.component(interval.name()).isEmpty())
        .forEach(interval -> interval.error(unknown(interval.name(), catalogue)));
    return new Catalogue(catalogue.components().stream().map(this::withInterval).toList());
  }

  private Component withInterval(Component component) {
    return byComponent
        .at(component.name())
        .wholeNumber()
        .map(hours -> component.withInterval(RunningHours.ofHours(hours)))
        .orElse(component);
  }

  private static String unknown(String name, Catalogue catalogue) {
    return "the catalogue has no component `%s`; allowed are %s"
        .formatted(
            name,
            catalogue.components().stream()
                .map(component -> "`" + component.name() + "`")
                .collect(Collectors.joining(", ")));
  }
}
