package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import padside.screen.Event;
import padside.units.TimeSpan;
import padside.wire.WireWind;

/** The thread that reads a wind meter, with real pipes and files. */
@Timeout(60)
class WindKeeperTest {
  private static final double PATIENCE_S = 15;

  @TempDir Path folder;
  private final ThisMachine machine = new ThisMachine();
  private final Inbox inbox = new Inbox();
  private final List<WireWind> told = new ArrayList<>();
  private WindKeeper keeper;

  @AfterEach
  void stop() {
    keeper.close();
  }

  private void reading(Path path) {
    keeper =
        new WindKeeper(
            Optional.of(new WindSource(Optional.of(path), 2)), machine::uptimeSeconds, inbox);
    keeper.start();
  }

  private Path pipe() throws IOException, InterruptedException {
    Path pipe = folder.resolve("meter");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    return pipe;
  }

  private static Writer writing(Path to, StandardOpenOption... how) throws IOException {
    OutputStream out = Files.newOutputStream(to, how);
    return new OutputStreamWriter(out, StandardCharsets.US_ASCII);
  }

  private static void send(Writer to, String line) throws IOException {
    to.write(line + "\n");
    to.flush();
  }

  /** All that is told until something like this is. */
  private WireWind await(Predicate<WireWind> like) {
    double end = machine.uptimeSeconds() + PATIENCE_S;
    while (machine.uptimeSeconds() < end) {
      for (WireWind wire : news(0.2)) {
        if (like.test(wire)) {
          return wire;
        }
      }
    }
    throw new AssertionError("not told within " + PATIENCE_S + " s, only " + told);
  }

  private List<WireWind> news(double seconds) {
    List<WireWind> news = new ArrayList<>();
    for (Inbox.Item item : inbox.take(new TimeSpan(seconds))) {
      if (item instanceof Inbox.Answered answered
          && answered.event() instanceof Event.Winded winded) {
        news.add(winded.wire());
      }
    }
    told.addAll(news);
    return news;
  }

  private static double gust(WireWind wire) {
    return wire.wind().orElseThrow().gust().metresPerSecond();
  }

  private static Predicate<WireWind> tells(double gust) {
    return wire -> wire.wind().isPresent() && Math.abs(gust(wire) - gust) < 0.01;
  }

  private static Predicate<WireWind> isTroubled(String words) {
    return wire -> wire.trouble().filter(each -> each.contains(words)).isPresent();
  }

  @Test
  void no_source_is_no_thread_and_no_event() {
    keeper = new WindKeeper(Optional.empty(), machine::uptimeSeconds, inbox);
    keeper.start();

    assertThat(keeper.atStart().set()).isFalse();
    assertThat(news(0.3)).isEmpty();
    assertThat(threads()).isEmpty();
  }

  private static List<Thread> threads() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(each -> each.getName().equals("padside wind"))
        .filter(each -> !each.isInterrupted())
        .toList();
  }

  @Test
  void a_pipe_is_read_its_writer_may_go_and_come_back() throws Exception {
    Path pipe = pipe();
    reading(pipe);
    assertThat(news(0.5)).isEmpty();
    assertThat(threads()).allMatch(Thread::isDaemon);

    try (Writer meter = writing(pipe)) {
      send(meter, "wind 4 m/s 270");
      assertThat(await(tells(4)).trouble()).isEmpty();
    }
    assertThat(news(1.5)).as("the writer is gone, its readings count on").isEmpty();
    try (Writer meter = writing(pipe)) {
      send(meter, "no reading");
      send(meter, "wind 6 m/s 270");
      await(tells(6));
    }
  }

  @Test
  void a_source_that_is_missing_is_told_once_and_read_once_it_is_there() throws Exception {
    Path pipe = folder.resolve("meter");
    reading(pipe);
    await(isTroubled("is not there"));
    assertThat(news(3.5)).isEmpty();

    pipe();
    try (Writer meter = writing(pipe)) {
      send(meter, "wind 5 m/s 180");
      await(tells(5));
      Files.delete(pipe);
    }
    assertThat(await(isTroubled("is not there")).wind()).as("counts until it is old").isPresent();
  }

  @Test
  void many_readings_a_second_are_told_once_a_second() throws Exception {
    Path pipe = pipe();
    reading(pipe);
    double begun = machine.uptimeSeconds();
    int sent = 0;
    try (Writer meter = writing(pipe)) {
      for (; machine.uptimeSeconds() < begun + 3; sent++) {
        send(meter, "wind " + (sent % 2 == 0 ? 3 : 9) + " m/s 270");
        Thread.sleep(20);
      }
    }
    news(0.5);

    System.out.println("[wind] " + sent + " readings, told " + told.size() + " times");
    assertThat(sent).isGreaterThan(50);
    assertThat(told).hasSizeBetween(3, 5);
  }

  @Test
  void bytes_without_end_and_without_a_line_cost_little() throws Exception {
    reading(Path.of("/dev/zero"));
    Thread.sleep(500);
    long id = threads().get(0).getId();
    var threads = java.lang.management.ManagementFactory.getThreadMXBean();
    long before = threads.getThreadCpuTime(id);
    Thread.sleep(3_000);
    double share = (threads.getThreadCpuTime(id) - before) / 3e9;

    System.out.printf("[wind] endless input costs %.1f %% of a core%n", 100 * share);
    assertThat(share).isLessThan(0.1);
    assertThat(told).isEmpty();
  }

  @Test
  void closing_waits_for_no_writer() throws Exception {
    reading(pipe());
    Thread.sleep(300);
    double before = machine.uptimeSeconds();
    keeper.close();

    assertThat(machine.uptimeSeconds() - before).isLessThan(0.2);
    assertThat(news(0.3)).isEmpty();
  }

  @Test
  void lines_that_are_no_readings_are_told() throws Exception {
    Path pipe = pipe();
    reading(pipe);
    try (Writer meter = writing(pipe)) {
      send(meter, "hello");
      await(isTroubled("sends lines that are no readings"));
      send(meter, "wind 3 m/s 090");
      assertThat(await(tells(3)).trouble()).isEmpty();
    }
  }

  @Test
  void of_a_file_counts_what_is_written_from_now_on() throws Exception {
    Path file = Files.writeString(folder.resolve("lines"), "wind 20 m/s 270\n");
    reading(file);
    Thread.sleep(300);
    try (Writer meter = writing(file, StandardOpenOption.APPEND)) {
      send(meter, "wind 3 m/s 270");
    }
    await(tells(3));
    Thread.sleep(1_100); // more than one a second is told with the next
    Files.writeString(file, "wind 7 m/s 270\n");
    await(tells(7));
    assertThat(news(2.5)).as("what was read is not read again").isEmpty();
    assertThat(told).noneMatch(tells(20));
  }

  @Test
  void a_folder_is_no_meter() {
    reading(folder);

    await(isTroubled("is a folder"));
  }

  @Test
  void the_made_up_meter_tells_a_gust_after_some_seconds() {
    keeper = new WindKeeper(Optional.of(WindSource.simulated(2)), machine::uptimeSeconds, inbox);
    keeper.start();

    await(wire -> wire.gusts() == WireWind.Gusts.TOLD);
    assertThat(told).hasSizeBetween(3, 7);
  }
}
