package leadline.job;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.lake.AgeGuard;
import leadline.lake.Engine;
import leadline.lake.Lake;
import leadline.lake.Run;
import leadline.lake.Upkeep;
import leadline.publish.Boundary;
import leadline.publish.Publication;
import leadline.settings.Step;

/** Upkeep of the lake. The writer's lock must be held. */
final class Tidy {

  private final Lake lake;
  private final Clock clock;
  private final Boundary boundary;

  Tidy(Lake lake, Clock clock, Boundary boundary) {
    this.lake = lake;
    this.clock = clock;
    this.boundary = boundary;
  }

  StepOutcome.Tidied by(Step.Tidy step, Engine engine) {
    Upkeep upkeep = new Upkeep(lake, new AgeGuard(clock, step.olderThan()), boundary::reached);
    List<Run> superseded = superseded(step.runsKept(), published(step.publications()));
    upkeep.takeOffTheList(superseded, engine);
    Upkeep.Rewritten tables = upkeep.dropStrayRowsAndGatherSmallFiles(engine);
    long snapshots = upkeep.expireSnapshots();
    long files = upkeep.deleteStrayFiles();
    return new StepOutcome.Tidied(superseded, tables, snapshots, files);
  }

  /** What runs have in common of which the newer speaks for the older. */
  private record Alike(String month, Instant knownAt, String settings) {

    static Alike of(Run run) {
      return new Alike(run.month(), run.knownAt(), run.settingsDigest());
    }
  }

  private List<Run> superseded(int kept, Set<String> published) {
    Collection<List<Run>> alike =
        lake.runs().committed().stream().collect(Collectors.groupingBy(Alike::of)).values();
    return alike.stream()
        .flatMap(runs -> runs.subList(0, Math.max(0, runs.size() - kept)).stream())
        .filter(run -> !published.contains(run.id()))
        .sorted(Comparator.comparing(Run::committedAt).thenComparing(Run::id))
        .toList();
  }

  private static Set<String> published(List<Path> publications) {
    Set<String> runs = new HashSet<>();
    for (Path folder : publications) {
      try {
        runs.addAll(Publication.runsIn(folder));
      } catch (IOException e) {
        throw new UnusableRequest(
            "No month was published into " + folder + ": name a folder that `publish` wrote to.");
      }
    }
    return runs;
  }
}
