package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.store.LogFolder;
import padside.sync.TypedDay;

/** Two logs and a real OpenSSH server between them, whose keys may start one command each. */
class SyncOverSshIT {
  private static final Path PROGRAM = Path.of("bin", "padside").toAbsolutePath();
  private static final String LINES =
      "SELECT raw FROM op JOIN run ON run.id = op.run ORDER BY run.name, n";

  /** What a day may cost on a slow line, as promised. */
  private static final long MOST_FOR_A_DAY = 100_000;

  private static final int LONG_NOTES = 150;

  @TempDir Path folder;

  private PadTable laptop;
  private PadTable desktop;
  private LoopbackSshd sshd;

  @BeforeEach
  void two_tables_and_a_server() throws IOException {
    sshd = new LoopbackSshd(folder.resolve("sshd"));
    laptop = new PadTable(Files.createDirectories(folder.resolve("laptop")), 80, 24);
    desktop = new PadTable(Files.createDirectories(folder.resolve("desktop")), 60, 20);
    sshd.answers("desktop", serving());
    laptop.setting("clock = trusted", "sync.ssh = " + sshd.ssh());
    laptop.add("rocket", "{\"name\":\"Heron\"}");
    desktop.add("rocket", "{\"name\":\"Wren\"}");
  }

  @AfterEach
  void clear_all() {
    if (laptop != null) {
      laptop.close();
      desktop.close();
    }
    sshd.close();
  }

  /** The far side, as its owner's forced command. */
  private String serving() {
    Path home = folder.resolve("desktop");
    return "env HOME="
        + home
        + " XDG_DATA_HOME="
        + home.resolve("data")
        + " XDG_CONFIG_HOME="
        + home.resolve("config")
        + " "
        + PROGRAM
        + " sync --stdio";
  }

  @Test
  void both_logs_are_alike_and_a_day_moves_less_than_100_kilobytes() throws IOException, Fault {
    sshd.start();
    PadTable.Ran asked = laptop.padside("sync", "ssh:desktop");
    assertThat(asked.status()).as(asked.err()).isEqualTo(Exit.USAGE);
    assertThat(asked.err()).contains("New to this log: ", "say --yes").doesNotContain("0 lines");
    synced("ssh:desktop", "--yes");

    try (LogFolder log = LogFolder.open(laptop.log(), new ThisMachine())) {
      TypedDay.into(log);
    }
    String day = synced("--json");
    long moved = number(day, "bytes_out") + number(day, "bytes_in");
    assertThat(number(day, "out")).isGreaterThanOrEqualTo(TypedDay.LINES);
    String nothing = synced("--json");
    Trials.say(
        "by ssh a day of 10 flights moved "
            + moved
            + " bytes, nothing new "
            + (number(nothing, "bytes_out") + number(nothing, "bytes_in")));
    assertThat(moved).isLessThan(MOST_FOR_A_DAY);
    assertThat(number(nothing, "out") + number(nothing, "in")).isZero();
    alike();
    assertThat(laptop.padside("sync", "ssh:desktop", "--dry-run").out())
        .contains("would go 0 lines");
  }

  @Test
  void the_screen_names_the_machine_once_and_exchanges_by_one_key_after_that() throws IOException {
    sshd.start();
    laptop.launch("");
    laptop.sees("No day is open yet.");
    laptop.press("y");
    laptop.sees("This log was never synchronised.");
    laptop.press("Enter");
    laptop.sees("Where is the other machine");
    laptop.typeThen("ssh:desktop", "Enter");
    laptop.sees("t takes their lines");
    laptop.press("t");
    laptop.seesLine("Synchronised with ssh:desktop");
    laptop.press("Escape");
    laptop.sees("No day is open yet.");
    laptop.quit();
    alike();
  }

  @Test
  void whatever_does_not_answer_is_told_in_a_sentence_and_nothing_is_lost() throws IOException {
    sshd.refuses("wrong-key");
    sshd.unknown("unknown-host", "desktop");
    sshd.silent("switched-off", "desktop");
    sshd.answers("without-padside", "exec no-such-padside sync --stdio");
    sshd.answers("a-mill", "echo Welcome to the mill");
    sshd.answers("older", "echo padside-sync 0 0.1; cat >/dev/null");
    sshd.start();
    List<String> before = laptop.sqlite(LINES);
    told("wrong-key", "does not let this machine in", "authorized_keys");
    told("unknown-host", "is not known here", "ssh unknown-host shows its key");
    told("switched-off", "takes no ssh connections");
    told("without-padside", "There is no command padside on without-padside");
    told("a-mill", "is not Padside", "Welcome to the mill");
    told("older", "padside-sync 0 0.1", "newer version of Padside");
    told("-oProxyCommand=true", "names no machine to reach by ssh");
    told("no.such.host.invalid", "No machine is known by the name");
    assertThat(laptop.sqlite(LINES)).isEqualTo(before);
    laptop.setting("clock = trusted", "sync.ssh = no-such-ssh");
    told("desktop", "The program no-such-ssh cannot be started");
  }

  @Test
  void a_connection_that_drops_in_the_middle_is_told_and_the_next_completes()
      throws IOException, Fault {
    sshd.answers("drops", dropping());
    sshd.start();
    longNotes();
    told("drops", "The connection to drops broke off", "synchronise again");
    int come = desktop.sqlite(LINES).size();
    System.out.println("Before the connection dropped " + come + " lines were kept there.");
    assertThat(come).isBetween(10, LONG_NOTES);
    synced("ssh:desktop", "--yes");
    alike();
  }

  /** So long that they go in two batches, and so mixed that they hardly deflate. */
  private void longNotes() throws Fault {
    Random random = new Random(4);
    try (LogFolder log = LogFolder.open(laptop.log(), new ThisMachine())) {
      for (int flight = 0; flight < LONG_NOTES; flight++) {
        StringBuilder note = new StringBuilder();
        random.ints(9000, ' ', '~').forEach(each -> note.append((char) each));
        Facts typed = Facts.none().with(Flight.NOTE, note.toString());
        log.save(Action.create("new card", Kind.FLIGHT, typed));
      }
    }
  }

  /**
   * After so many bytes that one batch of lines has gone through nothing more comes, and then the
   * server's own end of the connection is killed.
   */
  private String dropping() throws IOException {
    Path script = folder.resolve("dropping.sh");
    Files.writeString(
        script, "(stdbuf -o0 head -c 950000; sleep 3; kill -9 $PPID) | " + serving() + "\n");
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwx------"));
    return "sh " + script;
  }

  @Test
  void a_log_that_is_open_there_is_left_alone() throws IOException {
    sshd.start();
    desktop.launch("");
    desktop.sees("No day is open yet.");
    told("desktop", "At desktop: ");
    desktop.quit();
    synced("ssh:desktop", "--yes");
    alike();
  }

  private String synced(String... arguments) {
    String[] all = new String[arguments.length + 1];
    all[0] = "sync";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    PadTable.Ran ran = laptop.padside(all);
    assertThat(ran.status()).as(ran.err() + sshd.noted()).isZero();
    return ran.out();
  }

  private void told(String host, String... sentences) {
    PadTable.Ran ran = laptop.padside("sync", "ssh:" + host, "--yes");
    assertThat(ran.status()).as(ran.err()).isEqualTo(Exit.FAULT);
    assertThat(ran.err()).contains(sentences).doesNotContain("\tat ");
    System.out.print("[told] " + ran.err());
  }

  private void alike() {
    assertThat(laptop.sqlite(LINES)).isEqualTo(desktop.sqlite(LINES)).isNotEmpty();
    assertThat(laptop.sqlite("SELECT name FROM rocket ORDER BY name"))
        .containsExactly("Heron", "Wren");
  }

  private static long number(String json, String name) throws IOException {
    return ((Number) JSON.std.mapFrom(json).get(name)).longValue();
  }
}
