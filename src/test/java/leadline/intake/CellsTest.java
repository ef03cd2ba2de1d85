package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.Action;
import leadline.fleet.CellType;
import leadline.fleet.Cells;
import leadline.fleet.Column;
import leadline.fleet.FindingLayout;
import leadline.fleet.FoundWord;
import leadline.fleet.RecordKind;
import leadline.fleet.Statement;
import leadline.problem.RowFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellsTest {

  private static final String HEADER =
      "vessel,overhaul,part,mode_no,opened,found,action,hours_since_new,remark\n";

  private static ReadExport findings(String row) {
    return ReadExport.of(RecordKind.FINDINGS, HEADER + row);
  }

  private static List<String> sentences(ReadExport read) {
    return read.refused().get(0).faults().stream().map(RowFault::sentence).toList();
  }

  @Test
  void emptyCellsAreAbsentAndAnEmptyModeIsTheFirst() {
    Cells cells = findings("V1,OH-1,nozzle,,,,,,\n").cells().get(0);
    assertEquals(1L, cells.need(FindingLayout.MODE_NO));
    assertEquals(Optional.empty(), cells.find(FindingLayout.OPENED));
    assertEquals(Optional.empty(), cells.find(FindingLayout.REMARK));
    assertEquals(List.of("V1", "OH-1", "nozzle", 1L), cells.key());
  }

  @Test
  void wordsAreReadAsWritten() {
    Cells cells = findings("V1,OH-1,nozzle,2,yes,worn,renewed,4000,x\n").cells().get(0);
    assertEquals(Statement.YES, cells.need(FindingLayout.OPENED));
    assertEquals(FoundWord.WORN, cells.need(FindingLayout.FOUND));
    assertEquals(Action.RENEWED, cells.need(FindingLayout.ACTION));
  }

  @Test
  void everyRuleThatARowBrokeIsSaid() {
    ReadExport read = findings(",OH-1,nozle,0,Yes,bust,,8550h,\n");
    assertEquals(
        List.of(
            "2: empty-cell vessel, unknown-part part, out-of-range mode_no, unknown-word opened,"
                + " unknown-word found, not-hours hours_since_new"),
        read.refusals());
    assertEquals(
        List.of(
            "vessel is empty: every row needs it, so fill it in.",
            "part \"nozle\" is not a part of the catalogue: write exactly one of main-spring,"
                + " nozzle, o-rings, seat, spindle.",
            "mode_no \"0\" is out of range: write a number from 1 to 99.",
            "opened \"Yes\" is not a word of this column: write exactly one of yes, no.",
            "found \"bust\" is not a word of this column: write exactly one of sound, worn, scored,"
                + " cracked, broken, corroded, eroded, deformed, stuck, leaking, blocked, missing.",
            "hours_since_new \"8550h\" is not running hours: write digits with a point before the"
                + " decimals and no sign, thousands separator, unit or exponent, as in 8550.5."),
        sentences(read));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Nozzle", "fuel-injector", "nozzle;seat"})
  void partsAreThoseOfTheCatalogue(String part) {
    assertEquals(
        List.of("2: unknown-part part"), findings("V1,OH-1," + part + ",,,,,,\n").refusals());
  }

  @Test
  void componentsAreThoseOfTheCatalogue() {
    ReadExport read =
        ReadExport.of(
            RecordKind.OVERHAULS,
            """
            vessel,overhaul,machine,component,done_on,reason
            V1,OH-1,ME,fuel-injector,2024-03-01,planned
            V1,OH-2,ME,injector,2024-03-01,planned
            """);
    assertEquals(List.of("3: unknown-component component"), read.refusals());
    assertEquals(
        List.of(
            "component \"injector\" is not a component of the catalogue: write exactly one of"
                + " exhaust-valve, fuel-injector."),
        sentences(read));
  }

  @Test
  void everyRequiredColumnMayNotBeEmpty() {
    ReadExport read =
        ReadExport.of(
            RecordKind.OVERHAULS,
            "vessel,overhaul,machine,component,done_on,reason,remark\n , ,,,,,\n");
    assertEquals(
        List.of(
            "2: empty-cell vessel, empty-cell overhaul, empty-cell machine, empty-cell component,"
                + " empty-cell done_on, empty-cell reason"),
        read.refusals());
  }

  @Test
  void everyColumnOfEveryLayoutHasAReader() {
    CellReaders readers = new CellReaders(ReadExport.CATALOGUE, ReadExport.NOW);
    Set<Class<?>> read = new HashSet<>();
    for (RecordKind kind : RecordKind.values()) {
      for (Column<?> column : kind.layout().columns()) {
        assertDoesNotThrow(() -> readers.of(column));
        read.add(column.type().getClass());
      }
    }
    assertEquals(
        Arrays.stream(CellType.class.getPermittedSubclasses()).collect(Collectors.toSet()), read);
  }
}
