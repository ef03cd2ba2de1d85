package leadline.sample;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Writes what the records hide: {@code vessels.csv}, {@code lives.csv} and {@code errors.csv}, in a
 * folder that no inbox holds.
 */
public final class TruthWriter implements FleetWriter {

  private final CsvFile vessels;
  private final CsvFile lives;
  private final CsvFile errors;

  /**
   * @param folder made if it is not there
   */
  public TruthWriter(Path folder) throws IOException {
    Files.createDirectories(folder);
    vessels =
        new CsvFile(
            folder.resolve("vessels.csv"),
            ",",
            List.of(
                "vessel",
                "engine_type",
                "type_factor",
                "vessel_factor",
                "opening_habit",
                "renewal_leaning",
                "care",
                "ages",
                "readings"));
    lives =
        new CsvFile(
            folder.resolve("lives.csv"),
            ",",
            List.of(
                "vessel",
                "machine",
                "component",
                "position",
                "item",
                "part",
                "life",
                "born_on",
                "ended_at_age_h",
                "failed_at_age_h",
                "cause",
                "ended"));
    errors =
        new CsvFile(
            folder.resolve("errors.csv"),
            ",",
            List.of("vessel", "file", "record", "part", "error", "truth"));
  }

  @Override
  public void write(SampleVessel vessel) throws IOException {
    vessels.write(line(vessel.character()));
    for (TrueLife life : vessel.lives()) {
      lives.write(line(life));
    }
    for (PlantedError error : vessel.errors()) {
      errors.write(
          List.of(
              error.vessel(),
              error.file(),
              error.record(),
              error.part(),
              error.kind().word(),
              error.truth()));
    }
  }

  @Override
  public void close() throws IOException {
    vessels.close();
    lives.close();
    errors.close();
  }

  private static List<String> line(VesselCharacter vessel) {
    return List.of(
        vessel.vessel(),
        vessel.engineType().model(),
        decimal(vessel.engineType().hazardFactor(), 4),
        decimal(vessel.hazardFactor(), 4),
        vessel.openingHabit().word(),
        decimal(vessel.renewalLeaning(), 4),
        vessel.care().word(),
        vessel.ages().word(),
        vessel.readings().word());
  }

  private static List<String> line(TrueLife life) {
    Optional<TrueLife.Failure> failure = life.failure();
    return List.of(
        life.machine().vessel(),
        life.machine().machine(),
        life.component(),
        life.position(),
        life.item(),
        life.part(),
        Integer.toString(life.number()),
        life.bornOn().toString(),
        life.endedAt().toString(),
        failure.map(failed -> decimal(failed.age(), 2)).orElse(""),
        failure.map(failed -> failed.cause().word()).orElse(""),
        life.end().word());
  }

  private static String decimal(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }
}
