package padside.app;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Supplier;
import padside.units.PrintableText;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How a command's answer is printed: for people, or as JSON. */
final class Output {
  /** Characters a line of text takes at most. */
  static final int WIDTH = 78;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(names = "--json", description = "answer in JSON: SI, units in the names")
  private boolean json;

  /** Prints the object as JSON or the lines as text, as asked. */
  void print(Object object, Supplier<List<String>> lines) {
    PrintWriter out = command.commandLine().getOut();
    if (json) {
      out.println(text(object));
    } else {
      lines.get().forEach(line -> out.println(PrintableText.of(line)));
    }
    out.flush();
  }

  private static String text(Object object) {
    try {
      return JSON.std
          .with(JSON.Feature.PRETTY_PRINT_OUTPUT)
          .with(JSON.Feature.WRITE_NULL_PROPERTIES)
          .asString(object);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
