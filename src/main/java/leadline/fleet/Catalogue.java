package leadline.fleet;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The components and parts that the program knows, in the order in which they are reported. */
public record Catalogue(List<Component> components) implements Serializable {

  public Catalogue {
    components = List.copyOf(components);
  }

  public Optional<Component> component(String name) {
    return components.stream().filter(component -> component.name().equals(name)).findFirst();
  }

  public Set<String> componentNames() {
    return components.stream().map(Component::name).collect(Collectors.toUnmodifiableSet());
  }

  /** The names of all parts of all components. */
  public Set<String> partNames() {
    return components.stream()
        .flatMap(component -> component.parts().stream())
        .map(Part::name)
        .collect(Collectors.toUnmodifiableSet());
  }
}
