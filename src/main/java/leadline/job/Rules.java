package leadline.job;

import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Part;
import leadline.origin.FileDigest;
import leadline.quantity.RunningHours;

/** The settings that bear on the figures. */
record Rules(Catalogue catalogue, RunningHours hoursTolerance) implements Serializable {

  /** SHA-256 of the settings in words: equal settings have equal digests, on any machine. */
  String digest() {
    String words =
        "tolerance "
            + hoursTolerance
            + catalogue.components().stream().map(Rules::words).collect(Collectors.joining());
    return FileDigest.of(words.getBytes(StandardCharsets.UTF_8)).hex();
  }

  private static String words(Component component) {
    return "\n"
        + String.join(
            "|",
            component.name(),
            component.per().word(),
            sorted(component.machineKinds()),
            component.interval().toString())
        + limits(component)
        + component.parts().stream().map(Rules::words).collect(Collectors.joining());
  }

  private static String limits(Component component) {
    return Stream.of(
            Stream.of(component.policy()),
            component.hourLimits().stream(),
            component.monthLimits().stream())
        .flatMap(limits -> limits)
        .map(limit -> "|" + limit.by().word() + " " + limit.length() + " " + limit.source())
        .collect(Collectors.joining());
  }

  private static String words(Part part) {
    return "\n "
        + String.join(
            "|",
            part.name(),
            part.shape().word(),
            part.failureShows().word(),
            sorted(part.failed()),
            sorted(part.beyondLimit()),
            sorted(part.provenBy()),
            part.renewal().word(),
            part.clock().word());
  }

  private static String sorted(Collection<?> words) {
    return words.stream().map(Object::toString).sorted().collect(Collectors.joining(","));
  }
}
