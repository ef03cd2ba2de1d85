package leadline.summary;

import static leadline.summary.Rows.KNOWN_AT;
import static leadline.summary.Rows.MONTH;
import static leadline.summary.TestCatalogue.CATALOGUE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToLongFunction;
import leadline.history.VesselHistory;
import leadline.quantity.ReportMonth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties that hold for any fleet, on fleets drawn at random. */
class MonthlySummaryTest {

  private static MonthlySummary summary(List<VesselHistory> vessels) {
    MonthlySummary summary = MonthlySummary.start(CATALOGUE, MONTH);
    vessels.forEach(summary::add);
    return summary;
  }

  private static Map<TableSpec, List<TableRow>> rows(MonthlySummary summary) {
    return Rows.tables(summary);
  }

  private static Map<TableSpec, List<TableRow>> rows(List<VesselHistory> vessels) {
    return rows(summary(vessels));
  }

  @Test
  void tablesComeOutInTheOrderOfPublication() {
    List<TableSpec> figures = new ArrayList<>(PublishedTables.all());
    figures.removeAll(
        List.of(
            DueList.SPEC,
            FleetMonth.SPEC,
            HoursReconciliation.SPEC,
            VesselQueries.SPEC)); // of one vessel each
    figures.removeAll(List.of(IntakeLog.SPEC, UnmappedWords.SPEC)); // of files, not of vessels
    assertEquals(figures, List.copyOf(rows(new RandomFleet(1).vessels(2)).keySet()));
  }

  @Test
  void everyRowBearsMonthAndKnownAt() {
    for (List<TableRow> table : rows(new RandomFleet(1).vessels(2)).values()) {
      assertFalse(table.isEmpty());
      for (TableRow row : table) {
        assertEquals("2024-12", row.need(SharedColumns.MONTH));
        assertEquals(KNOWN_AT, row.need(SharedColumns.KNOWN_AT));
      }
    }
  }

  @Test
  void anEmptyFleetHasNoRows() {
    rows(List.of()).values().forEach(table -> assertEquals(List.of(), table));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theOrderOfVesselsChangesNoDigit(long seed) {
    List<VesselHistory> vessels = new RandomFleet(seed).vessels(12);
    List<VesselHistory> shuffled = new ArrayList<>(vessels);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(rows(vessels), rows(shuffled));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void splittingAndMergingInAnyOrderChangesNoDigit(long seed) {
    List<VesselHistory> vessels = new RandomFleet(seed).vessels(12);
    List<VesselHistory> one = vessels.subList(0, 3);
    List<VesselHistory> two = vessels.subList(3, 8);
    List<VesselHistory> three = vessels.subList(8, 12);
    Map<TableSpec, List<TableRow>> expected = rows(vessels);
    assertEquals(
        expected, rows(summary(one).merge(summary(two)).merge(summary(three))), "left to right");
    assertEquals(
        expected, rows(summary(one).merge(summary(two).merge(summary(three)))), "right to left");
    assertEquals(
        expected, rows(summary(three).merge(summary(one)).merge(summary(two))), "out of order");
    assertEquals(
        expected, rows(summary(List.of()).merge(summary(vessels))), "into an empty summary");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void machinesOfAVesselMayBeCountedApart(long seed) {
    List<VesselHistory> vessels = new RandomFleet(seed).vessels(6);
    MonthlySummary some = MonthlySummary.start(CATALOGUE, MONTH);
    MonthlySummary others = MonthlySummary.start(CATALOGUE, MONTH);
    for (VesselHistory vessel : vessels) {
      some.add(new VesselHistory(vessel.vessel(), vessel.machines().subList(0, 2)));
      others.add(new VesselHistory(vessel.vessel(), vessel.machines().subList(2, 3)));
    }
    assertEquals(rows(vessels), rows(some.merge(others)));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void mergingLeavesTheOtherAsItWas(long seed) {
    List<VesselHistory> vessels = new RandomFleet(seed).vessels(6);
    MonthlySummary other = summary(vessels.subList(3, 6));
    Map<TableSpec, List<TableRow>> before = rows(other);
    MonthlySummary whole = summary(vessels.subList(0, 3)).merge(other);
    whole.add(new RandomFleet(seed + 100).vessels(1).get(0));
    assertEquals(before, rows(other));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aSummaryReadBackGivesTheSameRowsAndMerges(long seed)
      throws IOException, ClassNotFoundException {
    List<VesselHistory> vessels = new RandomFleet(seed).vessels(8);
    MonthlySummary first = readBack(summary(vessels.subList(0, 4)));
    assertEquals(rows(vessels.subList(0, 4)), rows(first));
    assertEquals(rows(vessels), rows(first.merge(readBack(summary(vessels.subList(4, 8))))));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void countsAndHoursAddUpOverStrata(long seed) {
    Map<TableSpec, List<TableRow>> tables =
        new LinkedHashMap<>(rows(new RandomFleet(seed).vessels(12)));
    tables
        .keySet()
        .removeAll( // rows by distribution, age and word
            List.of(PartLifetimes.SPEC, SpringSurvival.SPEC, FindingsByHours.SPEC));
    tables.forEach(
        (spec, rows) -> {
          for (TableColumn<Long> column : counts(spec)) {
            ToLongFunction<TableRow> count = row -> row.need(column);
            Map<List<Object>, Long> fleet = sums(spec, rows, "fleet", count);
            assertEquals(fleet, sums(spec, rows, "model", count), column.name());
            assertEquals(fleet, sums(spec, rows, "vessel", count), column.name());
          }
          Map<List<Object>, Long> hours = sums(spec, rows, "fleet", MonthlySummaryTest::tenths);
          assertEquals(hours, sums(spec, rows, "model", MonthlySummaryTest::tenths), spec.name());
          assertEquals(hours, sums(spec, rows, "vessel", MonthlySummaryTest::tenths), spec.name());
        });
  }

  /** A stratum has rows for the words that it found only. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whatModelsFoundAddsUpToTheFleets(long seed) {
    List<TableRow> found =
        rows(new RandomFleet(seed).vessels(12)).getOrDefault(FindingsByHours.SPEC, List.of());
    ToLongFunction<TableRow> times = row -> row.need(FindingsByHours.TIMES_FOUND);
    Map<List<Object>, Long> fleet = withoutZeros(sums(FindingsByHours.SPEC, found, "fleet", times));
    assertTrue(fleet.size() > 100, "found: " + fleet.size());
    assertEquals(fleet, withoutZeros(sums(FindingsByHours.SPEC, found, "model", times)));
  }

  private static Map<List<Object>, Long> withoutZeros(Map<List<Object>, Long> sums) {
    sums.values().removeIf(sum -> sum == 0);
    return sums;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void bandsSumToAll(long seed) {
    Map<TableSpec, List<TableRow>> tables = rows(new RandomFleet(seed).vessels(12));
    assertBandsSumToAll(
        SpringBreakage.SPEC,
        tables,
        List.of(SpringBreakage.OVERHAULED, SpringBreakage.OPENED, SpringBreakage.BROKEN));
    assertBandsSumToAll(
        FindingsByHours.SPEC,
        tables,
        List.of(FindingsByHours.OVERHAULED, FindingsByHours.OPENED, FindingsByHours.TIMES_FOUND));
  }

  private static void assertBandsSumToAll(
      TableSpec spec, Map<TableSpec, List<TableRow>> tables, List<TableColumn<Long>> columns) {
    for (TableColumn<Long> column : columns) {
      Map<List<Object>, Long> all = new LinkedHashMap<>();
      Map<List<Object>, Long> bands = new LinkedHashMap<>();
      for (TableRow row : tables.getOrDefault(spec, List.of())) {
        boolean isAll = row.need(SharedColumns.HOURS_BAND).equals("all");
        List<Object> key = key(spec, row, SharedColumns.HOURS_BAND);
        bands.merge(key, isAll ? 0L : row.need(column), Long::sum);
        if (isAll) {
          all.put(key, row.need(column));
        }
      }
      assertTrue(all.size() > 1, spec.name());
      assertEquals(all, bands, spec.name() + " " + column.name());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void keysNameARowOnce(long seed) {
    rows(new RandomFleet(seed).vessels(12))
        .forEach(
            (spec, rows) ->
                assertEquals(
                    rows.size(),
                    rows.stream().map(row -> key(spec, row)).distinct().count(),
                    spec.name()));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void shortWindowsLieWithinLongOnes(long seed) {
    List<VesselHistory> vessels = new RandomFleet(seed).vessels(12);
    Rows rates = new Rows(rows(vessels).getOrDefault(ComponentRates.SPEC, List.of()));
    List<TableRow> month = rates.where(SharedColumns.WINDOW, "month").rows();
    List<TableRow> year = rates.where(SharedColumns.WINDOW, "12-months").rows();
    List<TableRow> everything = rates.where(SharedColumns.WINDOW, "since-start").rows();
    for (int index = 0; index < everything.size(); index++) {
      assertWithin(year.get(index), month.get(index));
      assertWithin(everything.get(index), year.get(index));
    }
  }

  private static void assertWithin(TableRow whole, TableRow stretch) {
    assertTrue(stretch.need(EvidenceColumns.EVENTS) <= whole.need(EvidenceColumns.EVENTS));
    assertTrue(stretch.need(EvidenceColumns.EXPOSURE) <= whole.need(EvidenceColumns.EXPOSURE));
  }

  @Test
  void summariesOfTwoMonthsDoNotMerge() {
    MonthlySummary december = MonthlySummary.start(CATALOGUE, MONTH);
    MonthlySummary november = MonthlySummary.start(CATALOGUE, ReportMonth.parse("2024-11"));
    assertThrows(IllegalArgumentException.class, () -> december.merge(november));
  }

  @SuppressWarnings("unchecked") // a column of counts holds longs
  private static List<TableColumn<Long>> counts(TableSpec spec) {
    return spec.columns().stream()
        .filter(column -> column.type() instanceof ValueType.Count)
        .filter(column -> !column.equals(ComponentRates.VESSELS))
        .map(column -> (TableColumn<Long>) column)
        .toList();
  }

  /** Sums of a level's rows by all keys but level and stratum. */
  private static Map<List<Object>, Long> sums(
      TableSpec spec, List<TableRow> rows, String level, ToLongFunction<TableRow> value) {
    Map<List<Object>, Long> sums = new LinkedHashMap<>();
    for (TableRow row : rows) {
      if (row.need(SharedColumns.LEVEL).equals(level)) {
        List<Object> key = key(spec, row, SharedColumns.LEVEL, SharedColumns.STRATUM);
        sums.merge(key, value.applyAsLong(row), Long::sum);
      }
    }
    return sums;
  }

  private static long tenths(TableRow row) {
    return Math.round(row.find(EvidenceColumns.EXPOSURE).orElse(0.0) * 10);
  }

  private static List<Object> key(TableSpec spec, TableRow row, TableColumn<?>... without) {
    return spec.keys().stream()
        .filter(column -> !List.of(without).contains(column))
        .<Object>map(row::need)
        .toList();
  }

  private static MonthlySummary readBack(MonthlySummary summary)
      throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(summary);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (MonthlySummary) in.readObject();
    }
  }
}
