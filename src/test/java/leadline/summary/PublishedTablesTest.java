package leadline.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PublishedTablesTest {

  @Test
  void tablesHaveTheirPublishedNamesInOrder() {
    assertEquals(
        List.of(
            "component_rates",
            "overhaul_intervals",
            "part_findings",
            "spring_breakage",
            "findings_by_hours",
            "part_life",
            "spring_survival",
            "due_list",
            "fleet_month",
            "hours_reconciliation",
            "vessel_queries",
            "intake_log",
            "unmapped_words"),
        PublishedTables.all().stream().map(TableSpec::name).toList());
  }

  @Test
  void everyTableOfFiguresCarriesTheSharedKeysAndTheEvidence() {
    for (TableSpec spec : PublishedTables.all().subList(0, 7)) {
      assertTrue(spec.keys().containsAll(SharedColumns.OF_COMPONENT), spec.name());
      assertTrue(spec.columns().containsAll(EvidenceColumns.ALL), spec.name());
    }
  }

  @Test
  void aTableAboutTheExportsSaysOfWhatMonthItIsAndWhatWasKnown() {
    for (TableSpec spec : List.of(IntakeLog.SPEC, UnmappedWords.SPEC)) {
      assertEquals(
          List.of(SharedColumns.MONTH, SharedColumns.KNOWN_AT), spec.columns().subList(0, 2));
    }
    assertEquals(
        List.of("month", "known_at", "batch", "file"),
        IntakeLog.SPEC.keys().stream().map(TableColumn::name).toList());
    assertEquals(
        List.of("month", "known_at", "record", "column_name", "word"),
        UnmappedWords.SPEC.keys().stream().map(TableColumn::name).toList());
  }

  @Test
  void namesOfNumbersSayTheirUnit() {
    for (TableSpec spec : PublishedTables.all()) {
      for (TableColumn<?> column : spec.columns()) {
        String name = column.name().replaceAll("_(lo|hi)95$", "");
        switch (column.unit()) {
          case "h" -> assertTrue(name.endsWith("_h"), name);
          case "per million h" -> assertTrue(name.endsWith("_per_million_h"), name);
          case "h per day" -> assertTrue(name.endsWith("_h_per_day"), name);
          case "months" -> assertTrue(name.endsWith("_months"), name);
          case "days" -> assertTrue(name.startsWith("days_"), name);
          case "questions per 100 overhauls" ->
              assertTrue(name.endsWith("_per_100_overhauls"), name);
          case "1" -> assertFalse(name.endsWith("_h"), name);
          default -> assertFalse(column.type() instanceof ValueType.Real, name);
        }
        assertFalse(column.meaning().isBlank(), name);
      }
    }
  }

  @Test
  void theColumnsOfComponentRatesStandInOrder() {
    assertEquals(
        List.of(
            "month",
            "window",
            "known_at",
            "level",
            "stratum",
            "component",
            "endpoint",
            "events",
            "exposure_h",
            "rate_per_million_h",
            "rate_per_million_h_lo95",
            "rate_per_million_h_hi95",
            "rate_at_most_hours_per_million_h",
            "rate_at_least_hours_per_million_h",
            "vessels",
            "inspected",
            "eligible",
            "repaired_hours_share",
            "verdict"),
        ComponentRates.SPEC.columns().stream().map(TableColumn::name).toList());
  }

  @Test
  void aRowRefusesAColumnOfAnotherTableAndAMissingOne() {
    TableRow.Builder row = ComponentRates.SPEC.row();
    assertThrows(IllegalArgumentException.class, () -> row.with(PartFindings.OVERHAULED, 1L));
    assertThrows(IllegalStateException.class, row::build);
  }

  @Test
  void aRowRefusesANumberThatIsNotFinite() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            ComponentRates.SPEC.row().with(ComponentRates.RATE.upper(), Double.POSITIVE_INFINITY));
  }

  @Test
  void verdictsAreThoseOfTheDocumentedWords() {
    assertEquals(
        "ok, too-few, insufficient, selective-opening, wrong-clock",
        SharedColumns.words(Verdict.class));
    assertEquals("since-start, 12-months, month", SharedColumns.words(Window.class));
    assertEquals("fleet, model, vessel", SharedColumns.words(Level.class));
  }
}
