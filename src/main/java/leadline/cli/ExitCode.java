package leadline.cli;

/** What the program's exit says, by whose turn it is. */
enum ExitCode {
  DONE(0, "done"),
  UNEXPECTED(1, "a fault of the program"),
  UNUSABLE_INPUT(2, "command line, settings or an input file to mend"),
  REFUSED(3, "refused by a quality gate"),
  TRY_AGAIN(75, "the lake is in use: try again later");

  private final int number;
  private final String meaning;

  ExitCode(int number, String meaning) {
    this.number = number;
    this.meaning = meaning;
  }

  int number() {
    return number;
  }

  String meaning() {
    return meaning;
  }
}
