package padside.screen;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import padside.clock.Moment;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;

/** What stands between a key and its frame with all the flights a reading of the log holds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class KeyBenchmark {
  private static final Size SIZE = new Size(80, 24);
  private static final int FLIGHTS_A_DAY = 10;

  /** Flights of earlier days in the log. */
  @Param({"0", "500"})
  public int flights;

  /** Where the key is pressed: at home, no day open today; on the day; on a card; in a plan. */
  @Param({"HOME", "DAY", "CARD", "PLAN"})
  public Place place;

  private Session session;
  private List<Key> keys;
  private int at;

  /** A screen, how it is reached and what is pressed there. */
  public enum Place {
    HOME(Duration.ofDays(3), "", "<down><up>"),
    DAY(Duration.ZERO, "", "<down><up>"),
    CARD(Duration.ZERO, "nher<enter>", "7g10<backspace><backspace><backspace><backspace>"),
    PLAN(Duration.ofDays(3), "ta<esc>", "<down><up>");

    private final Duration later;
    private final String way;
    private final String keys;

    Place(Duration later, String way, String keys) {
      this.later = later;
      this.way = way;
      this.keys = keys;
    }
  }

  @Setup(Level.Trial)
  public void open() {
    Meadow meadow = new Meadow();
    for (int i = 0; i < flights; i++) {
      earlier(meadow, i);
    }
    Desk desk = meadow.withMorning().withWeather("6g9 SW", Duration.ofMinutes(11)).desk();
    session = desk.after(place.later).press(place.way).session();
    keys = Key.script(place.keys);
  }

  private static void earlier(Meadow meadow, int i) {
    RecordId day = meadow.day;
    if (i % FLIGHTS_A_DAY == 0) {
      LocalDate date = LocalDate.ofInstant(Desk.MORNING, ZoneOffset.UTC).minusDays(500 - i);
      day =
          meadow.log.has(Kind.DAY, Facts.none().with(Day.DATE, date).with(Day.FIELD, meadow.field));
    } else {
      var days = meadow.log.list(Kind.DAY);
      day = days.get(days.size() - 1).id();
    }
    RecordId flight =
        meadow.log.has(
            Kind.FLIGHT,
            Facts.none()
                .with(Flight.STATUS, Flight.Status.FLOWN)
                .with(Flight.DAY, day)
                .with(Flight.ROCKET, meadow.heron)
                .with(Flight.MOTOR, "C6-5")
                .with(Flight.LOT, meadow.lotK)
                .with(Flight.DEVICE, meadow.dome)
                .with(Flight.BURN, "nominal")
                .with(Flight.LANDING, "soft"));
    if (i % FLIGHTS_A_DAY == 0) {
      meadow.log.has(Kind.ATTEMPT, Facts.none().with(Attempt.FLIGHT, flight));
    }
  }

  /** A key: the next session and its whole frame. */
  @Benchmark
  public Frame keyToFrame() {
    Key key = keys.get(at++ % keys.size());
    Moment now = Desk.moment(Desk.MORNING.plus(place.later));
    session = session.on(new Event.Pressed(key, now)).session();
    return session.view(SIZE);
  }
}
