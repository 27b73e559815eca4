package padside.app;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.Optional;
import padside.screen.Moment;
import padside.store.Machine;
import padside.units.TimeSpan;

/** The machine this runs on, as the log wants to know it. */
final class ThisMachine implements Machine {
  private static final Path UPTIME = Path.of("/proc/uptime");
  private static final Path BOOT_ID = Path.of("/proc/sys/kernel/random/boot_id");
  private static final int RUN_BYTES = 10;

  /** An uptime source that counts suspended time, where there is one. */
  private final boolean hasUptime = Files.isReadable(UPTIME);

  private final String bootId = line(BOOT_ID).orElse("unknown");

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
    return new Moment(Instant.now(), new TimeSpan(uptimeSeconds()), bootId);
  }

  @Override
  public String freshRun() {
    byte[] bytes = new byte[RUN_BYTES];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  @Override
  public Identity identity() {
    return new Identity(
        label(),
        bootId,
        ZoneId.systemDefault().getId(),
        hasUptime ? "proc" : "nano",
        Version.text(),
        ProcessHandle.current().pid());
  }

  private static String label() {
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
