package leadline.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import leadline.quantity.ReportMonth;
import picocli.CommandLine;

/** The program's entry: the one class that ends the process. */
public final class Main {

  /** The launcher says whether standard error is a terminal; Java cannot tell before release 22. */
  private static final String TERMINAL_PROPERTY = "leadline.terminal";

  private Main() {}

  public static void main(String[] arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    Console.Reader reader =
        Boolean.getBoolean(TERMINAL_PROPERTY) ? Console.Reader.PERSON : Console.Reader.SCHEDULER;
    int exit =
        run(
            new Console(out, err, reader),
            Surroundings.ofThisProcess(Clock.systemUTC()),
            arguments);
    out.flush();
    err.flush();
    System.exit(exit);
  }

  /** Runs one command and returns its exit code. */
  static int run(Console console, Surroundings surroundings, String... arguments) {
    CommandLine program =
        new CommandLine(new LeadlineCommand(console, surroundings))
            .setOut(console.out())
            .setErr(console.err())
            .registerConverter(ReportMonth.class, new EndedMonth(surroundings.clock()))
            .registerConverter(Instant.class, new PastMoment(surroundings.clock()))
            .setParameterExceptionHandler(new Misuse(console))
            .setExecutionExceptionHandler(new Faults(console));
    HelpPages.complete(program);
    return program.execute(arguments);
  }
}
