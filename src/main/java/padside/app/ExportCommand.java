package padside.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.report.GeoJson;
import padside.report.JsonText;
import padside.report.Sheet;
import padside.report.WholeLog;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Writes what the log holds for other programs. */
@Command(
    name = "export",
    description = "Writes the log's content for a spreadsheet, a map or another log.",
    footer = {
      "",
      "Example: padside export --csv --to flights.csv",
      "Values are in SI with the unit in each name; removed records stay out. padside import reads"
          + " the flights of --csv back, padside add the whole log of --json.",
      "Exit status: 0 done, 1 the log or the file failed, 2 wrong input."
    })
final class ExportCommand implements Callable<Integer> {
  @ParentCommand private RootCommand root;
  @Spec private CommandSpec spec;

  @ArgGroup(multiplicity = "1")
  private Form form;

  /** In which of its forms. */
  static final class Form {
    @Option(names = "--csv", required = true, description = "a table, one line a record")
    private boolean csv;

    @Option(names = "--json", required = true, description = "the whole log, by kind")
    private boolean json;

    @Option(
        names = "--geojson",
        required = true,
        description = "pads, field edges, hazards and landings with known coordinates")
    private boolean geoJson;
  }

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = "with --csv which records: flight (usual), rocket, lot, day, weather, ...")
  private String kind;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "a file that is not there yet (standard output)")
  private Path file;

  @Override
  public Integer call() throws Fault {
    if (kind != null && !form.csv) {
      throw refused("--kind is for --csv; the other forms hold every kind. Leave it out.");
    }
    Kind wanted =
        kind == null
            ? Kind.FLIGHT
            : KindNamed.find(kind.strip().toLowerCase(Locale.ROOT), kind, this::refused);
    String text;
    try (FlightLog log = root.openLogToRead()) {
      text = text(wanted, log);
    }
    if (file == null) {
      PrintWriter out = spec.commandLine().getOut();
      out.print(text);
      out.flush();
    } else {
      write(text);
    }
    return Exit.DONE;
  }

  private String text(Kind wanted, FlightLog log) throws Fault {
    if (form.json) {
      return JsonText.pretty(WholeLog.of(log)) + "\n";
    }
    if (form.geoJson) {
      GeoJson drawn = GeoJson.of(log);
      drawn.leftOut().forEach(root::tell);
      return JsonText.pretty(drawn.collection()) + "\n";
    }
    return Sheet.of(wanted, log).csv();
  }

  private void write(String text) throws Fault {
    try {
      new NewFile(file).write(text);
    } catch (NewFile.AlreadyThere e) {
      throw refused(e.sentence(""));
    }
    root.tell("Written to " + file + ".");
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
