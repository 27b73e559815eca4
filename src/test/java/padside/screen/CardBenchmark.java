package padside.screen;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import padside.preflight.Card;
import padside.preflight.CardBuilder;
import padside.preflight.Preflight;
import padside.preflight.Settings;

/** What stands between a key and its frame on the Card screen while the check runs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CardBenchmark {
  private static final Size SIZE = new Size(80, 24);

  private final Preflight preflight = new Preflight(Settings.standard());
  private final Card card = CardBuilder.small().build();
  private final List<Key> keys = Key.script("7g10<backspace><backspace><backspace><backspace>");
  private Session session =
      new Meadow()
          .withMorning()
          .withWeather("6g9 SW", Duration.ofMinutes(11))
          .desk()
          .press("nher<enter>")
          .session();
  private Thread checking = new Thread();
  private volatile boolean running;
  private int at;

  /** Keeps the check busy on another thread, as it is while the flier types. */
  @Setup(Level.Trial)
  public void startChecking() {
    running = true;
    checking =
        new Thread(
            () -> {
              while (running) {
                preflight.answer(card);
              }
            });
    checking.start();
  }

  @TearDown(Level.Trial)
  public void stopChecking() throws InterruptedException {
    running = false;
    checking.join();
  }

  /** A key typed into the wind field: the next session and its whole frame. */
  @Benchmark
  public Frame keyToFrame() {
    Key key = keys.get(at++ % keys.size());
    session = session.on(new Event.Pressed(key, Desk.moment(Desk.MORNING))).session();
    return session.view(SIZE);
  }
}
