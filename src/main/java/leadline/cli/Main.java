package leadline.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import picocli.CommandLine;

/** The program's entry: the one class that ends the process. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int exit = run(new Console(out, err), Surroundings.ofThisProcess(Clock.systemUTC()), arguments);
    out.flush();
    err.flush();
    System.exit(exit);
  }

  /** Runs one command and returns its exit code. */
  static int run(Console console, Surroundings surroundings, String... arguments) {
    return new CommandLine(new LeadlineCommand(console, surroundings))
        .setOut(console.out())
        .setErr(console.err())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(new Faults(console))
        .execute(arguments);
  }
}
