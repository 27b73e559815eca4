package padside.sync;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import padside.fact.Fault;
import padside.store.Exchange;

/**
 * A machine reached by ssh, where {@code padside sync --stdio} serves the other end. The ssh
 * program is started by a list of arguments, never through a shell, and no name can pass for an
 * option.
 *
 * @param place {@code ssh:user@host}, the user left out where ssh knows it, the host also one of
 *     ssh's own settings; {@code ssh://user@host:port} names a port
 */
public record SshPartner(String place, Means means) {
  /** How such a place begins. */
  public static final String PREFIX = "ssh:";

  /** The ssh program where no other is set. */
  public static final List<String> USUAL = List.of("ssh");

  private static final String WITH_PORT = "ssh://";
  private static final String USER = "(?:[A-Za-z0-9_][A-Za-z0-9._-]*@)?";
  private static final String HOST = "[A-Za-z0-9_][A-Za-z0-9._-]*";
  private static final String NUMBERS = "[0-9A-Fa-f:]*:[0-9A-Fa-f:.]*:[0-9A-Fa-f:.]*";
  private static final String ZONE = "(?:%[A-Za-z0-9._-]+)?";
  private static final Pattern DESTINATION =
      Pattern.compile(
          String.format(
              Locale.ROOT,
              "%s(?:%s|%s%s)|%s%s(?:%s|\\[%s%s])(?::[0-9]{1,5})?/?",
              USER,
              HOST,
              NUMBERS,
              ZONE,
              WITH_PORT,
              USER,
              HOST,
              NUMBERS,
              ZONE));
  private static final int MOST = 255;

  /** Nothing of the connection is for anybody else, and a line that went dead is noticed. */
  private static final List<String> OPTIONS =
      List.of(
          "-T",
          "-a",
          "-x",
          "-oClearAllForwardings=yes",
          "-oRemoteCommand=none",
          "-oConnectTimeout=20",
          "-oServerAliveInterval=15");

  private static final List<String> ASKED = List.of("padside", "sync", "--stdio");
  private static final long LEAVING_S = 5;

  /**
   * How such machines are reached.
   *
   * @param ssh the program and its own options
   * @param mayAsk whether ssh may ask for a password or about a host on the terminal
   * @param patience how long nothing may move
   * @param version of this program
   */
  public record Means(List<String> ssh, boolean mayAsk, Duration patience, String version) {
    public Means {
      ssh = List.copyOf(ssh);
    }
  }

  /** Whether a place as typed is one reached by ssh. */
  public static boolean isMeant(String place) {
    return place.startsWith(PREFIX);
  }

  /** Exchanges all that either lacks. */
  public Told exchange(Exchange log, Terms terms) throws Fault {
    Process process = start();
    LastWords words = new LastWords(process.getErrorStream());
    boolean done = false;
    try {
      Talk.Streams streams =
          new Talk.Streams(process.getInputStream(), process.getOutputStream(), means.patience());
      Told told = new Talk(streams, destination(), means.version()).near(log, terms);
      done = true;
      return told;
    } catch (Fault fault) {
      throw SshFaults.isExplained(fault) && hasEnded(process)
          ? new SshFaults(this, words.said()).explained(fault, process.exitValue())
          : fault;
    } finally {
      end(process, done);
    }
  }

  private Process start() throws Fault {
    List<String> command = command();
    try {
      return new ProcessBuilder(command).start();
    } catch (IOException e) {
      throw SshFaults.notStarted(command.get(0), e);
    }
  }

  /** What is started. */
  List<String> command() throws Fault {
    String destination = destination();
    if (destination.length() > MOST || !DESTINATION.matcher(destination).matches()) {
      throw SshFaults.noMachine(place);
    }
    List<String> command = new ArrayList<>(means.ssh());
    command.addAll(OPTIONS);
    if (!means.mayAsk()) {
      command.add("-oBatchMode=yes");
    }
    command.add("--");
    command.add(destination);
    command.addAll(ASKED);
    return command;
  }

  /** The machine as ssh is told it. */
  String destination() {
    return place.startsWith(WITH_PORT) ? place : place.substring(PREFIX.length());
  }

  private static boolean hasEnded(Process process) {
    try {
      return process.waitFor(LEAVING_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static void end(Process process, boolean done) {
    if (!done) {
      process.destroy(); // a write that waits would hold up the closing
    }
    try {
      process.getOutputStream().close();
    } catch (IOException e) {
      process.destroy(); // it no longer listens
    }
    if (!hasEnded(process)) {
      process.destroyForcibly();
    }
  }
}
