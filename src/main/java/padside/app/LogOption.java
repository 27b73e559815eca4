package padside.app;

import java.nio.file.Path;
import padside.flight.Fault;
import padside.store.LogFolder;
import picocli.CommandLine.Option;

/** Which log a command works on. */
final class LogOption {
  @Option(
      names = "--log",
      paramLabel = "FOLDER",
      description = "the log's folder (padside/log in the user's data folder)")
  private Path folder;

  Path folder() {
    return folder == null ? Folders.of(System.getenv()).log() : folder;
  }

  LogFolder open() throws Fault {
    return LogFolder.open(folder(), new ThisMachine());
  }
}
