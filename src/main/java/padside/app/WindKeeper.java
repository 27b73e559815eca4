package padside.app;

import java.io.IOException;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import padside.screen.Event;
import padside.units.TimeSpan;
import padside.units.Wind;
import padside.wire.Standing;
import padside.wire.WireLine;
import padside.wire.WireWind;
import padside.wire.WireWindow;

/**
 * Reads a wind meter's lines on a thread of its own for as long as screens run, and tells them at
 * most once a second. A source that is missing or ends is tried again every few seconds; none of it
 * keeps the program from starting or ending, not even the opening of a pipe nobody writes to.
 */
final class WindKeeper implements AutoCloseable {
  private static final long AGAIN_MILLIS = 3_000;
  private static final long GONE_ON_MILLIS = 200;

  private final Optional<WindSource> source;
  private final DoubleSupplier uptime;
  private final Inbox inbox;
  private final Thread thread = new Thread(this::run, "padside wind");
  private volatile boolean closed;

  // Only the own thread touches these.
  private final Standing standing = new Standing();
  private WireWindow window;
  private Optional<WireWind> told = Optional.empty();
  private long toldAt;
  private double last;

  /** No source: nothing is ever read. */
  WindKeeper(Optional<WindSource> source, DoubleSupplier uptime, Inbox inbox) {
    this.source = source;
    this.uptime = uptime;
    this.inbox = inbox;
    thread.setDaemon(true);
    source.ifPresent(each -> window = new WireWindow(each.span()));
  }

  /** What screens see before anything was read. */
  WireWind atStart() {
    return source.map(each -> WireWind.awaited(each.span(), nothing(each))).orElse(WireWind.none());
  }

  void start() {
    if (source.isPresent()) {
      thread.start();
    }
  }

  private void run() {
    try {
      WindSource each = source.orElseThrow();
      while (!closed) {
        pause(read(each));
      }
    } catch (RuntimeException | Error bug) {
      inbox.failed(bug);
    }
  }

  private void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      closed = true;
    }
  }

  /** Until it ends; how long to wait before the next try. */
  private long read(WindSource each) {
    double before = last;
    try (WireLines lines = new WireLines(each.open())) {
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        WireLine.read(line.get()).ifPresentOrElse(this::take, () -> other(each));
      }
      if (last > before) {
        return GONE_ON_MILLIS; // the next who writes to a pipe is waited for by opening it
      }
      trouble(each.name() + " ends without a reading");
    } catch (IOException e) {
      trouble(each.trouble(e));
    }
    return AGAIN_MILLIS;
  }

  private static String nothing(WindSource source) {
    return source.name() + " sends nothing yet";
  }

  private void take(Wind wind) {
    double now = uptime.getAsDouble();
    double span = source.orElseThrow().span().seconds();
    boolean over = window.silence(now).filter(gone -> gone.seconds() > span).isPresent();
    window = over ? new WireWindow(source.orElseThrow().span()) : window;
    window.add(now, wind);
    last = now;
    boolean first = told.filter(each -> each.trouble().isEmpty()).isEmpty();
    if (first || (long) now > toldAt) {
      toldAt = (long) now;
      tell(Optional.empty());
    }
  }

  private void other(WindSource each) {
    if (window.wind().isEmpty()) {
      trouble(each.name() + " sends lines that are no readings");
    }
  }

  private void trouble(String why) {
    boolean news = told.flatMap(WireWind::trouble).filter(why::equals).isEmpty();
    if (news && !closed) {
      tell(Optional.of(why));
    }
  }

  private void tell(Optional<String> trouble) {
    WireWind.Gusts gusts =
        !window.wind().isPresent() || !window.tellsGusts()
            ? WireWind.Gusts.TOO_EARLY
            : window.missesGusts() ? WireWind.Gusts.MISSED : WireWind.Gusts.TOLD;
    WireWind now =
        new WireWind(
            true,
            window.wind().map(standing::next),
            gusts,
            new TimeSpan(last),
            source.orElseThrow().span(),
            trouble);
    told = Optional.of(now);
    inbox.answer(new Event.Winded(now));
  }

  /** Reads no more; waits for nothing. */
  @Override
  public void close() {
    closed = true;
    thread.interrupt();
  }
}
