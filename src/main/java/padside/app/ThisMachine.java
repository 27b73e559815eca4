package padside.app;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.Optional;
import padside.clock.LogClock;
import padside.clock.Moment;
import padside.flight.Logbook;
import padside.screen.Setting;
import padside.store.Machine;
import padside.units.TimeSpan;

/**
 * The machine this runs on, as the log wants to know it. Linux is asked by its files first: what
 * the JDK has for the same loads much at every start.
 */
final class ThisMachine implements Machine {
  private static final Path UPTIME = Path.of("/proc/uptime");
  private static final Path HOST_NAME = Path.of("/proc/sys/kernel/hostname");
  private static final Path OWN_PROCESS = Path.of("/proc/self");
  private static final Path CHANCE = Path.of("/dev/urandom");
  private static final Path BOOT_ID = Path.of("/proc/sys/kernel/random/boot_id");
  private static final int RUN_BYTES = 10;

  private final Setting.Clock clock;
  private final ClockSource source = ClockSource.look(Path.of("/"), Instant.now());

  /** An uptime source that counts suspended time, where there is one. */
  private final boolean hasUptime = Files.isReadable(UPTIME);

  private final String bootId = line(BOOT_ID).orElseGet(() -> Nameless.START);

  /** A start of a machine that has no name for it is known for this run of the program only. */
  private static final class Nameless {
    private static final String START = "run-" + hex();
  }

  ThisMachine() {
    this(Setting.Clock.ASK);
  }

  ThisMachine(Setting.Clock clock) {
    this.clock = clock;
  }

  @Override
  public long wallMillis() {
    return System.currentTimeMillis();
  }

  @Override
  public double uptimeSeconds() {
    return line(UPTIME)
        .map(text -> Double.parseDouble(text.substring(0, text.indexOf(' '))))
        .orElse(System.nanoTime() / 1e9);
  }

  /** This moment. */
  Moment moment() {
    Moment.Trust trust = clock == Setting.Clock.TRUSTED ? Moment.Trust.SURE : source.trust();
    return new Moment(Instant.now(), new TimeSpan(uptimeSeconds()), bootId, trust);
  }

  /** The date here by the log's time. */
  LocalDate today(Logbook book) {
    return today(book.clock());
  }

  /** As {@link #today(Logbook)} where of the log no more than that was read. */
  LocalDate today(LogClock clock) {
    return LocalDate.ofInstant(clock.told(moment()).wall(), zone());
  }

  /** Where this machine is. */
  ZoneId zone() {
    return ZoneId.systemDefault();
  }

  @Override
  public String freshRun() {
    return hex();
  }

  private static String hex() {
    return HexFormat.of().formatHex(chance());
  }

  private static byte[] chance() {
    byte[] bytes = new byte[RUN_BYTES];
    try (InputStream system = Files.newInputStream(CHANCE)) {
      if (system.readNBytes(bytes, 0, RUN_BYTES) == RUN_BYTES) {
        return bytes;
      }
    } catch (IOException e) {
      // not a system that has it
    }
    new SecureRandom().nextBytes(bytes);
    return bytes;
  }

  @Override
  public Identity identity() {
    return new Identity(
        label(),
        bootId,
        ZoneId.systemDefault().getId(),
        hasUptime ? "proc" : "nano",
        Version.text(),
        process());
  }

  private static long process() {
    try {
      return Long.parseLong(Files.readSymbolicLink(OWN_PROCESS).toString());
    } catch (IOException | RuntimeException e) {
      return ProcessHandle.current().pid();
    }
  }

  private static String label() {
    return line(HOST_NAME).filter(name -> !name.isBlank()).orElseGet(ThisMachine::asked);
  }

  private static String asked() {
    try {
      return InetAddress.getLocalHost().getHostName();
    } catch (UnknownHostException e) {
      return "this machine";
    }
  }

  private static Optional<String> line(Path file) {
    try {
      return Files.readString(file).lines().findFirst();
    } catch (IOException e) {
      return Optional.empty(); // not a Linux machine, or a locked-down one
    }
  }
}
