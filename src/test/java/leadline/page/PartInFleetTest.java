package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import leadline.summary.SharedColumns;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartFindings;
import leadline.summary.SpringBreakage;
import leadline.summary.TableRow;
import org.junit.jupiter.api.Test;

class PartInFleetTest {

  private static final FailureCurve CURVE =
      new FailureCurve(
          List.of(
              new FailureCurve.Point(0, new FailureCurve.Chance(0, 0, 0)),
              new FailureCurve.Point(16_000, new FailureCurve.Chance(0.2, 0.1, 0.35))),
          "");

  /** 4 of 40: 10.0 %, 2.8 % to 23.7 % (Clopper-Pearson). */
  private static final TableRow FINDINGS =
      Fleets.finding(50, 40)
          .with(PartFindings.FAILED, 4L)
          .with(PartFindings.FAILED_SHARE.estimate(), 0.1)
          .with(PartFindings.FAILED_SHARE.lower(), 0.0279)
          .with(PartFindings.FAILED_SHARE.upper(), 0.2366)
          .with(EvidenceColumns.VERDICT, "ok")
          .build();

  /** 6 of 40: 15.0 %, 5.7 % to 29.8 % (Clopper-Pearson). */
  private static final TableRow BAND =
      Fleets.spring(60, 40, 6)
          .with(SharedColumns.HOURS_BAND, "16000-20000")
          .with(SpringBreakage.BROKEN_SHARE.estimate(), 0.15)
          .with(SpringBreakage.BROKEN_SHARE.lower(), 0.0571)
          .with(SpringBreakage.BROKEN_SHARE.upper(), 0.2984)
          .with(EvidenceColumns.VERDICT, "ok")
          .build();

  private static final PartInFleet SPRING =
      new PartInFleet(CURVE, Optional.of(FINDINGS), List.of(BAND));
  private static final PartInFleet OTHER = new PartInFleet(CURVE, Optional.of(FINDINGS), List.of());

  @Test
  void withinTheAgesOnRecordTheChanceIsTheCurves() {
    assertEquals("20.0 (10.0\u201335.0)", SPRING.chance(16_000, 0));
  }

  @Test
  void beyondThemASpringHasTheShareOfThoseOpenedAtSuchHours() {
    assertEquals("at 16,000\u201320,000 h: 15.0 (5.7\u201329.8)", SPRING.chance(16_001, 0));
  }

  @Test
  void beyondThemOtherPartsHaveTheFleetsShareAndSaySo() {
    assertEquals("over 16,000 h: fleet 10.0 (2.8\u201323.7)", OTHER.chance(16_001, 0));
    assertEquals("over 16,000 h: fleet 10.0 (2.8\u201323.7)", SPRING.chance(20_000, 17_000));
  }

  @Test
  void whatNobodyOpenedIsNotOnRecord() {
    assertEquals(
        "over 16,000 h: nothing on record",
        new PartInFleet(CURVE, Optional.empty(), List.of()).chance(20_000, 0));
  }

  @Test
  void ofUnknownHoursTheFleetsShareIsAllThatIsKnown() {
    assertEquals("fleet 10.0 (2.8\u201323.7)", SPRING.chance());
  }
}
