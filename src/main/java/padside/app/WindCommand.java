package padside.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.units.Notations;
import padside.units.PrintableText;
import padside.units.TimeSpan;
import padside.units.Wind;
import padside.units.WindNotation;
import padside.wire.MadeWind;
import padside.wire.WireLine;
import padside.wire.WireWindow;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Tells mean and gust of a wind meter that sends lines. */
@Command(
    name = "wind",
    description =
        "Mean and gust of a wind meter that sends lines, told again with each line as it comes;"
            + " such as \"9 gusting 12 mph from W\". Nothing is kept in the log.",
    footer = {
      "",
      "A line: \"wind 4.2 m/s 270\", \"wind 9 mph W\", or MWV of NMEA 0183. Others are counted.",
      "Exit status: 0 the lines ended, 1 it could not be read or no line was a reading, 2 wrong"
          + " input."
    })
final class WindCommand implements Callable<Integer> {
  private static final long LINE_MILLIS = 1_000;

  @Spec private CommandSpec spec;
  @ParentCommand private RootCommand root;

  @Parameters(
      arity = "0..1",
      paramLabel = "SOURCE",
      description = "serial device or named pipe (standard input if none)")
  private Path source;

  @Option(
      names = "--minutes",
      paramLabel = "N",
      defaultValue = "2",
      description = "average over so many minutes, 1 to 60 (2, as at aerodromes)")
  private int minutes;

  @Option(
      names = "--simulate",
      description = "send lines of a made-up meter instead, one a second, to try this with")
  private boolean simulate;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "another made-up wind")
  private long seed;

  @Option(
      names = "--lines",
      paramLabel = "N",
      defaultValue = "0",
      description = "end after so many made-up lines (never)")
  private long most;

  @Override
  public Integer call() throws Fault {
    if (simulate) {
      return simulated();
    }
    if (minutes < 1 || minutes > WindSource.MOST_MINUTES) {
      spec.commandLine()
          .getErr()
          .println("--minutes is 1 to " + WindSource.MOST_MINUTES + ", not " + minutes + ".");
      return Exit.USAGE;
    }
    try (WireLines lines = new WireLines(opened())) {
      return follow(lines);
    } catch (IOException e) {
      throw new Fault(
          "wind-source",
          "The wind meter's lines cannot be read from " + name() + ".",
          "Look whether it is plugged in and yours to read, then start this again.");
    }
  }

  private String name() {
    return source == null ? "standard input" : source.toString();
  }

  private InputStream opened() throws IOException {
    return source == null ? System.in : Files.newInputStream(source);
  }

  private int follow(WireLines lines) throws IOException, Fault {
    WireWindow window = new WireWindow(TimeSpan.ofMinutes(minutes));
    ThisMachine machine = new ThisMachine();
    WindNotation notation = Notations.wind(root.settings().settings().units());
    long others = 0;
    for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
      Optional<Wind> read = WireLine.read(line.get());
      if (read.isEmpty()) {
        others++;
        continue;
      }
      double now = machine.uptimeSeconds();
      Optional<TimeSpan> silence = window.silence(now);
      window.add(now, read.get());
      print(notation.show(window.wind().orElseThrow()) + doubts(window, silence));
    }
    return ended(window, others);
  }

  /** What keeps the wind told from being mean and gust as they are meant. */
  private static String doubts(WireWindow window, Optional<TimeSpan> silence) {
    String gusts =
        window.missesGusts()
            ? "; a reading takes longer than 3 s to come, gusts between them are missed"
            : "";
    String first = window.tellsGusts() ? "" : "; too few readings yet to tell a gust";
    return silence
            .filter(each -> each.seconds() > WireWindow.STALE.seconds())
            .map(each -> "; silent for " + Math.round(each.seconds()) + " s before")
            .orElse("")
        + (first.isEmpty() ? gusts : first);
  }

  private int ended(WireWindow window, long others) throws Fault {
    if (window.wind().isEmpty()) {
      throw new Fault(
          "no-wind",
          "No reading came from " + name() + ", only " + counted(others, "other line") + ".",
          "A line is like \"wind 4.2 m/s 270\", or MWV of NMEA 0183; the speed of a serial device"
              + " is set with stty.");
    }
    if (others > 0) {
      String were = others == 1 ? " was no reading and is" : " were no readings and are";
      root.tell(counted(others, "line") + " from " + name() + were + " left out.");
    }
    return Exit.DONE;
  }

  private static String counted(long lines, String noun) {
    return lines + " " + noun + (lines == 1 ? "" : "s");
  }

  private int simulated() {
    MadeWind wind = new MadeWind(seed);
    for (long sent = 1; print(wind.next()) && sent != most; sent++) {
      try {
        Thread.sleep(LINE_MILLIS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    return Exit.DONE;
  }

  /** Whether somebody still listens. */
  private boolean print(String line) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(PrintableText.of(line));
    return !out.checkError();
  }
}
