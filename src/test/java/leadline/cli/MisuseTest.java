package leadline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A command line that cannot be followed: what is wrong, where its help is, and exit code 2. */
class MisuseTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          ''                                   | Name a command: run, ingest, withdraw, compute, publish, tidy, estimate, check, sample.
          bogus                                | There is no command 'bogus'.
          help ingest                          | There is no command 'help'.
          --bogus                              | There is no option '--bogus'.
          ingest                               | Missing required option: '--lake=LAKE'
          ingest --lake a                      | Missing required option: '--inbox=DIR'
          withdraw --lake a                    | Missing required parameter: 'BATCH'
          ingest --bogus                       | There is no option '--bogus'.
          ingest --inbx a --lake b             | There is no option '--inbx'.
          ingest --inbox                       | Missing required parameter for option '--inbox' (DIR)
          ingest --inbox a --lake b c          | There is no use here for 'c'.
          ingest --inbox a --lake b --wait ten | Invalid value for option '--wait': 'ten' is not a whole number of seconds from 0 to 86400
          ingest --inbox a --lake b --wait -5  | Invalid value for option '--wait': '-5' is not a whole number of seconds from 0 to 86400
          compute --lake a --month 2024-13     | Invalid value for option '--month': '2024-13' is not a month such as 2026-10
          compute --lake a --month October     | Invalid value for option '--month': 'October' is not a month such as 2026-10
          compute --lake a --month 2025-02     | Invalid value for option '--month': 2025-02 has not ended: name a month up to 2025-01
          compute --lake a --month 2024-12 --known-at yesterday        | Invalid value for option '--known-at': 'yesterday' is not a moment with its offset, such as 2026-11-05T06:00:00Z
          compute --lake a --month 2024-12 --known-at 2025-01-05       | Invalid value for option '--known-at': '2025-01-05' is not a moment with its offset, such as 2026-11-05T06:00:00Z
          publish --lake a --month 2025-02 --out c                     | Invalid value for option '--month': 2025-02 has not ended: name a month up to 2025-01
          publish --lake a --month 2024-12                             | Missing required option: '--out=DIR'
          tidy --lake a --older-than week      | Invalid value for option '--older-than': 'week' is not a time such as 7d, 12h or 30m
          tidy --lake a --older-than -1d       | Invalid value for option '--older-than': '-1d' is not a time such as 7d, 12h or 30m
          tidy --lake a --keep-runs 0          | Invalid value for option '--keep-runs': '0' is not a whole number from 1 to 9999
          run                                  | Missing required parameter: 'JOBFILE'
          run a b                              | There is no use here for 'b'.
          check --lakes a                      | There is no option '--lakes'.
          """)
  void saysWhatIsWrongAndWhereTheHelpIs(String line, String message) {
    String[] arguments = line.equals("''") ? new String[0] : line.split(" ");
    String command =
        line.matches("(run|ingest|withdraw|compute|publish|tidy|check)\\b.*")
            ? " " + arguments[0]
            : "";
    Ran ran = Program.forScheduler().run((Object[]) arguments);

    ran.exitedWith(2, message, "Try 'leadline" + command + " --help'.");
    assertEquals("", ran.out());
  }

  @Test
  void aMomentThatHasNotComeCannotBeKnownAt() {
    Ran ran =
        Program.forScheduler()
            .run("compute", "--lake", "a", "--month", "2024-12", "--known-at", "2025-02-02T00:00Z");

    assertEquals(2, ran.exit());
    assertEquals(
        "Invalid value for option '--known-at': '2025-02-02T00:00Z' has not come: name a moment up"
            + " to now, 2025-02-01T06:00:0",
        ran.err().substring(0, 116));
  }

  @Test
  void aRunIsNamedOrFoundByWhatWasKnownAndNotBoth() {
    Program.forScheduler()
        .run(
            "publish",
            "--lake",
            "a",
            "--month",
            "2024-12",
            "--out",
            "b",
            "--run",
            "c",
            "--known-at",
            "2025-01-05T00:00Z")
        .exitedWith(
            2,
            "Error: --known-at=TIME, --run=RUN are mutually exclusive (specify only one)",
            "Try 'leadline publish --help'.");
  }

  @Test
  void theVersionIsToldByTheProgramAlone() {
    assertEquals("leadline 0.1.0\n", Program.forScheduler().run("--version").clean().out());
    Program.forScheduler()
        .run("ingest", "--version")
        .exitedWith(2, "There is no option '--version'.", "Try 'leadline ingest --help'.");
  }
}
