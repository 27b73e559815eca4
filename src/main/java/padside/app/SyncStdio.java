package padside.app;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.util.Optional;
import java.util.function.Consumer;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.LogFolder;
import padside.sync.Talk;

/**
 * Serves one exchange over standard input and output, where nothing else is written. Who may call
 * is the ssh server's to say: lines of whatever machine are taken without a question.
 */
final class SyncStdio implements AutoCloseable {
  private static final String CALLER = "the machine that called";

  private final RootCommand root;
  private Optional<LogFolder> log = Optional.empty();

  private SyncStdio(RootCommand root) {
    this.root = root;
  }

  static void serve(RootCommand root) throws Fault {
    System.setOut(System.err); // whoever prints is not to be taken for the exchange
    Talk.Streams streams =
        new Talk.Streams(
            new FileInputStream(FileDescriptor.in),
            new FileOutputStream(FileDescriptor.out),
            Talk.FAR_PATIENCE);
    try (SyncStdio far = new SyncStdio(root)) {
      new Talk(streams, CALLER, Version.text()).far(far::open);
    }
  }

  private Exchange open(Consumer<String> notices) throws Fault {
    LogFolder opened = root.openLog();
    log = Optional.of(opened);
    opened.notices().forEach(notices);
    return opened.exchange();
  }

  @Override
  public void close() throws Fault {
    if (log.isPresent()) {
      log.get().close();
    }
  }
}
