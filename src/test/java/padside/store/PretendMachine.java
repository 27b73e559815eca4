package padside.store;

import java.util.HexFormat;
import java.util.Random;

/** A machine whose clocks tick by a known step and whose run names come from a seed. */
public final class PretendMachine implements Machine {
  private final Random random;
  private long wall;
  private double uptime = 100;
  private final String label;
  private final String boot;

  PretendMachine(long seed) {
    this(seed, "bench");
  }

  PretendMachine(long seed, String label) {
    this(seed, label, "boot-1", 1_795_601_335_000L);
  }

  /**
   * One of several.
   *
   * @param boot this start of it
   * @param wall milliseconds since 1970 by its clock
   */
  public PretendMachine(long seed, String label, String boot, long wall) {
    this.random = new Random(seed);
    this.label = label;
    this.boot = boot;
    this.wall = wall;
  }

  @Override
  public long wallMillis() {
    return wall += 250;
  }

  @Override
  public double uptimeSeconds() {
    return uptime += 0.25;
  }

  @Override
  public String freshRun() {
    byte[] bits = new byte[10];
    random.nextBytes(bits);
    return HexFormat.of().formatHex(bits);
  }

  @Override
  public Identity identity() {
    return new Identity(label, boot, "Europe/Berlin", "uptime", "0.1.0", 4711);
  }
}
