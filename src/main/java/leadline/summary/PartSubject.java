package leadline.summary;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.MachineEntry;
import leadline.fleet.Part;

/** A part of a component, as counted in a window. */
record PartSubject(Component component, Part part, Window window) implements Serializable {

  /** Every part in every window, by component and part in the catalogue's order. */
  static List<PartSubject> each(Catalogue catalogue) {
    return catalogue.components().stream().flatMap(PartSubject::each).toList();
  }

  boolean isOn(MachineEntry machine) {
    return machine.carries(component);
  }

  private static Stream<PartSubject> each(Component component) {
    return component.parts().stream()
        .flatMap(
            part ->
                Stream.of(Window.values()).map(window -> new PartSubject(component, part, window)));
  }
}
