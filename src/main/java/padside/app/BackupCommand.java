package padside.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.store.Backup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Backs the log up. */
@Command(
    name = "backup",
    description = "Looks through the log, backs it up and reads the backup back.",
    footer = {
      "",
      "Without FOLDER the backup goes beside the log and to the second medium of the settings"
          + " (backup.second). Journals there are only added to; of the snapshots the newest seven"
          + " and the newest of each of twelve months stay.",
      "Exit status: 0 done, 1 a backup could not be made or the log is not well, 2 wrong input."
    })
final class BackupCommand implements Callable<Integer> {
  @Mixin private Output output;
  @ParentCommand private RootCommand root;

  @Parameters(
      arity = "0..1",
      paramLabel = "FOLDER",
      description = "back up to padside-backup in this folder instead")
  private Path folder;

  @Override
  public Integer call() throws Fault {
    Path log = root.existingLog();
    Backup.Result result = Backup.of(log, new ThisMachine(), targets(log));
    output.print(
        json(result),
        () -> result.places().stream().flatMap(each -> words(each).stream()).toList());
    LeavingBackup.remarks(result).forEach(root::tell);
    boolean done = result.places().stream().allMatch(each -> each.fault().isEmpty());
    return done && result.remark().isEmpty() ? Exit.DONE : Exit.FAULT;
  }

  private List<Backup.Target> targets(Path log) {
    if (folder != null) {
      return List.of(new Backup.Target(folder, false));
    }
    return LeavingBackup.targets(log, root.settings());
  }

  /** What came of one target, in a line; nothing where it failed. */
  private static Optional<String> words(Backup.Kept kept) {
    return kept.snapshot()
        .map(
            snapshot ->
                (kept.changed() ? "Backed up and read back: " : "Nothing new; read back: ")
                    + kept.lines()
                    + " lines in "
                    + kept.place().resolve(snapshot)
                    + (kept.whole() ? "." : ", which lacks something that was once kept."));
  }

  private static Map<String, Object> json(Backup.Result result) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("well", result.remark().isEmpty());
    json.put("backups", result.places().stream().map(BackupCommand::json).toList());
    return json;
  }

  private static Map<String, Object> json(Backup.Kept kept) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("folder", kept.place().toString());
    json.put("snapshot", kept.snapshot().orElse(null));
    json.put("lines", kept.fault().isPresent() ? null : kept.lines());
    json.put("changed", kept.changed());
    json.put("whole", kept.whole());
    json.put("told", new ArrayList<>(kept.told()));
    json.put("fault", kept.fault().map(Fault::sentence).orElse(null));
    return json;
  }
}
