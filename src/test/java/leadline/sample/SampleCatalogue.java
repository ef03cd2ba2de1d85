package leadline.sample;

import java.nio.file.Path;
import java.util.Set;
import leadline.fleet.Catalogue;
import leadline.settings.CatalogueFile;
import leadline.settings.SharedFolder;

/** The catalogue that the project ships, and plans on it. */
final class SampleCatalogue {

  static final Path HOME = Path.of(System.getProperty("leadline.home", "."));

  private static final SharedFolder SHARED = new SharedFolder(HOME.resolve("shared"));

  static final Catalogue WHOLE = CatalogueFile.read(SHARED.catalogue(), SHARED);

  private SampleCatalogue() {}

  static FleetPlan usual(int years) {
    return FleetPlan.usual(WHOLE, years);
  }

  static FleetPlan clean(int years) {
    return usual(years).withErrors(ErrorRates.NONE);
  }

  static FleetPlan injectors(FleetPlan plan) {
    return plan.withComponents(Set.of("fuel-injector"));
  }
}
