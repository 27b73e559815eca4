package padside.sync;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import java.util.zip.DeflaterOutputStream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.store.LogFolder;
import padside.store.LogState;

/** The exchange over two streams, with real logs at both ends, sound and harmed. */
class TalkTest {
  /** What a day may cost on a slow line, as promised. */
  private static final long MOST_FOR_A_DAY = 100_000;

  @TempDir Path folder;
  private TalkTable table;
  private Path near;
  private Path far;

  @BeforeEach
  void twoLogs() {
    near = folder.resolve("pad");
    far = folder.resolve("desk");
    table = new TalkTable(near, far, 1);
  }

  @Test
  void both_logs_are_alike_afterwards_and_the_next_exchange_moves_nothing() throws Exception {
    rockets(table, near, 700);
    rockets(table, far, 900);

    Told told = table.sound();
    assertThat(told.out()).isEqualTo(701);
    assertThat(told.in()).isEqualTo(901);
    assertThat(LogState.of(near)).isEqualTo(LogState.of(far));

    Told again = table.sound();
    assertThat(again.out() + again.in()).isZero();
    assertThat(again.bytesIn() + again.bytesOut()).isLessThan(400);
  }

  @Test
  void a_day_of_ten_flights_moves_less_than_100_kilobytes() throws Exception {
    rockets(table, near, 3);
    table.sound();
    try (LogFolder log = table.open(near)) {
      TypedDay.into(log);
    }
    Told told = table.sound();
    assertThat(told.out()).isEqualTo(TypedDay.LINES + 1);
    Trials.say(
        "a day of 10 flights moved " + told.bytesOut() + " bytes out, " + told.bytesIn() + " in");
    assertThat(told.bytesIn() + told.bytesOut()).isLessThan(MOST_FOR_A_DAY);
  }

  @Test
  void an_empty_exchange_of_a_log_of_many_runs_is_short() throws Exception {
    for (int run = 0; run < 20; run++) {
      rockets(table, near, 1);
    }
    table.sound();
    rockets(table, far, 1);
    Told one = table.sound();
    Told none = table.sound();
    Trials.say(
        "20 runs: nothing new "
            + (none.bytesIn() + none.bytesOut())
            + " bytes, one line new "
            + (one.bytesIn() + one.bytesOut()));
    assertThat(none.bytesIn() + none.bytesOut()).isLessThan(400);
    assertThat(one.in()).isEqualTo(2);
  }

  @Test
  void three_machines_come_to_one_log_whatever_the_order() throws Exception {
    Path third = folder.resolve("club");
    Trials.run(
        1,
        Trials.of("talks", 3, 60),
        (number, random) -> {
          Path[] all = new Path[3];
          for (int at = 0; at < 3; at++) {
            all[at] = folder.resolve(number + "-" + at);
            rockets(
                new TalkTable(all[at], third, number * 10L + at), all[at], 1 + random.nextInt(9));
          }
          for (int step = 0; step < 4; step++) {
            talk(all, random, number * 100L + step).sound();
          }
          for (int step = 0; step < 4; step++) {
            new TalkTable(all[step % 2], all[step % 2 + 1], number * 200L + step).sound();
          }
          assertThat(LogState.of(all[1])).isEqualTo(LogState.of(all[0]));
          assertThat(LogState.of(all[2])).isEqualTo(LogState.of(all[0]));
        });
  }

  private static TalkTable talk(Path[] all, Random random, long seed) {
    int one = random.nextInt(3);
    return new TalkTable(all[one], all[(one + 1 + random.nextInt(2)) % 3], seed);
  }

  @Test
  void a_stream_cut_anywhere_loses_nothing_and_the_next_exchange_completes() throws Exception {
    int cuts = Trials.of("cuts", 12, 1000);
    Trials.run(
        1,
        cuts,
        (number, random) -> {
          harmed(number, random, TalkTable.cut(random.nextInt(2500)));
        });
    Trials.say(cuts + " exchanges cut, each completed by the next");
  }

  @Test
  void a_bit_turned_over_anywhere_is_noticed_and_the_next_exchange_completes() throws Exception {
    int flips = Trials.of("flips", 12, 1000);
    Trials.run(
        1,
        flips,
        (number, random) -> {
          harmed(number, random, TalkTable.flipped(20 + random.nextInt(2000), random.nextInt(8)));
        });
    Trials.say(flips + " exchanges with a bit turned over, each completed by the next");
  }

  private void harmed(int number, Random random, TalkTable.Harmed harm) throws Exception {
    Path pad = folder.resolve("pad" + number);
    Path desk = folder.resolve("desk" + number);
    TalkTable harmed = new TalkTable(pad, desk, number);
    rockets(harmed, pad, 25);
    rockets(harmed, desk, 25);
    boolean out = random.nextBoolean();
    TalkTable.Ends ends =
        harmed.exchange(
            out ? harm : sound -> sound,
            out ? sound -> sound : harm,
            new TalkTable.Answering(true, false));
    ends.near().fault().ifPresent(TalkTest::isClear);
    ends.far().fault().ifPresent(TalkTest::isClear);
    harmed.sound();
    assertThat(LogState.of(pad)).isEqualTo(LogState.of(desk));
    assertThat(LogState.rows(pad, "SELECT count(*) FROM rocket")).containsExactly("50");
  }

  private static void isClear(Fault fault) {
    assertThat(fault.code()).startsWith("sync-");
    assertThat(fault.sentence()).endsWith(".").doesNotContain("Exception", "\n", "null");
    assertThat(fault.nextStep()).endsWith(".");
  }

  @Test
  void what_is_not_padside_is_told_in_one_sentence() throws Exception {
    assertThat(answer("")).contains("ended without a word");
    assertThat(answer("HTTP/1.1 400 Bad Request\r\nServer: x\r\n\r\n"))
        .contains("is not Padside: it says \"HTTP/1.1 400 Bad Request\"");
    assertThat(answer("Welcome\nuser@desk:~$ ")).contains("it says \"Welcome\"");
    assertThat(answer("y\n".repeat(1 << 16))).contains("it says \"y\"");
    assertThat(answer("\u0000\u001b[2J\u0007".repeat(5000))).doesNotContain("\u001b");
    assertThat(answer("padside-sync 2 9.9\n"))
        .contains("it speaks \"padside-sync 2 9.9\", this machine \"padside-sync 1 1\"");
    assertThat(answer("padside-sync 1 1\nbanner")).contains("damaged: it cannot be inflated");
  }

  @Test
  void a_banner_before_the_greeting_is_passed_over() throws Exception {
    TalkTable.Harmed banner =
        sound -> {
          try {
            sound.write("Welcome to desk\n".getBytes(StandardCharsets.UTF_8));
          } catch (IOException e) {
            throw new AssertionError(e);
          }
          return sound;
        };
    rockets(table, far, 1);
    TalkTable.Ends ends = table.exchange(out -> out, banner, new TalkTable.Answering(true, false));
    assertThat(ends.near().told()).map(Told::in).contains(2L);
  }

  /** Zeros inflate a thousandfold (RFC 1951); a length of 2 GB is refused before it is read. */
  @Test
  void what_inflates_without_end_and_a_length_without_bounds_are_refused() throws Exception {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    try (OutputStream deflated = new DeflaterOutputStream(bomb)) {
      deflated.write(new byte[] {0, 0x7f, (byte) 0xff, (byte) 0xff, (byte) 0xff, 0, 0, 0, 0});
      deflated.write(new byte[64 << 20]);
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write("padside-sync 1 1\n".getBytes(StandardCharsets.UTF_8));
    all.write(bomb.toByteArray());
    assertThat(answer(all.toByteArray())).contains("a message of kind 0 with 2147483647 bytes");
  }

  @Test
  void a_silent_other_side_is_given_up() throws Exception {
    try (PipedInputStream silent = new PipedInputStream(new PipedOutputStream())) {
      assertThat(answer(silent, Duration.ofSeconds(1))).contains("nothing came for 1 s");
    }
  }

  @Test
  void random_bytes_after_the_greeting_harm_nothing() throws Exception {
    rockets(table, near, 2);
    int tries = Trials.of("noises", 200, 20_000);
    Trials.run(
        1,
        tries,
        (number, random) -> {
          byte[] noise = new byte[random.nextInt(300)];
          random.nextBytes(noise);
          ByteArrayOutputStream all = new ByteArrayOutputStream();
          all.write("padside-sync 1 1\n".getBytes(StandardCharsets.UTF_8));
          try (OutputStream deflated =
              random.nextBoolean() ? new DeflaterOutputStream(all) : null) {
            (deflated == null ? all : deflated).write(noise);
          }
          assertThat(answer(all.toByteArray())).endsWith(".").doesNotContain("Exception");
        });
  }

  @Test
  void the_far_log_in_use_is_told_at_the_near_side() throws Exception {
    rockets(table, near, 1);
    try (LogFolder other = table.open(far)) {
      other.save(named("Heron"));
      TalkTable.Ends ends =
          table.exchange(out -> out, out -> out, new TalkTable.Answering(true, false));
      String there = ends.far().fault().orElseThrow().sentence();
      assertThat(ends.near().fault().orElseThrow().sentence()).isEqualTo("At desk: " + there);
    }
    table.sound();
  }

  @Test
  void lines_of_strangers_come_only_when_agreed_to() throws Exception {
    rockets(table, far, 3);
    rockets(table, near, 3);
    TalkTable.Ends ends =
        table.exchange(out -> out, out -> out, new TalkTable.Answering(false, false));
    assertThat(ends.near().fault()).map(Fault::code).contains("sync-strangers");
    assertThat(ends.far().fault()).isEmpty();
    assertThat(LogState.rows(near, "SELECT count(*) FROM rocket")).containsExactly("3");
    assertThat(LogState.rows(far, "SELECT count(*) FROM rocket")).containsExactly("3");

    Told look =
        table
            .exchange(out -> out, out -> out, new TalkTable.Answering(false, true))
            .near()
            .told()
            .orElseThrow();
    assertThat(look.out()).isEqualTo(4);
    assertThat(look.in()).isEqualTo(4);
    assertThat(LogState.rows(far, "SELECT count(*) FROM rocket")).containsExactly("3");
  }

  private String answer(String said) throws Exception {
    return answer(said.getBytes(StandardCharsets.UTF_8));
  }

  private String answer(byte[] said) throws Exception {
    return answer(new ByteArrayInputStream(said), TalkTable.PATIENCE);
  }

  private String answer(InputStream said, Duration patience) throws Exception {
    try (LogFolder log = table.open(near)) {
      Talk talk =
          new Talk(new Talk.Streams(said, OutputStream.nullOutputStream(), patience), "desk", "1");
      Fault fault =
          Assertions.catchThrowableOfType(
              Fault.class, () -> talk.near(log.exchange(), new TalkTable.Answering(true, false)));
      return fault.sentence();
    }
  }

  private static void rockets(TalkTable table, Path folder, int count) throws Fault {
    try (LogFolder log = table.open(folder)) {
      for (int rocket = 0; rocket < count; rocket++) {
        log.save(named("Rocket " + rocket));
      }
    }
    assertThat(Files.exists(folder)).isTrue();
  }

  private static Action named(String name) {
    return Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name));
  }
}
