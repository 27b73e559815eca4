package padside.sync;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.stream.Stream;
import padside.fact.Fault;
import padside.store.FolderCopy;
import padside.store.LogFolder;
import padside.store.PretendMachine;
import padside.store.SeasonOfFlights;

/**
 * A program that makes a log of so many flights, every field filled, and says how long it takes to
 * give it to a folder, to copy what was given, to take it into an empty log, to find nothing new,
 * and to build the database anew. Seconds depend on what else the machine does; so the processor's
 * time of the thread that has the tables and of the whole program stand beside them.
 */
public final class ExchangeSpeed {
  private static final long WALL = 1_795_601_335_000L;
  private static final int BLOCK = 1 << 20;

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final OperatingSystemMXBean system =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
  private final Path place;
  private double copying;

  private interface Work {
    void run() throws IOException, Fault;
  }

  private ExchangeSpeed(Path place) {
    this.place = place;
  }

  /** Named: how many flights, 100,000 if not said; a log to copy the journals of instead. */
  public static void main(String[] args) throws IOException, Fault {
    int flights = args.length > 0 ? Integer.parseInt(args[0]) : 100_000;
    Path place = Files.createTempDirectory("padside-exchange");
    try {
      ExchangeSpeed speed = new ExchangeSpeed(place);
      Path log = Files.createDirectories(place.resolve("log"));
      if (args.length < 2) {
        speed.tell("making the log", () -> fill(log, flights));
      } else {
        FolderCopy.of(Path.of(args[1], "journal"), log.resolve("journal"));
        speed.tell("building the log", () -> LogFolder.open(log, machine(1)).close());
      }
      speed.run(log);
    } finally {
      FolderCopy.delete(place);
    }
  }

  private static void fill(Path log, int flights) throws Fault {
    try (LogFolder filled = LogFolder.openToFill(log, machine(1))) {
      SeasonOfFlights.save(filled, flights);
    }
  }

  private void run(Path log) throws IOException, Fault {
    Path stick = Files.createDirectories(place.resolve("stick"));
    Path other = place.resolve("other");
    tell("giving", () -> exchange(log, stick, 2));
    long before = System.nanoTime();
    tell("copying the bytes", () -> copy(only(stick.resolve(FolderPartner.FOLDER))));
    copying = (System.nanoTime() - before) / 1e9;
    tell("first sync", () -> exchange(other, stick, 3));
    tell("empty sync", () -> exchange(other, stick, 4));
    Files.delete(other.resolve("padside.sqlite"));
    tell("building anew", () -> LogFolder.open(other, machine(5)).close());
  }

  private static void exchange(Path folder, Path stick, int seed) throws Fault {
    try (LogFolder log = LogFolder.open(folder, machine(seed))) {
      new FolderPartner(stick).exchange(log.exchange(), new Willing());
    }
  }

  private static PretendMachine machine(int seed) {
    return new PretendMachine(seed, "machine " + seed, "boot-" + seed, WALL);
  }

  private static Path only(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.max(Comparator.naturalOrder()).orElseThrow();
    }
  }

  /** Read, written and forced, as an exchange must. */
  private void copy(Path file) throws IOException {
    try (InputStream from = Files.newInputStream(file);
        FileChannel to =
            FileChannel.open(
                place.resolve("copy"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      for (byte[] block = from.readNBytes(BLOCK);
          block.length > 0;
          block = from.readNBytes(BLOCK)) {
        ByteBuffer bytes = ByteBuffer.wrap(block);
        while (bytes.hasRemaining()) {
          to.write(bytes);
        }
      }
      to.force(true);
    }
  }

  private void tell(String what, Work work) throws IOException, Fault {
    long began = System.nanoTime();
    long thread = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    long all = system.getProcessCpuTime();
    work.run();
    double seconds = (System.nanoTime() - began) / 1e9;
    out.printf(
        "%-18s %7.2f s%s; processor: this thread %.2f s, all %.2f s; load %.1f%n",
        what,
        seconds,
        copying > 0 ? ", %.1f times copying the bytes".formatted(seconds / copying) : "",
        (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - thread) / 1e9,
        (system.getProcessCpuTime() - all) / 1e9,
        system.getSystemLoadAverage());
  }
}
