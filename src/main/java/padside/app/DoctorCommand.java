package padside.app;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.store.Doctor;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Looks through the log and mends it. */
@Command(
    name = "doctor",
    description = "Looks through the log step by step and mends what can be mended.",
    footer = {
      "",
      "Every line of every journal is read, the database is held against them, and what is damaged"
          + " or missing is looked for in the database, in those set aside and in the folders named"
          + " with --from. Journals are never changed: what is mended goes into new ones.",
      "Exit status: 0 all is well, or well again; 1 something is lost or left; 2 wrong input."
    })
final class DoctorCommand implements Callable<Integer> {
  @ParentCommand private RootCommand root;

  @Option(names = "--dry-run", description = "only look and say; write nothing")
  private boolean dryRun;

  @Option(
      names = "--from",
      paramLabel = "FOLDER",
      description = "look there too: a backup, a stick, another log; may be given several times")
  private List<Path> from = List.of();

  @Override
  public Integer call() throws Fault {
    boolean well =
        Doctor.look(
            root.existingLog(), new ThisMachine(), new Doctor.Visit(from, dryRun), root::say);
    return well ? Exit.DONE : Exit.FAULT;
  }
}
