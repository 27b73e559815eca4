package padside.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import padside.fact.Fault;
import padside.store.Backup;
import padside.units.PrintableText;

/** The backup made when the screens are left after something was saved, and where backups go. */
record LeavingBackup(List<String> done, List<String> failed) {
  /** Beside the log, and on the second medium of the settings. */
  static List<Backup.Target> targets(Path log, SettingsFile settings) {
    List<Backup.Target> targets = new ArrayList<>();
    targets.add(new Backup.Target(Backup.beside(log), true));
    settings.secondBackup().map(each -> new Backup.Target(each, false)).ifPresent(targets::add);
    return targets;
  }

  /** Backs up what changed. */
  static LeavingBackup of(Path log, SettingsFile settings) {
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
          places.isEmpty() ? List.of() : List.of("Backed up in " + places + "."), remarks(result));
    } catch (Fault fault) {
      return new LeavingBackup(List.of(), List.of("Not backed up: " + fault.sentence()));
    }
  }

  /** Tells it on the terminal the screens have left. */
  void tell() {
    done.forEach(line -> System.out.println(PrintableText.of(line)));
    failed.forEach(line -> System.err.println("padside: " + PrintableText.of(line)));
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
