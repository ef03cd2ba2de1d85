package leadline.publish;

import java.util.List;
import java.util.Optional;
import leadline.fleet.Catalogue;
import leadline.fleet.Component;
import leadline.fleet.Reason;
import leadline.history.OverhaulInterval.Subject;
import leadline.publish.FleetFigures.Having;
import leadline.quantity.RunningHours;
import leadline.summary.ComponentRates;
import leadline.summary.EvidenceColumns;
import leadline.summary.OverhaulIntervals;
import leadline.summary.SharedColumns;
import leadline.summary.SpringBreakage;
import leadline.summary.SpringSurvival;
import leadline.summary.TableRow;

/**
 * A month in a few lines for a terminal: of each component overhauled, how often it broke down, how
 * long it runs between overhauls, and of the non-return valve's spring, which is often left
 * unopened, how many were broken and how many are by the policy interval. Each figure comes with
 * its limits, its counts and its verdict.
 */
public final class MonthInWords {

  private static final String OFTEN_UNOPENED = "nrv-spring";
  private static final String AT_ALL_AGES = "all";
  private static final String CAUTION =
      "Statistics from incomplete records: on their own never a reason to lengthen an interval."
          + " The maker's instructions, class and flag prevail.";

  private final FleetFigures figures;
  private final Paragraphs text = new Paragraphs();

  private MonthInWords(FleetFigures figures) {
    this.figures = figures;
  }

  /** Lines of at most 80 characters, each ended by a line feed. */
  public static String of(RunManifest manifest, List<PublishedTable> tables, Catalogue catalogue) {
    return paragraphs(manifest, tables, catalogue).toString();
  }

  /** The same, not yet broken into lines. */
  public static Paragraphs paragraphs(
      RunManifest manifest, List<PublishedTable> tables, Catalogue catalogue) {
    MonthInWords month = new MonthInWords(new FleetFigures(tables));
    month.text.add(
        "%s: the fleet since its records began, known at %s, 95 %% limits in brackets"
            .formatted(manifest.month(), manifest.knownAt()));
    catalogue.components().forEach(month::addComponent);
    month.text.add(recordsInWords(manifest));
    month.text.add(CAUTION);
    return month.text;
  }

  private void addComponent(Component component) {
    Having<String> named = new Having<>(SharedColumns.COMPONENT, component.name());
    figures
        .row(
            ComponentRates.SPEC,
            named,
            new Having<>(ComponentRates.ENDPOINT, Reason.BREAKDOWN.word()))
        .filter(row -> row.need(EvidenceColumns.ELIGIBLE) > 0)
        .ifPresent(row -> addFigures(row, named, component.interval()));
  }

  private void addFigures(TableRow breakdowns, Having<String> named, RunningHours interval) {
    text.add(
        breakdowns.need(SharedColumns.COMPONENT) + " " + FigureInWords.ofBreakdowns(breakdowns));
    figures
        .row(
            OverhaulIntervals.SPEC,
            named,
            new Having<>(OverhaulIntervals.CLOCK, Subject.POSITION.word()))
        .map(FigureInWords::ofIntervals)
        .ifPresent(text::addBelow);
    figures
        .row(
            SpringBreakage.SPEC,
            named,
            new Having<>(SharedColumns.PART, OFTEN_UNOPENED),
            new Having<>(SharedColumns.HOURS_BAND, AT_ALL_AGES))
        .map(FigureInWords::ofSpring)
        .ifPresent(text::addBelow);
    springLife(named, interval, SpringSurvival.Method.WEIBULL)
        .or(() -> springLife(named, interval, SpringSurvival.Method.NPMLE))
        .map(FigureInWords::ofSpringLife)
        .ifPresent(text::addBelow);
  }

  private Optional<TableRow> springLife(
      Having<String> named, RunningHours interval, SpringSurvival.Method method) {
    return figures.row(
        SpringSurvival.SPEC,
        named,
        new Having<>(SharedColumns.PART, OFTEN_UNOPENED),
        new Having<>(SpringSurvival.METHOD, method.word()),
        new Having<>(SpringSurvival.AGE, interval.hours()));
  }

  private static String recordsInWords(RunManifest manifest) {
    long refused =
        manifest.inputs().stream()
            .flatMap(batch -> batch.files().stream())
            .mapToLong(RunManifest.InputFile::refused)
            .sum();
    long problems = manifest.problems().values().stream().mapToLong(Long::longValue).sum();
    return "records: %s rows refused; %s problems and questions for the vessels"
        .formatted(Numbers.count(refused), Numbers.count(problems));
  }
}
