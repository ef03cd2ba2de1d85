package leadline.study;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Cells;
import leadline.fleet.FindingLayout;
import leadline.fleet.MovementLayout;
import leadline.fleet.OverhaulId;
import leadline.fleet.OverhaulLayout;
import leadline.fleet.Reading;
import leadline.fleet.RecordKind;
import leadline.history.Exposure;
import leadline.history.HourRule;
import leadline.history.HourSeries;
import leadline.history.HourSeries.Bounded;
import leadline.history.LogProblem.TotalAfterGap;
import leadline.history.OverhaulProblem.HoursDisagree;
import leadline.history.ReadingNote;
import leadline.history.Visit;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;
import leadline.sample.PlantedError;
import leadline.sample.SampleRow;

/**
 * Whether an error was noticed. Found is only what is named: by a question, a note on hours, a
 * count or a refusal.
 *
 * @param seen the vessel by its records
 * @param truth the same vessel by records without errors
 */
record PlantedErrorVerdict(StudiedVessel seen, StudiedVessel truth) {

  private static final RunningHours SAME = RunningHours.ofTenths(1);

  private static final Set<HourRule> MENDINGS =
      Set.of(
          HourRule.TRANSPOSED,
          HourRule.DIGIT_LOST,
          HourRule.DIGIT_ADDED,
          HourRule.DIGIT_MISREAD,
          HourRule.TENFOLD);

  Outcome of(PlantedError error) {
    return switch (error.kind()) {
      case MISSING_MONTH, STALE_MONTH -> ofMonth(error);
      case COUNTER_UNDECLARED -> ofCounter(error, HourRule.NEW_COUNTER);
      case COUNTER_REPLACED -> ofCounter(error, HourRule.REPLACED);
      case ROLL_OVER -> ofCounter(error, HourRule.ROLL_OVER);
      case MINUTES_AS_DECIMALS -> asked(question -> question.record().equals(error.record()));
      case NO_HOURS, HOURS_OFF, DIGITS_TRANSPOSED -> ofOverhaulHours(error);
      case DUPLICATE -> ofDuplicate(error);
      case DATE_ORDER, UNMAPPED_WORDING -> isRefused(error) ? Outcome.ASKED : named(error);
      case SWAP_UNREPORTED -> ofSwap(error);
      case BLANK_FINDING ->
          asked(question -> question.kind().equals("opened-unstated") && isOf(question, error));
      default -> error.file().equals(RecordKind.HOURS.word()) ? ofReading(error) : named(error);
    };
  }

  private Outcome ofReading(PlantedError error) {
    String machine = machine(error);
    Optional<ReadingNote> note =
        seen.notes(machine).stream()
            .filter(each -> StudiedVessel.name(each.reading()).equals(error.record()))
            .findFirst();
    if (note.isPresent()) {
      return MENDINGS.contains(note.get().rule())
          ? repaired(off(machine, note.get().reading().at()))
          : Outcome.ASKED;
    }
    if (isAsked(question -> question.record().equals(error.record()))) {
      return Outcome.ASKED;
    }
    return seen.reading(error.record())
        .map(Reading::at)
        .map(at -> unnoticed(machine, at))
        .orElse(Outcome.UNNOTICED);
  }

  private Outcome ofMonth(PlantedError error) {
    String machine = machine(error);
    YearMonth month = YearMonth.parse(error.record().substring(machine.length() + 1));
    Instant end = month.plusMonths(1).atDay(1).atStartOfDay(ZoneOffset.UTC).toInstant();
    boolean isNamed =
        Stream.concat(
                seen.notes(machine).stream().map(note -> StudiedVessel.name(note.reading())),
                seen.questions().stream().map(Problem::record))
            .anyMatch(record -> record.startsWith(error.record()));
    return isNamed || isAsked(question -> isGapAround(question, machine, end))
        ? Outcome.ASKED
        : unnoticed(machine, end);
  }

  private static boolean isGapAround(Problem question, String machine, Instant moment) {
    return question instanceof TotalAfterGap gap
        && gap.machine().machine().equals(machine)
        && gap.since().isBefore(moment)
        && gap.at().isAfter(moment);
  }

  /** Right where the hours from first to last are, within the limits where nobody read. */
  private Outcome ofCounter(PlantedError error, HourRule rule) {
    String machine = machine(error);
    HourSeries hours = seen.machine(machine).hours();
    Exposure used = hours.exposure(hours.span().orElseThrow());
    HourSeries driven = truth.machine(machine).hours();
    RunningHours run = driven.exposure(driven.span().orElseThrow()).hours();
    boolean isRight =
        !used.least().minus(SAME).isAbove(run) && !run.isAbove(used.most().plus(SAME));
    if (seen.notes(machine).stream().anyMatch(note -> note.rule() == rule)) {
      return isRight ? Outcome.REPAIRED_RIGHTLY : Outcome.REPAIRED_WRONGLY;
    }
    return seen.notes(machine).isEmpty()
        ? isRight ? Outcome.HARMLESS : Outcome.UNNOTICED
        : Outcome.ASKED;
  }

  private Outcome ofOverhaulHours(PlantedError error) {
    Optional<RunningHours> used = seen.visit(error.record()).map(Visit::machineHours);
    Optional<RunningHours> run = truth.visit(error.record()).map(Visit::machineHours);
    if (used.isEmpty() || run.isEmpty()) {
      return named(error);
    }
    Visit visit = seen.visit(error.record()).orElseThrow();
    String machine = visit.overhaul().machine().machine();
    boolean isRight =
        !used.get().differenceTo(run.get()).isAbove(StudiedVessel.TOLERANCE)
            || isWithinBounds(machine, visit.at());
    boolean isNamed =
        visit.overhaul().machineHours().isEmpty()
            || isAsked(question -> names(question, error.record()))
            || isAsked(question -> isFollowed(question, visit.overhaul().id()));
    if (isNamed) {
      return isRight ? Outcome.REPAIRED_RIGHTLY : Outcome.REPAIRED_WRONGLY;
    }
    return isRight ? Outcome.HARMLESS : Outcome.UNNOTICED;
  }

  /** Listed as shifted by the same as another. */
  private static boolean isFollowed(Problem question, OverhaulId overhaul) {
    return question instanceof HoursDisagree shift && shift.following().contains(overhaul);
  }

  private Outcome ofDuplicate(PlantedError error) {
    boolean isOnce =
        seen.history().machines().stream()
                .flatMap(machine -> machine.visits().stream())
                .filter(visit -> visit.overhaul().id().overhaul().equals(error.record()))
                .count()
            <= 1;
    return isOnce ? Outcome.REPAIRED_RIGHTLY : Outcome.UNNOTICED;
  }

  /** The exchange has no record; a question about either of its items names it. */
  private Outcome ofSwap(PlantedError error) {
    Cells row =
        truth.sample().rows(RecordKind.OVERHAULS).stream()
            .map(SampleRow::cells)
            .filter(cells -> cells.need(OverhaulLayout.OVERHAUL).equals(error.record()))
            .findFirst()
            .orElseThrow();
    return asked(
        question ->
            names(question, row.need(OverhaulLayout.REMOVED_SERIAL))
                || names(question, row.need(OverhaulLayout.FITTED_SERIAL)));
  }

  private boolean isRefused(PlantedError error) {
    return Stream.of(RecordKind.OVERHAULS, RecordKind.FINDINGS)
        .filter(kind -> kind.word().equals(error.file()))
        .flatMap(kind -> seen.sample().rows(kind).stream())
        .filter(row -> !row.ownWords().isEmpty())
        .map(SampleRow::cells)
        .anyMatch(
            cells ->
                cells.kind() == RecordKind.OVERHAULS
                    ? cells.need(OverhaulLayout.OVERHAUL).equals(error.record())
                    : cells.need(FindingLayout.OVERHAUL).equals(error.record())
                        && cells.need(FindingLayout.PART).equals(error.part()));
  }

  private Outcome named(PlantedError error) {
    Set<String> movements =
        seen.sample().rows(RecordKind.MOVEMENTS).stream()
            .map(SampleRow::cells)
            .filter(
                cells -> cells.find(MovementLayout.OVERHAUL).equals(Optional.of(error.record())))
            .filter(cells -> cells.need(MovementLayout.PART).equals(error.part()))
            .map(cells -> cells.need(MovementLayout.MOVEMENT) + " " + error.part())
            .collect(Collectors.toSet());
    return asked(
        question ->
            movements.contains(question.record())
                || (names(question, error.record())
                    && (error.part().isEmpty() || names(question, error.part()))));
  }

  private static boolean isOf(Problem question, PlantedError error) {
    return question.record().endsWith(error.part());
  }

  private static boolean names(Problem question, String word) {
    return Pattern.compile("(?<![\\w-])" + Pattern.quote(word) + "(?![\\w-])")
        .matcher(question.record() + " " + question.evidence() + " " + question.request())
        .find();
  }

  private Outcome asked(Predicate<Problem> question) {
    return isAsked(question) ? Outcome.ASKED : Outcome.UNNOTICED;
  }

  private boolean isAsked(Predicate<Problem> question) {
    return seen.questions().stream().anyMatch(question);
  }

  private static Outcome repaired(RunningHours off) {
    return off.isAbove(SAME) ? Outcome.REPAIRED_WRONGLY : Outcome.REPAIRED_RIGHTLY;
  }

  private Outcome unnoticed(String machine, Instant at) {
    return isWithinBounds(machine, at) ? Outcome.HARMLESS : Outcome.UNNOTICED;
  }

  /** Give or take a day. */
  private boolean isWithinBounds(String machine, Instant at) {
    Optional<Bounded> used = since(seen, machine, at);
    Optional<Bounded> run = since(truth, machine, at);
    return used.isPresent()
        && run.isPresent()
        && !used.get().lower().minus(StudiedVessel.TOLERANCE).isAbove(run.get().hours())
        && !run.get().hours().isAbove(used.get().upper().plus(StudiedVessel.TOLERANCE));
  }

  /** How far the hours used lie from the true ones. */
  private RunningHours off(String machine, Instant at) {
    RunningHours used = since(seen, machine, at).orElseThrow().hours();
    return used.differenceTo(since(truth, machine, at).orElseThrow().hours());
  }

  /** Hours run since the first reading. */
  private static Optional<Bounded> since(StudiedVessel vessel, String machine, Instant at) {
    HourSeries hours = vessel.machine(machine).hours();
    RunningHours first = hours.at(hours.span().orElseThrow().start()).orElseThrow().hours();
    return hours
        .at(at)
        .map(
            then ->
                new Bounded(
                    then.hours().minus(first),
                    then.lower().minus(first),
                    then.upper().minus(first)));
  }

  private static String machine(PlantedError error) {
    return error.record().substring(0, error.record().lastIndexOf(' '));
  }
}
