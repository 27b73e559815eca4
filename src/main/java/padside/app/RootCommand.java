package padside.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.store.LogFolder;
import padside.units.PrintableText;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command without a name opens the screens. */
@Command(
    name = "padside",
    mixinStandardHelpOptions = true,
    scope = ScopeType.INHERIT,
    versionProvider = RootCommand.VersionLine.class,
    description = "A pad-side flight log for model rockets with a live wind check.",
    subcommands = {
      PredictCommand.class,
      CheckCommand.class,
      FlightsCommand.class,
      LotsCommand.class,
      PlanCommand.class,
      AddCommand.class,
      ImportCommand.class,
      TraceCommand.class,
      WindCommand.class,
      ExportCommand.class,
      ReportCommand.class,
      BackupCommand.class,
      RestoreCommand.class,
      SyncCommand.class,
      DoctorCommand.class,
      DemoCommand.class,
      SettingsCommand.class,
      ManualCommand.class,
      HelpCommand.class
    },
    footer = {
      "",
      "Without a command the screens open. Every answer advises; the flier decides, with the"
          + " national safety code, local law, the site's rules and the range officer.",
      "Exit status: 0 done, 1 a file or folder failed, 2 wrong input, 3 NO-GO, 4 UNKNOWN."
    })
final class RootCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--log",
      paramLabel = "FOLDER",
      scope = ScopeType.INHERIT,
      description = "the log's folder (padside/log in the user's data folder)")
  private Path folder;

  @Override
  public Integer call() throws Fault {
    return ScreensRun.over(folderOr(Folders.of(System.getenv()).log()));
  }

  /** The folder named, else another. */
  Path folderOr(Path usual) {
    return folder == null ? usual : folder;
  }

  /** Opens the log named, else the flier's own; begins it where there is none. */
  LogFolder openLog() throws Fault {
    LogFolder log = LogFolder.open(logFolder(), new ThisMachine());
    log.notices().forEach(this::tell);
    return log;
  }

  /** Says a step of what is being done, at once. */
  void say(String sentence) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(PrintableText.of(sentence));
    out.flush();
  }

  /** Tells, beside what a command answers, what the flier ought to know. */
  void tell(String sentence) {
    spec.commandLine().getErr().println("padside: " + PrintableText.of(sentence));
  }

  /** The flier's settings; what of them could not be taken is told. */
  SettingsFile settings() {
    SettingsFile settings = SettingsFile.own();
    settings.told().forEach(this::tell);
    return settings;
  }

  /** As {@link #openLog} to look something up: no log is begun for that. */
  LogFolder openLogToRead() throws Fault {
    LogFolder log = LogFolder.openOrRead(existingLog(), new ThisMachine(), Folders.temporary());
    log.notices().forEach(this::tell);
    log.refusal().ifPresent(refusal -> tell(refusal.fault().sentence() + " It is only read."));
    return log;
  }

  /** The log's folder, where one has been begun in it. */
  Path existingLog() throws Fault {
    if (!LogFolder.isIn(logFolder())) {
      throw new Fault(
          "no-log",
          "There is no log in " + logFolder() + " yet.",
          "Begin one with padside, or name another folder with --log.");
    }
    return logFolder();
  }

  /** The folder named, else that of the flier's own log. */
  Path logFolder() {
    return folderOr(Folders.of(System.getenv()).log());
  }

  /** The version, for {@code --version}. */
  static final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Padside " + Version.text()};
    }
  }
}
