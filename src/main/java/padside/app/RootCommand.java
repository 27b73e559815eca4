package padside.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.store.LogFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

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
      AddCommand.class,
      DemoCommand.class,
      HelpCommand.class
    },
    footer = {
      "",
      "Without a command the screens open. Every answer advises; the flier decides, with the"
          + " national safety code, local law, the site's rules and the range officer.",
      "Exit status: 0 done, 1 a file or folder failed, 2 wrong input, 3 NO-GO, 4 UNKNOWN."
    })
final class RootCommand implements Callable<Integer> {
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

  /** Opens the log named, else the flier's own. */
  LogFolder openLog() throws Fault {
    return LogFolder.open(folderOr(Folders.of(System.getenv()).log()), new ThisMachine());
  }

  /** The version, for {@code --version}. */
  static final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Padside " + Version.text()};
    }
  }
}
