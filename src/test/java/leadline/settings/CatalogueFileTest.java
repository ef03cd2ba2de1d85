package leadline.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import leadline.fleet.Clock;
import leadline.fleet.Component;
import leadline.fleet.FailureShows;
import leadline.fleet.FoundWord;
import leadline.fleet.LimitBy;
import leadline.fleet.OverhaulLimit;
import leadline.fleet.Part;
import leadline.fleet.PartShape;
import leadline.fleet.PositionsPer;
import leadline.fleet.Renewal;
import leadline.fleet.TestResult;
import leadline.quantity.RunningHours;
import org.junit.jupiter.api.Test;

class CatalogueFileTest {

  @Test
  void everyEntryHasItsMeaning() {
    Set<FoundWord> beyondLimit = EnumSet.of(FoundWord.WORN);
    assertEquals(
        List.of(
            new Component(
                "fuel-injector",
                PositionsPer.MACHINE,
                Set.of("main-engine", "generator-engine"),
                new OverhaulLimit<>(
                    LimitBy.CATALOGUE, RunningHours.ofHours(7500), "common practice, no source"),
                List.of(
                    new OverhaulLimit<>(
                        LimitBy.MAKER, RunningHours.ofHours(6000), "instruction book, section 4")),
                List.of(
                    new OverhaulLimit<>(LimitBy.MAKER, 30, "instruction book, section 4"),
                    new OverhaulLimit<>(LimitBy.CLASS, 60, "survey list")),
                List.of(
                    new Part(
                        "nozzle",
                        PartShape.FIT,
                        FailureShows.ALWAYS,
                        EnumSet.of(FoundWord.STUCK, FoundWord.LEAKING),
                        beyondLimit,
                        Set.of(),
                        Renewal.ON_CONDITION,
                        Clock.HOURS,
                        "fuel injection"),
                    new Part(
                        "main-spring",
                        PartShape.SPRING,
                        FailureShows.MAY_STAY_UNSEEN,
                        EnumSet.of(FoundWord.BROKEN),
                        beyondLimit,
                        EnumSet.of(TestResult.PASSED),
                        Renewal.ROUTINE,
                        Clock.MONTHS,
                        "fuel injection")))),
        CatalogueFile.read(Fixtures.FOLDER.resolve("catalogue-good.json"), Fixtures.SHARED)
            .components());
  }

  @Test
  void everythingWrongIsSaidAtOnce() throws IOException {
    assertEquals(
        Files.readAllLines(Fixtures.FOLDER.resolve("catalogue-bad.errors.txt")),
        Fixtures.lines(Fixtures.catalogueErrors(Fixtures.FOLDER.resolve("catalogue-bad.json"))));
  }
}
