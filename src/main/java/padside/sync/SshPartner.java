package padside.sync;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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
 * program is started by a list of arguments, never through a shell.
 *
 * @param address {@code user@host} or {@code host}
 * @param ssh the program and its options
 * @param mayAsk whether ssh may ask for a password or about a host on the terminal
 * @param version of this program
 */
public record SshPartner(String address, List<String> ssh, boolean mayAsk, String version) {
  /** How such a place begins. */
  public static final String PREFIX = "ssh:";

  /** The ssh program where no other is set. */
  public static final List<String> USUAL = List.of("ssh");

  private static final Pattern ADDRESS =
      Pattern.compile("(?:[A-Za-z0-9_][A-Za-z0-9._-]*@)?[A-Za-z0-9][A-Za-z0-9._-]*|"
          + "(?:[A-Za-z0-9_][A-Za-z0-9._-]*@)?[0-9A-Fa-f]*:[0-9A-Fa-f:]*:[0-9A-Fa-f]*");
  private static final int MOST_ADDRESS = 255;
  private static final int MOST_ERRORS = 1 << 13;
  private static final int NOT_FOUND = 127;
  private static final int SSH_FAILED = 255;
  private static final Duration LEAVING = Duration.ofSeconds(5);

  public SshPartner {
    ssh = List.copyOf(ssh);
  }

  /** Whether a place as typed is one reached by ssh. */
  public static boolean isMeant(String place) {
    return place.startsWith(PREFIX);
  }

  /** Exchanges all that either lacks. */
  public Told exchange(Exchange log, Terms terms) throws Fault {
    Process process = start();
    Errors errors = new Errors(process.getErrorStream());
    try {
      Talk.Streams streams =
          new Talk.Streams(process.getInputStream(), process.getOutputStream(), Talk.PATIENCE);
      return new Talk(streams, address, version).near(log, terms);
    } catch (Fault fault) {
      throw explained(fault, process, errors);
    } finally {
      end(process);
    }
  }

  private Process start() throws Fault {
    List<String> command = command();
    try {
      return new ProcessBuilder(command).start();
    } catch (IOException e) {
      throw new Fault(
          "ssh-missing",
          "The program " + command.get(0) + " cannot be started.",
          "Install ssh (Debian: apt install openssh-client), or name it in the settings (sync.ssh).",
          e);
    }
  }

  /** What is started. */
  List<String> command() throws Fault {
    if (address.length() > MOST_ADDRESS || !ADDRESS.matcher(address).matches()) {
      throw new Fault(
          "ssh-address",
          "\"" + TalkFaults.quoted(address) + "\" is no machine to reach by ssh.",
          "Write ssh:user@host, such as ssh:flier@desktop; a port goes into ~/.ssh/config.");
    }
    List<String> command = new ArrayList<>(ssh);
    command.add("-T");
    if (!mayAsk) {
      command.addAll(List.of("-o", "BatchMode=yes"));
    }
    command.addAll(List.of("-o", "ServerAliveInterval=15"));
    command.addAll(List.of("--", address, "padside", "sync", "--stdio"));
    return command;
  }

  /** What ssh said is nearer to the cause than that the stream ended. */
  private Fault explained(Fault fault, Process process, Errors errors) {
    boolean cut =
        fault.code().equals(TalkFaults.NOT_PADSIDE) || fault.code().equals(TalkFaults.ENDED);
    if (!cut || !ended(process)) {
      return fault;
    }
    String said = errors.last();
    if (process.exitValue() == NOT_FOUND) {
      return new Fault(
          "ssh-no-padside",
          "Padside is not found on " + address + (said.isEmpty() ? "." : ": " + said + "."),
          "Put padside where programs are looked for there, or name it in the key's command.",
          fault);
    }
    if (process.exitValue() == SSH_FAILED) {
      return new Fault(
          "ssh-failed",
          "ssh " + (said.isEmpty() ? "ended" : "says \"" + said + "\"") + " for " + address + ".",
          advice(said),
          fault);
    }
    return said.isEmpty()
        ? fault
        : new Fault(fault.code(), fault.sentence() + " It said \"" + said + "\".", fault.nextStep());
  }

  private static String advice(String said) {
    String text = said.toLowerCase(Locale.ROOT);
    if (text.contains("permission denied")) {
      return "Look whether your key is in ~/.ssh/authorized_keys there; try again after that.";
    }
    if (text.contains("host key verification failed")) {
      return "Log in there once with ssh to look at its key, then synchronise again.";
    }
    return "Look to the network and the name; what moved before is kept, synchronise again to go"
        + " on.";
  }

  private static boolean ended(Process process) {
    try {
      return process.waitFor(LEAVING.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private static void end(Process process) {
    try {
      process.getOutputStream().close();
    } catch (IOException e) {
      process.destroy(); // it no longer listens
    }
    if (!ended(process)) {
      process.destroyForcibly();
    }
  }

  /** What a program says on its standard error, the end of it. */
  private static final class Errors {
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final Thread reader;

    Errors(InputStream errors) {
      reader = new Thread(() -> read(errors), "ssh-errors");
      reader.setDaemon(true);
      reader.start();
    }

    private void read(InputStream errors) {
      byte[] block = new byte[MOST_ERRORS];
      try {
        for (int count = errors.read(block); count >= 0; count = errors.read(block)) {
          synchronized (said) {
            if (said.size() > MOST_ERRORS) {
              said.reset();
            }
            said.write(block, 0, count);
          }
        }
      } catch (IOException e) {
        return; // it was ended; what it said so far stands
      }
    }

    /** The last line; nothing where it was silent. */
    String last() {
      try {
        reader.join(LEAVING.toMillis());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      synchronized (said) {
        return said.toString(StandardCharsets.UTF_8)
            .lines()
            .map(String::strip)
            .filter(line -> !line.isEmpty())
            .reduce((first, second) -> second)
            .map(TalkFaults::quoted)
            .orElse("");
      }
    }
  }
}
