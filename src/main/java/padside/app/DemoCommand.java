package padside.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Opens the screens on a made-up season in a log of its own. */
@Command(
    name = "demo",
    description = "Opens the screens on a made-up season in a log of its own.",
    footer = {
      "",
      "The season is kept in padside/demo in the user's data folder, or where --log says.",
      "The season is invented; its altitudes come from the flight model with a seeded scatter.",
      "Your own log is not touched. Exit status: 0 done, 1 a folder failed."
    })
final class DemoCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @ParentCommand private RootCommand root;

  @Option(names = "--no-screens", description = "only write the season, don't open the screens")
  private boolean noScreens;

  @Override
  public Integer call() throws Fault {
    Path season = root.folderOr(Folders.of(System.getenv()).demo());
    if (DemoFolder.isToBeWritten(season)) {
      spec.commandLine().getErr().println("Writing the made-up season into " + season + " …");
      spec.commandLine().getErr().flush();
      DemoFolder.write(season);
    }
    if (noScreens) {
      spec.commandLine().getOut().println("The made-up season is in " + season);
      return Exit.DONE;
    }
    return ScreensRun.overSeason(season, root.where());
  }
}
