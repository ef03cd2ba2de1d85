package leadline.job;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.fleet.RecordKind;
import leadline.lake.Batch;
import leadline.lake.KnownAt;
import leadline.lake.Lake;
import leadline.lake.Results;
import leadline.lake.Run;
import leadline.page.Briefings;
import leadline.page.MonthMail;
import leadline.page.Pages;
import leadline.problem.FileTrouble;
import leadline.publish.Boundary;
import leadline.publish.Documents;
import leadline.publish.Issue;
import leadline.publish.MonthInWords;
import leadline.publish.Publication;
import leadline.publish.PublishedTable;
import leadline.publish.ReturnSheets;
import leadline.publish.RunManifest;
import leadline.publish.Standing;
import leadline.quantity.ReportMonth;
import leadline.settings.Step;
import leadline.summary.JobCards;
import leadline.summary.PublishedTables;
import leadline.summary.TableSpec;

/** A run's summary rows to files and words. */
final class Publish {

  private final Lake lake;
  private final Catalogue catalogue;
  private final List<String> cautions;
  private final Clock clock;
  private final Boundary boundary;

  Publish(Lake lake, Catalogue catalogue, List<String> cautions, Clock clock, Boundary boundary) {
    this.lake = lake;
    this.catalogue = catalogue;
    this.cautions = cautions;
    this.clock = clock;
    this.boundary = boundary;
  }

  StepOutcome.Published month(Step.Publish step) {
    Instant begun = clock.instant();
    Run run = chosen(step);
    List<PublishedTable> tables = tables(run);
    RunManifest manifest = manifest(run, begun);
    Issue issue = new Issue(manifest, standing(run, step.choice()), tables, cautions);
    try {
      List<Path> links = new Publication(step.out(), documents(run), boundary).publish(issue);
      return new StepOutcome.Published(run, links, words(issue));
    } catch (IOException e) {
      throw new UnusableRequest(
          "Cannot publish into " + step.out() + ": " + FileTrouble.inWords(e) + ".");
    }
  }

  private Documents documents(Run run) {
    Documents pages = new Pages(catalogue);
    Documents briefings = new Briefings(catalogue, new Results(lake).rows(run, JobCards.SPEC));
    Documents mail = new MonthMail(catalogue);
    Documents returns = new ReturnSheets(catalogue);
    return (issue, folder) -> {
      pages.write(issue, folder);
      briefings.write(issue, folder);
      mail.write(issue, folder);
      returns.write(issue, folder);
    };
  }

  private List<String> words(Issue issue) {
    return MonthInWords.of(issue.manifest(), issue.tables(), catalogue).lines().toList();
  }

  private Run chosen(Step.Publish step) {
    List<Run> ofMonth =
        lake.runs().committed().stream()
            .filter(run -> run.month().equals(step.month().toString()))
            .toList();
    return ofMonth.stream()
        .filter(run -> matches(run, step.choice()))
        .reduce((older, newer) -> newer)
        .orElseThrow(() -> new UnusableRequest(notThere(step, ofMonth)));
  }

  private static String notThere(Step.Publish step, List<Run> ofMonth) {
    if (ofMonth.isEmpty()) {
      return "The lake has no run of %s: compute the month first.".formatted(step.month());
    } else if (step.choice() instanceof Step.RunChoice.Named named) {
      return "The lake has no run %s of %s: name one of %s."
          .formatted(
              named.run(),
              step.month(),
              ofMonth.stream().map(Run::id).collect(Collectors.joining(", ")));
    }
    return "The lake has no run of %s on what was known then: compute the month with --known-at first."
        .formatted(step.month());
  }

  private boolean matches(Run run, Step.RunChoice choice) {
    if (choice instanceof Step.RunChoice.Named named) {
      return run.id().equals(named.run());
    } else if (choice instanceof Step.RunChoice.KnownAt asked) {
      return lake.batches()
          .knownAt(asked.at())
          .filter(known -> known.at().equals(run.knownAt()))
          .isPresent();
    }
    return true;
  }

  /**
   * A run speaks for its month while no run of the month knows more. What was known at a moment
   * that was asked for speaks for the month only if nothing has become known since.
   */
  private Standing standing(Run run, Step.RunChoice choice) {
    Stream<Instant> runs =
        lake.runs().committed().stream()
            .filter(other -> other.month().equals(run.month()))
            .map(Run::knownAt);
    Stream<Instant> lists =
        choice instanceof Step.RunChoice.KnownAt
            ? lake.batches().knownAt(Instant.MAX).map(KnownAt::at).stream()
            : Stream.empty();
    return Stream.concat(runs, lists).anyMatch(moment -> moment.isAfter(run.knownAt()))
        ? Standing.AS_KNOWN_THEN
        : Standing.CURRENT;
  }

  private List<PublishedTable> tables(Run run) {
    List<PublishedTable> tables = new ArrayList<>();
    for (TableSpec spec : PublishedTables.all()) {
      tables.add(new PublishedTable(spec, new Results(lake).rows(run, spec)));
    }
    return tables;
  }

  private RunManifest manifest(Run run, Instant begun) {
    List<Batch> known =
        lake.batches().knownAt(run.knownAt()).map(KnownAt::counting).orElse(List.of());
    Map<String, Double> seconds = new LinkedHashMap<>();
    run.milliseconds().forEach((step, duration) -> seconds.put(step, duration / 1000.0));
    seconds.put(
        "read-results",
        Math.max(0, clock.instant().toEpochMilli() - begun.toEpochMilli()) / 1000.0);
    return new RunManifest(
        run.id(),
        ReportMonth.parse(run.month()),
        run.knownAt(),
        run.programVersion(),
        run.settingsDigest(),
        known.stream().map(Publish::inManifest).toList(),
        records(run.census()),
        run.problems(),
        seconds);
  }

  private static RunManifest.Batch inManifest(Batch batch) {
    return new RunManifest.Batch(
        batch.id(),
        batch.committedAt(),
        batch.files().stream()
            .map(
                file ->
                    new RunManifest.InputFile(
                        file.name(),
                        file.digest().hex(),
                        file.rowsRead(),
                        file.rowsStored(),
                        file.rowsRefused(),
                        file.cellsTrimmed()))
            .toList());
  }

  private static Map<String, RunManifest.Census> records(SortedMap<String, Long> census) {
    Map<String, RunManifest.Census> records = new LinkedHashMap<>();
    for (RecordKind kind : RecordKind.values()) {
      records.put(
          kind.word(),
          new RunManifest.Census(
              census.getOrDefault(kind.word() + ".current", 0L),
              census.getOrDefault(kind.word() + ".duplicate", 0L),
              census.getOrDefault(kind.word() + ".superseded", 0L),
              census.getOrDefault(kind.word() + ".withdrawn", 0L)));
    }
    return records;
  }
}
