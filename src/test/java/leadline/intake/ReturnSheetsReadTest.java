package leadline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import leadline.fleet.Answer;
import leadline.fleet.Cells;
import leadline.fleet.RecordKind;
import leadline.fleet.ReturnLayout;
import leadline.fleet.ReturnedRow;
import leadline.fleet.Statement;
import leadline.quantity.Days;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules by which the cells of a return sheet go together, each row written by hand. */
class ReturnSheetsReadTest {

  private static final String HEADER =
      "vessel,row,about,answer,overhaul,machine,component,unit,place,done_on,machine_hours,reason,"
          + "part,opened,found,action,remark,answered_on\n";

  @Test
  void aQuestionAnsweredAsItIsMeant() {
    Cells row =
        read("V1,Q-1,question,corrected,O1,,,,,,,,nozzle,yes,worn,,,2024-03-02").cells().get(0);
    assertEquals(ReturnedRow.QUESTION, row.need(ReturnLayout.ABOUT));
    assertEquals(Answer.CORRECTED, row.need(ReturnLayout.ANSWER));
    assertEquals(Statement.YES, row.need(ReturnLayout.OPENED));
    assertEquals(Days.endOf(LocalDate.of(2024, 3, 2)), row.need(ReturnLayout.ANSWERED_ON));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // nothing filled in, with and without an overhaul
        "V1,Q-1,question,,,,,,,,,,,,,,,",
        "V1,D-1,due-overhaul,,D-1,ME,fuel-injector,1,2,,,,,,,,,",
        "V1,D-1 nozzle,due-overhaul,,D-1,ME,fuel-injector,1,2,,,,nozzle,,,,,",
        // a word or a day alone changes nothing
        "V1,Q-1,question,,,,,,,,,,,,,,we will see,2024-03-01",
        // what each row is for
        "V1,Q-1,question,as-written,,,,,,,,,,,,,,2024-03-01",
        "V1,Q-1,question,cancelled,O1,,,,,,,,nozzle,,,,,2024-03-01",
        "V1,Q-1,question,,O1,,,1,2,,,,,,,,,2024-03-01",
        "V1,D-1,due-overhaul,,D-1,ME,fuel-injector,1,2,2024-03-01,8000,planned,,,,,,2024-03-01",
        "V1,D-1 nozzle,due-overhaul,,D-1,ME,fuel-injector,1,2,,,,nozzle,no,,,,2024-03-01"
      })
  void rowsThatAreStored(String row) {
    assertEquals(List.of(), read(row).refusals());
    assertEquals(1, read(row).tally().stored());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "V1,Q-1,question,,O1,,,,,,,,nozzle,yes,,,,| needed-beside answered_on",
        "V1,Q-1,question,as-written,,,,,,,,,,,,,,| needed-beside answered_on",
        "V1,Q-1,question,,,,,,,,,,nozzle,yes,,,,2024-03-01| needed-beside overhaul",
        "V1,Q-1,question,cancelled,,,,,,,,,,,,,,2024-03-01| needed-beside overhaul",
        "V1,Q-1,question,,O1,,,,,,8000,,nozzle,yes,,,,2024-03-01| of-the-overhaul machine_hours",
        "V1,Q-1,question,,O1,,,,,,,,,,worn,,,2024-03-01| of-a-part found",
        "V1,Q-1,question,as-written,O1,,,,,,,,nozzle,,worn,,,2024-03-01| right-and-changed found",
        "V1,Q-1,question,corrected,O1,,,,,,,,nozzle,,,,,2024-03-01| nothing-corrected answer",
        "V1,D-1,due-overhaul,as-written,D-1,ME,fuel-injector,1,2,,,,,,,,,2024-03-01|"
            + " nothing-asked answer",
        "V1,D-1,due-overhaul,,D-1,ME,fuel-injector,1,2,,8000,,,,,,,2024-03-01|"
            + " 'needed-beside done_on, needed-beside reason'",
        "V1,D-1,due-overhaul,,D-1,,,1,2,2024-03-01,8000,planned,,,,,,2024-03-01|"
            + " 'needed-beside machine, needed-beside component'",
        "V1,Q-1,question,perhaps,O1,,,,,,,,nozzle,,worn,,,| unknown-word answer",
        "V1,Q-1,question,,O1,,,,,2024-02-30,,,,,,,,| no-such-date done_on"
      })
  void rowsThatAreRefused(String row, String rules) {
    assertEquals(List.of("2: " + rules), read(row).refusals());
  }

  @Test
  void aRefusalSaysWhatToDo() {
    assertEquals(
        List.of(
            "returns.csv, line 2, column machine_hours: machine_hours is of the overhaul, and this"
                + " row is of its nozzle alone: write it in the overhaul's own row, and leave it"
                + " empty here."),
        read("V1,Q-1,question,,O1,,,,,,8000,,nozzle,yes,,,,2024-03-01")
            .refused()
            .get(0)
            .sentences());
    assertEquals(
        List.of(
            "returns.csv, line 2, column answered_on: answered_on is empty, though opened is filled"
                + " in: fill in both, or neither."),
        read("V1,Q-1,question,,O1,,,,,,,,nozzle,yes,,,,").refused().get(0).sentences());
  }

  @Test
  void guardedTextsAreReadAsTheyWereMeant() {
    Cells row =
        read("V1,Q-1,question,corrected,'=O1,,,,,,,,nozzle,yes,,,'+ as said,2024-03-02")
            .cells()
            .get(0);
    assertEquals("=O1", row.need(ReturnLayout.OVERHAUL));
    assertEquals("+ as said", row.need(ReturnLayout.REMARK));
  }

  @Test
  void noOtherExportIsUnguarded() {
    ReadExport hours =
        ReadExport.of(
            RecordKind.STOCK, "vessel,part,counted_on,on_hand\n'=V1,nozzle,2024-03-01,4\n");
    assertTrue(hours.cells().get(0).key().contains("'=V1"));
  }

  private static ReadExport read(String row) {
    return ReadExport.of(RecordKind.RETURNS, HEADER + row + "\n");
  }
}
