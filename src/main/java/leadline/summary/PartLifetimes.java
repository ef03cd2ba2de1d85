package leadline.summary;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import leadline.summary.FittedLives.Fit;

/** How long parts last: what their lives tell, and the life distributions that fit them. */
public final class PartLifetimes {

  public static final TableColumn<String> DISTRIBUTION =
      TableColumn.key(
          "distribution",
          "the life distribution: exponential, weibull, lognormal, gamma or log-logistic, the best by AIC"
              + " first; where lives are too few to tell a shape, weibull with the shape assumed;"
              + " none where the row has counts only");
  public static final TableColumn<Long> LIVES =
      TableColumn.count(
          "lives",
          "lives on record: exact, interval, right_censored, rejected, unverified, without_age and"
              + " selective together");
  public static final TableColumn<Long> EXACT = TableColumn.count("exact", "failed at a known age");
  public static final TableColumn<Long> INTERVAL =
      TableColumn.count("interval", "found failed: failed between two known ages");
  public static final TableColumn<Long> RIGHT_CENSORED =
      TableColumn.count("right_censored", "last known to work at a known age above 0");
  public static final TableColumn<Long> REJECTED =
      TableColumn.count(
          "rejected",
          "renewed on condition while still working; counted as working at that age, no failure");
  public static final TableColumn<Long> DELAYED_ENTRY =
      TableColumn.count(
          "delayed_entry", "of these, known only because they lived beyond an age above 0");
  public static final TableColumn<Long> UNVERIFIED =
      TableColumn.count(
          "unverified", "left out: neither seen to work nor to have failed since first known");
  public static final TableColumn<Long> WITHOUT_AGE =
      TableColumn.count("without_age", "left out: origin unknown");
  public static final TableColumn<Long> SELECTIVE =
      TableColumn.count(
          "selective",
          "left out: on vessels that open the part in less than 0.8 of planned overhauls, so that"
              + " those opened may be chosen by their condition");
  public static final TableColumn<Double> LONGEST_AGE =
      TableColumn.given("longest_age_h", "h", "greatest age of which a life tells; 0 without any");
  public static final TableColumn<Double> AIC_ABOVE_BEST =
      TableColumn.real(
          "aic_above_best",
          "1",
          "Akaike's information criterion above that of the best row; beyond 10 there is hardly any"
              + " support; empty where nothing failed");
  public static final TableColumn<Double> FIT_CHECK_P =
      TableColumn.real(
          "fit_check_p",
          "1",
          "of the best row of the whole fleet: the share of lives drawn from the"
              + " distribution, watched alike, that lie as far from their fit; at 0.05, the least that"
              + " it can be, even the best does not fit; empty where the lives do not tell");
  public static final TableColumn<String> LIMITS_BY_VESSELS =
      TableColumn.text(
          "limits_by_vessels",
          "figures whose limits are by bootstrap of vessels, where ten or more vessels make it the"
              + " wider; none where all are by profile likelihood");
  public static final TableColumn<String> EXTRAPOLATED =
      TableColumn.text(
          "extrapolated",
          "figures that speak of ages beyond longest_age_h, which no record supports; none where"
              + " none does");

  public static final TableSpec SPEC =
      TableSpec.of(
          "part_life",
          "How long parts last: what their lives tell, and the life distributions that fit them.",
          SharedColumns.OF_PART,
          List.of(
              DISTRIBUTION,
              LIVES,
              EXACT,
              INTERVAL,
              RIGHT_CENSORED,
              REJECTED,
              DELAYED_ENTRY,
              UNVERIFIED,
              WITHOUT_AGE,
              SELECTIVE,
              LONGEST_AGE,
              AIC_ABOVE_BEST,
              FIT_CHECK_P),
          LifeFigure.ALL_COLUMNS,
          List.of(LIMITS_BY_VESSELS, EXTRAPOLATED),
          EvidenceColumns.ALL);

  private static final String NONE = "none";

  private final LifeGroup group;
  private final RoutineLives lives;
  private final Verdict verdict;
  private final FittedLives fits;

  PartLifetimes(LifeGroup group, RoutineLives lives) {
    this.group = group;
    this.lives = lives;
    this.verdict = lives.verdict(group.subject().part(), group.policyInterval());
    this.fits = new FittedLives(lives, LifeFigure.all(group.policyInterval()));
  }

  /** By distribution. */
  List<TableRow> rows() {
    return switch (verdict) {
      case WRONG_CLOCK, INSUFFICIENT, SELECTIVE_OPENING -> List.of(countsOnly(verdict));
      case TOO_FEW -> rows(fits.assumed(), Verdict.TOO_FEW);
      case OK -> {
        List<Fit> free = fits.free();
        yield free.isEmpty() ? rows(fits.assumed(), Verdict.TOO_FEW) : rows(free, Verdict.OK);
      }
    };
  }

  private List<TableRow> rows(List<Fit> fits, Verdict supported) {
    if (fits.isEmpty()) {
      return List.of(countsOnly(supported));
    }
    double best = fits.stream().mapToDouble(Fit::aicOrZero).min().orElse(0);
    return fits.stream().map(fit -> row(fit, best, supported)).toList();
  }

  private OptionalDouble fitCheck(Fit fit, double best) {
    return group.stratum().level() == Level.FLEET && fit.aicOrZero() == best
        ? fits.fitCheck(fit.model())
        : OptionalDouble.empty();
  }

  private TableRow row(Fit fit, double best, Verdict supported) {
    TableRow.Builder row =
        counts(supported)
            .with(DISTRIBUTION, fit.model().word())
            .with(
                AIC_ABOVE_BEST,
                fit.aic().isPresent()
                    ? OptionalDouble.of(fit.aic().getAsDouble() - best)
                    : OptionalDouble.empty())
            .with(FIT_CHECK_P, fitCheck(fit, best))
            .with(
                LIMITS_BY_VESSELS,
                names(fit, figure -> figure.limitsBy() == LimitsBy.BOOTSTRAP_OF_VESSELS))
            .with(EXTRAPOLATED, names(fit, figure -> figure.isBeyond(lives.longestAge())));
    fit.figures().forEach(figure -> figure.in(row));
    return row.build();
  }

  private TableRow countsOnly(Verdict supported) {
    return counts(supported)
        .with(DISTRIBUTION, NONE)
        .with(LIMITS_BY_VESSELS, NONE)
        .with(EXTRAPOLATED, NONE)
        .build();
  }

  private TableRow.Builder counts(Verdict supported) {
    LifeCounts counts = lives.total();
    Predicate<SeenLife> telling = SeenLife::tellsAnything;
    return group
        .row(SPEC, lives, supported)
        .with(LIVES, group.stratum().total().lives())
        .with(EXACT, counts.count(telling.and(SeenLife.Kind.EXACT::isOf)))
        .with(INTERVAL, counts.count(telling.and(SeenLife.Kind.INTERVAL::isOf)))
        .with(RIGHT_CENSORED, counts.count(telling.and(SeenLife.Kind.RIGHT_CENSORED::isOf)))
        .with(REJECTED, counts.count(telling.and(SeenLife.Kind.REJECTED::isOf)))
        .with(DELAYED_ENTRY, counts.count(telling.and(SeenLife::isEnteredLate)))
        .with(UNVERIFIED, counts.count(telling.negate()))
        .with(WITHOUT_AGE, counts.withoutAge())
        .with(SELECTIVE, lives.leftOut())
        .with(LONGEST_AGE, lives.longestAge().hours());
  }

  private static String names(Fit fit, Predicate<HeadlineFigure> which) {
    String names =
        fit.figures().stream()
            .filter(which)
            .map(figure -> figure.figure().columns().estimate().name())
            .collect(Collectors.joining(" "));
    return names.isEmpty() ? NONE : names;
  }
}
