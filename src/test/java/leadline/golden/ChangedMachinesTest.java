package leadline.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leadline.settings.Step;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two engines of two cylinders with one injector each, new on the first day of 2020, that ran ten
 * hours a day: 10,950 h by the end of 2022. On the first day of 2023 that of {@code sandlark} was
 * re-rated, and ran 7,310 h more until the end of 2024; in {@code stintbird} a new one was put in,
 * whose counter showed 5 h that night and 7,305 h then. A later export of the register says so.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ChangedMachinesTest {

  private Path tables;

  @BeforeAll
  void publish(@TempDir Path folder) throws IOException {
    Path before = Files.createDirectories(folder.resolve("before"));
    Files.writeString(
        before.resolve("machines.csv"),
        """
        vessel,machine,kind,model,cylinders,places_per_cylinder,in_service_on
        sandlark,me,main-engine,HK-50,2,1,2020-01-01
        stintbird,me,main-engine,HK-50,2,1,2020-01-01
        """);
    Files.writeString(
        before.resolve("hours.csv"),
        """
        vessel,machine,read_at,hours,kind
        sandlark,me,2020-01-01,0,counter
        sandlark,me,2022-12-31,10950,counter
        stintbird,me,2020-01-01,0,counter
        stintbird,me,2022-12-31,10950,counter
        """);
    Files.writeString(
        before.resolve("overhauls.csv"),
        """
        vessel,overhaul,machine,component,unit,place,done_on,reason
        sandlark,L1,me,fuel-injector,1,1,2021-06-30,breakdown
        stintbird,T1,me,fuel-injector,1,1,2021-06-30,breakdown
        """);
    Path after = Files.createDirectories(folder.resolve("after"));
    Files.writeString(
        after.resolve("machines.csv"),
        """
        vessel,machine,kind,model,cylinders,places_per_cylinder,in_service_on,valid_from
        sandlark,me,main-engine,HK-50R,2,1,2020-01-01,2023-01-01
        stintbird,me,main-engine,HK-60,2,1,2023-01-01,2023-01-01
        """);
    Files.writeString(
        after.resolve("hours.csv"),
        """
        vessel,machine,read_at,hours,kind
        sandlark,me,2024-12-31,18260,counter
        stintbird,me,2023-01-01,5,counter
        stintbird,me,2024-12-31,7305,counter
        """);
    Files.writeString(
        after.resolve("overhauls.csv"),
        """
        vessel,overhaul,machine,component,unit,place,done_on,reason
        sandlark,L2,me,fuel-injector,1,1,2024-03-31,breakdown
        """);
    Path out = folder.resolve("out");
    new Pipeline(folder.resolve("lake"))
        .run(
            new Step.Ingest(before),
            new Step.Ingest(after),
            new Step.Compute(GoldenFleet.MONTH, Optional.empty()),
            new Step.Publish(GoldenFleet.MONTH, out, new Step.RunChoice.Newest()));
    tables = out.resolve(GoldenFleet.MONTH.toString()).resolve("tables");
  }

  /**
   * Two injectors on each engine: both engines until 2023 make 2 x 2 x 10,950 h with a breakdown
   * each, the re-rated one after it 2 x 7,310 h with one, the new one 2 x 7,300 h with none.
   */
  @Test
  void hoursAndBreakdownsCountForTheModelThatTheMachineThenWas() {
    assertEquals(
        List.of("HK-50: 2 in 43800.0 h", "HK-50R: 1 in 14620.0 h", "HK-60: 0 in 14600.0 h"),
        rows("component_rates")
            .filter(row -> row.get("endpoint").equals("breakdown"))
            .filter(row -> row.get("component").equals("fuel-injector"))
            .filter(row -> row.get("window").equals("since-start"))
            .filter(row -> row.get("level").equals("model"))
            .map(
                row ->
                    row.get("stratum")
                        + ": "
                        + row.get("events")
                        + " in "
                        + Double.parseDouble(row.get("exposure_h"))
                        + " h")
            .toList());
  }

  /**
   * Injector 1 of the re-rated engine ran 275 days since its overhaul, injector 2 since it was new
   * in 2020; those of the new engine 7,300 h since it was new in 2023.
   */
  @Test
  void whatIsDueIsCountedOnThePresentMachine() {
    assertEquals(
        List.of(
            "sandlark HK-50R 1 overhaul 2750.0",
            "sandlark HK-50R 2 new 18260.0",
            "stintbird HK-60 1 new 7300.0",
            "stintbird HK-60 2 new 7300.0"),
        rows("due_list")
            .filter(row -> row.get("component").equals("fuel-injector"))
            .map(
                row ->
                    Stream.of("vessel", "model", "unit", "since")
                            .map(row::get)
                            .reduce("", (line, cell) -> (line + " " + cell).trim())
                        + " "
                        + Double.parseDouble(row.get("hours_since_overhaul_h")))
            .sorted()
            .toList());
  }

  @Test
  void aMachineThatReplacedAnotherIsNotCountedBesideIt() {
    assertEquals(
        List.of("sandlark 1", "stintbird 1"),
        rows("fleet_month").map(row -> row.get("vessel") + " " + row.get("machines")).toList());
  }

  /** The registers, the hours and the overhauls contradict each other nowhere. */
  @Test
  void nothingIsAskedOfTheShip() {
    assertEquals(
        List.of(),
        rows("vessel_queries")
            .map(row -> row.get("kind"))
            .filter(kind -> !kind.equals("long-past-interval"))
            .toList());
  }

  private Stream<Map<String, String>> rows(String table) {
    return Expected.read(tables.resolve(table + ".csv")).stream();
  }
}
