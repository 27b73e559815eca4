package padside.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import padside.fact.Fault;
import padside.units.PrintableText;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** One run of the command line: what was typed, put to its command; how it ended, in a sentence. */
final class CommandRun {
  /** A mistake of the program's own, or that it has no terminal. */
  private Optional<RuntimeException> bug = Optional.empty();

  private CommandRun() {}

  /** Runs the command line; returns the exit status. */
  static int of(String... arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    return of(out, err, arguments);
  }

  static int of(PrintWriter out, PrintWriter err, String... arguments) {
    return new CommandRun().run(out, err, arguments);
  }

  private int run(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = new CommandLine(new RootCommand());
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(true);
    // A value below zero is one that the setting refuses in its own words, and no option.
    line.getSubcommands().get("settings").setUnmatchedOptionsArePositionalParams(true);
    line.setExecutionExceptionHandler((failure, command, parsed) -> told(failure, command));
    line.setParameterExceptionHandler(
        (refused, typed) -> refused(refused.getMessage(), refused.getCommandLine()));
    int status = line.execute(arguments);
    if (bug.isPresent()) {
      throw bug.get(); // picocli would print where it came from
    }
    return status;
  }

  private int told(Exception failure, CommandLine command) {
    if (failure instanceof Fault fault) {
      fault
          .sentence()
          .lines()
          .forEach(line -> command.getErr().println("padside: " + PrintableText.of(line)));
      command.getErr().println(PrintableText.of(fault.nextStep()));
      return Exit.FAULT;
    }
    if (failure instanceof TypeConversionException unreadable) {
      return refused(unreadable.getMessage(), command);
    }
    bug =
        Optional.of(failure instanceof RuntimeException e ? e : new IllegalStateException(failure));
    return Exit.BUG;
  }

  private static int refused(String sentence, CommandLine command) {
    command.getErr().println("padside: " + PrintableText.of(sentence));
    command.getErr().println("See " + command.getCommandSpec().qualifiedName() + " --help.");
    return Exit.USAGE;
  }
}
