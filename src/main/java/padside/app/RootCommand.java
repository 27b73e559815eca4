package padside.app;

import java.util.concurrent.Callable;
import padside.flight.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Mixin;
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
  @Mixin private LogOption log;

  @Override
  public Integer call() throws Fault {
    return ScreensRun.over(log.folder());
  }

  /** The version, for {@code --version}. */
  static final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Padside " + Version.text()};
    }
  }
}
