package leadline.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import leadline.summary.EvidenceColumns;
import leadline.summary.FindingsByHours;
import leadline.summary.PartFindings;
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
  private static final TableRow BAND = band("16000-20000", 40, "ok");

  private static final PartInFleet OPENED =
      new PartInFleet(CURVE, Optional.of(FINDINGS), List.of(BAND));
  private static final PartInFleet NEVER_SO_OLD =
      new PartInFleet(CURVE, Optional.of(FINDINGS), List.of());

  private static TableRow band(String hours, long opened, String verdict) {
    return Fleets.found(hours, "failed", opened, 6)
        .with(FindingsByHours.FOUND_SHARE.estimate(), 0.15)
        .with(FindingsByHours.FOUND_SHARE.lower(), 0.0571)
        .with(FindingsByHours.FOUND_SHARE.upper(), 0.2984)
        .with(EvidenceColumns.VERDICT, verdict)
        .build();
  }

  @Test
  void withinTheAgesOnRecordTheChanceIsTheCurves() {
    assertEquals("20.0 (10.0\u201335.0)", OPENED.chance(16_000, 0));
  }

  @Test
  void beyondThemAPartHasTheShareOfThoseOpenedAtSuchHours() {
    assertEquals("at such hours 15.0 (5.7\u201329.8)", OPENED.chance(16_001, 0));
  }

  @Test
  void whereNoneWasOpenedAtSuchHoursItHasTheFleetsShareAndSaysSo() {
    assertEquals("over 16,000 h: fleet 10.0 (2.8\u201323.7)", NEVER_SO_OLD.chance(16_001, 0));
    assertEquals("over 16,000 h: fleet 10.0 (2.8\u201323.7)", OPENED.chance(20_000, 17_000));
  }

  @Test
  void withoutACurveThoseOpenedAtSuchHoursStandForIt() {
    FailureCurve none = new FailureCurve(List.of(), "too few");
    PartInFleet part = new PartInFleet(none, Optional.of(FINDINGS), List.of(BAND));
    assertEquals("at such hours 15.0 (5.7\u201329.8)", part.chance(16_000, 0));
    assertEquals("fleet 10.0 (2.8\u201323.7)", part.chance(15_999, 0));
  }

  @Test
  void ofTooFewOpenedOrByTheWrongClockABandTellsNothing() {
    for (TableRow band :
        List.of(band("16000-20000", 4, "too-few"), band("16000-20000", 40, "wrong-clock"))) {
      PartInFleet part = new PartInFleet(CURVE, Optional.of(FINDINGS), List.of(band));
      assertEquals("over 16,000 h: fleet 10.0 (2.8\u201323.7)", part.chance(16_001, 0));
    }
  }

  @Test
  void whatNobodyOpenedIsNotOnRecord() {
    assertEquals(
        "over 16,000 h: nothing on record",
        new PartInFleet(CURVE, Optional.empty(), List.of()).chance(20_000, 0));
  }

  @Test
  void ofUnknownHoursTheFleetsShareIsAllThatIsKnown() {
    assertEquals("fleet 10.0 (2.8\u201323.7)", OPENED.chance());
  }
}
