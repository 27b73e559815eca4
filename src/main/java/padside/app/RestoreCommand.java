package padside.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.store.Restore;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Brings a backup into the log. */
@Command(
    name = "restore",
    description = "Brings a backup into the log and reads it back.",
    footer = {
      "",
      "Into an empty or missing log everything is brought; into one with lines the backup lacks"
          + " only with --add. What the log has is never removed or overwritten.",
      "Exit status: 0 done, 1 something of the backup is lost or the log could not be written,"
          + " 2 wrong input."
    })
final class RestoreCommand implements Callable<Integer> {
  @ParentCommand private RootCommand root;

  @Parameters(
      paramLabel = "BACKUP",
      description = "a folder padside-backup, the folder that holds it, or one snapshot")
  private Path backup;

  @Option(names = "--dry-run", description = "only look and say; write nothing")
  private boolean dryRun;

  @Option(names = "--add", description = "bring what the log lacks beside what only the log has")
  private boolean add;

  @Override
  public Integer call() throws Fault {
    boolean all =
        Restore.into(
            root.logFolder(),
            new ThisMachine(),
            new Restore.Wanted(backup, dryRun, add),
            root::say);
    return all ? Exit.DONE : Exit.FAULT;
  }
}
