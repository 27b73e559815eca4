package padside.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Fault;
import padside.store.Backup;
import padside.units.PrintableText;

/** The backup made when the screens are left after something was saved, and where backups go. */
record LeavingBackup(Optional<String> done, List<String> failed) {
  /** Beside the log, and on the second medium of the settings. */
  static List<Backup.Target> targets(Path log, SettingsFile settings) {
    List<Backup.Target> targets = new ArrayList<>();
    targets.add(new Backup.Target(Backup.beside(log), true));
    settings.secondBackup().map(each -> new Backup.Target(each, false)).ifPresent(targets::add);
    return targets;
  }

  /** Backs up what changed. */
  private static LeavingBackup of(Path log, SettingsFile settings) {
    try {
      Backup.Result result = Backup.ofWhatChanged(log, new ThisMachine(), targets(log, settings));
      String places =
          String.join(
              " and ",
              result.places().stream()
                  .filter(each -> each.fault().isEmpty())
                  .map(each -> each.place().getParent().toString())
                  .toList());
      return new LeavingBackup(
          Optional.of("kept in " + places + ".").filter(said -> !places.isEmpty()),
          remarks(result));
    } catch (Fault fault) {
      return new LeavingBackup(Optional.empty(), List.of("Not backed up: " + fault.sentence()));
    }
  }

  /** Backs up what changed and tells it on the terminal the screens have left. */
  static void tell(Path log, SettingsFile settings) {
    System.out.print("Backing up ... "); // a slow card takes some seconds
    System.out.flush();
    LeavingBackup backup = of(log, settings);
    System.out.println(backup.done.map(PrintableText::of).orElse("not done."));
    backup.failed.forEach(line -> System.err.println("padside: " + PrintableText.of(line)));
  }

  /** What is not as it ought to be, each in a line. */
  static List<String> remarks(Backup.Result result) {
    List<String> remarks = new ArrayList<>();
    result.remark().ifPresent(remarks::add);
    for (Backup.Kept each : result.places()) {
      remarks.addAll(each.told());
      each.fault().ifPresent(fault -> remarks.add(fault.sentence() + " " + fault.nextStep()));
    }
    return remarks;
  }
}
