package padside.app;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A real OpenSSH server on the loopback with keys of its own; touches nobody's {@code ~/.ssh}. Each
 * name a client may call is a key, with the one command that key may start.
 */
final class LoopbackSshd implements AutoCloseable {
  private static final Path SSHD = Path.of("/usr/sbin/sshd");

  /** sshd's own folder where it gives up root's rights (sshd(8), FILES). */
  private static final Path ROOTS = Path.of("/run/sshd");

  private final Path folder;
  private final int port;
  private final List<String> clients = new ArrayList<>();
  private final List<String> authorized = new ArrayList<>();
  private Process server;

  LoopbackSshd(Path folder) throws IOException {
    assumeTrue(Files.isExecutable(SSHD), "sshd is not installed: openssh-server has it");
    if (System.getProperty("user.name").equals("root")) {
      Files.createDirectories(ROOTS);
    }
    this.folder = Files.createDirectories(folder);
    this.port = freePort();
    key("host");
    Files.writeString(
        folder.resolve("known"),
        "[127.0.0.1]:" + port + " " + Files.readString(folder.resolve("host.pub")));
    Files.writeString(folder.resolve("nobody"), "");
  }

  /** The ssh program as the settings name it. */
  String ssh() {
    return "ssh -F " + folder.resolve("client");
  }

  /** Whoever calls this name starts that command, whatever it asks for. */
  void answers(String name, String command) throws IOException {
    key(name);
    authorized.add(
        "restrict,command=\""
            + command.replace("\"", "\\\"")
            + "\" "
            + Files.readString(folder.resolve(name + ".pub")).strip());
    client(name, port, name, "known");
  }

  /** A name with a key the server does not know. */
  void refuses(String name) throws IOException {
    key(name);
    client(name, port, name, "known");
  }

  /** A name whose server shows a key that the client does not know; with another's own key. */
  void unknown(String name, String key) {
    client(name, port, key, "nobody");
  }

  /** A name where nothing listens. */
  void silent(String name, String key) throws IOException {
    client(name, freePort(), key, "known");
  }

  private void client(String name, int at, String key, String known) {
    clients.add(
        String.join(
            "\n",
            "Host " + name,
            "  HostName 127.0.0.1",
            "  Port " + at,
            "  IdentityFile " + folder.resolve(key),
            "  UserKnownHostsFile " + folder.resolve(known)));
  }

  void start() throws IOException {
    clients.add("Host *\n  IdentitiesOnly yes\n  GlobalKnownHostsFile none\n");
    Files.writeString(folder.resolve("client"), String.join("\n", clients));
    Files.write(folder.resolve("authorized"), authorized);
    List<String> lines =
        List.of(
            "Port " + port,
            "ListenAddress 127.0.0.1",
            "HostKey " + folder.resolve("host"),
            "AuthorizedKeysFile " + folder.resolve("authorized"),
            "PidFile none",
            "StrictModes no",
            "UsePAM no",
            "PasswordAuthentication no",
            "KbdInteractiveAuthentication no",
            "PermitRootLogin prohibit-password");
    Path config = Files.write(folder.resolve("server"), lines);
    server =
        new ProcessBuilder(
                SSHD.toString(),
                "-D",
                "-f",
                config.toString(),
                "-E",
                folder.resolve("log").toString())
            .start();
    awaitListening();
  }

  private void awaitListening() throws IOException {
    for (int look = 0; look < 100; look++) {
      try (Socket open = new Socket(InetAddress.getLoopbackAddress(), port)) {
        return;
      } catch (IOException e) {
        pause();
      }
    }
    throw new AssertionError("sshd never listened: " + Files.readString(folder.resolve("log")));
  }

  private static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private void key(String name) throws IOException {
    Process made =
        new ProcessBuilder("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", name, "-f", name)
            .directory(folder.toFile())
            .inheritIO()
            .start();
    try {
      if (made.waitFor() != 0) {
        throw new AssertionError("ssh-keygen ended with " + made.exitValue());
      }
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private static int freePort() throws IOException {
    try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return any.getLocalPort();
    }
  }

  @Override
  public void close() {
    if (server == null) {
      return;
    }
    server.descendants().forEach(ProcessHandle::destroyForcibly);
    server.destroy();
    try {
      if (!server.waitFor(5, TimeUnit.SECONDS)) {
        server.destroyForcibly();
      }
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** What the server noted, for a failure's message. */
  String noted() {
    try {
      return Files.readString(folder.resolve("log"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
