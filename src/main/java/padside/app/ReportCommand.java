package padside.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.page.HtmlPage;
import padside.page.Page;
import padside.page.Table;
import padside.page.TextPage;
import padside.report.PageKind;
import padside.report.Pages;
import padside.report.Sheet;
import padside.units.Reading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Makes pages worth keeping. */
@Command(
    name = "report",
    description = "Makes a page worth keeping, of as many flights as the log has.",
    footer = {
      "",
      "WHICH: for day and failure a date; for rocket its name; for season and motors a year, dates"
          + " such as 2026-03-01..2026-10-31, or all. Without it the last there is.",
      "Example: padside report season 2026 --html season.html",
      "The HTML is one file that needs no network, to be read or printed.",
      "Exit status: 0 done, 1 the log or a file failed, 2 wrong input."
    })
final class ReportCommand implements Callable<Integer> {
  private static final String STANDARD_OUTPUT = "-";

  @ParentCommand private RootCommand root;
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "PAGE",
      description = "day, rocket, season, motors, failure, cards or keys")
  private String kind;

  @Parameters(index = "1..*", arity = "0..*", paramLabel = "WHICH", description = "of which")
  private List<String> which = List.of();

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "as a web page into this file; - is standard output")
  private String html;

  @Option(names = "--text", description = "as text on standard output (unless another is asked)")
  private boolean text;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "its tables for a spreadsheet, one below the other; - is standard output")
  private String csv;

  @Option(
      names = "--table",
      paramLabel = "NUMBER",
      description = "with --csv only this table, counted from 1, with nothing above it")
  private Integer table;

  @Option(names = "--replace", description = "put it in the place of a file that is there")
  private boolean replace;

  @Override
  public Integer call() throws Fault {
    PageKind wanted =
        PageKind.find(kind.strip().toLowerCase(Locale.ROOT))
            .orElseThrow(() -> refused("There is no page \"" + kind + "\"; " + known()));
    if (table != null && csv == null) {
      throw refused("--table is for --csv; name a file with that.");
    }
    Page page = page(wanted);
    if (csv != null) {
      put(csv, csv(page.tables()));
    }
    if (html != null) {
      put(html, HtmlPage.of(page));
    }
    if (text || (html == null && csv == null)) {
      print(
          TextPage.lines(page, TextPage.USUAL_WIDTH).stream()
              .map(line -> line.text() + System.lineSeparator())
              .collect(Collectors.joining()));
    }
    return Exit.DONE;
  }

  private static String known() {
    return "choose one of "
        + Stream.of(PageKind.values()).map(PageKind::code).collect(Collectors.joining(", "))
        + ".";
  }

  private Page page(PageKind wanted) throws Fault {
    try (FlightLog log = root.openLogToRead()) {
      Reading<Page> page =
          Pages.of(
              wanted, String.join(" ", which), ReportSource.of(log, root.settings().settings()));
      return page.value().orElseThrow(() -> refused(page.objection().orElseThrow()));
    }
  }

  private String csv(List<Table> tables) {
    if (table == null) {
      return Sheet.csv(tables);
    }
    if (table < 1 || table > tables.size()) {
      throw refused("--table is " + table + "; this page has " + tables.size() + " tables.");
    }
    return Sheet.of(tables.get(table - 1)).csv();
  }

  private void put(String place, String content) throws Fault {
    if (place.equals(STANDARD_OUTPUT)) {
      print(content);
      return;
    }
    NewFile file = new NewFile(Path.of(place));
    try {
      if (replace) {
        file.replace(content);
      } else {
        file.write(content);
      }
    } catch (NewFile.AlreadyThere e) {
      throw refused(e.sentence("say --replace, "));
    }
    root.tell("Written to " + place + ".");
  }

  private void print(String content) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(content);
    out.flush();
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
