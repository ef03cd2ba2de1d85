package leadline.cli;

/** What the program's exit says, by whose turn it is. */
enum ExitCode {
  DONE(0),
  /** A fault of the program. */
  UNEXPECTED(1),
  /** The command line, the settings or an input file must be mended first. */
  UNUSABLE_INPUT(2),
  /** The lake is in use; trying again later will do. */
  TRY_AGAIN(75);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  int number() {
    return number;
  }
}
