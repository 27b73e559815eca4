package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import padside.Trials;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.MemoryFlightLog;
import padside.insight.Scores;
import padside.preflight.Card;
import padside.preflight.LotRecords;
import padside.preflight.Preflight;
import padside.preflight.Settings;
import padside.units.Length;

/**
 * Over the made-up season, whose rockets have another drag than was typed for them: what was
 * predicted on the morning, which had all altitudes before that flight and none after, is nearer to
 * what was measured than what the typed drag foretells.
 */
class DemoLearningTest {
  /** So many altitudes of a rocket are there before a flight of it counts here. */
  private static final int TAUGHT = 2;

  private static MemoryFlightLog log;
  private static Logbook book;

  private record Pair(double learned, double typed) {}

  @BeforeAll
  static void write() throws Fault {
    log = new MemoryFlightLog();
    DemoSeason.write(log);
    book = Logbook.read(log, Shipped.motors());
  }

  @Test
  void predictions_improve_with_flights() throws Fault {
    List<Pair> taught = taught();
    double typed = mean(taught.stream().mapToDouble(Pair::typed));
    double learned = mean(taught.stream().mapToDouble(Pair::learned));
    Trials.say(
        "demo season, %d flights after two or more altitudes of their rocket: mean error of the altitude %.1f %% with the drag as typed, %.1f %% with what was learned before each"
            .formatted(taught.size(), 100 * typed, 100 * learned));
    assertThat(taught).hasSizeGreaterThan(8);
    assertThat(learned).isLessThan(0.8 * typed);
  }

  @Test
  void the_intervals_told_hold_about_nine_in_ten() throws Fault {
    Scores.Summary altitude =
        Scores.of(measured(), book.motors()).summary(Scores.Scored::altitude).orElseThrow();
    Trials.say(
        "demo season: %d of %d altitudes within the interval told before the flight"
            .formatted(altitude.held(), altitude.told().size()));
    // Of 33 intervals that hold nine times in ten, fewer than three quarters hold in less than one
    // season in a hundred (binomial).
    assertThat(altitude.held()).isGreaterThanOrEqualTo(altitude.told().size() * 3 / 4);
  }

  /** The flights of which it is known what was taught before, in the order they were flown. */
  private static List<Pair> taught() throws Fault {
    LotRecords records = new LotRecords(book, Shipped.outcomes());
    Preflight preflight = new Preflight(Settings.standard());
    Map<RecordId, Integer> before = new HashMap<>();
    List<Pair> pairs = new ArrayList<>();
    for (Flight flight : measured()) {
      RecordId rocket = flight.rocket().orElseThrow();
      if (before.merge(rocket, 1, Integer::sum) > TAUGHT) {
        Length told = flight.facts().get(Flight.PREDICTED_TOP).orElseThrow();
        Card card = Card.withoutBox(flight, records, Optional.empty());
        Length typed =
            preflight
                .answer(card.withRocket(card.rocket().orElseThrow()))
                .outlook()
                .map(outlook -> outlook.top().height())
                .orElseThrow();
        Length altitude = flight.altitude().orElseThrow();
        pairs.add(new Pair(error(told, altitude), error(typed, altitude)));
      }
    }
    return pairs;
  }

  private static List<Flight> measured() throws Fault {
    return log.list(Kind.FLIGHT).stream()
        .map(each -> new Flight(each.id(), each.facts()))
        .filter(flight -> flight.status() == Flight.Status.FLOWN)
        .filter(flight -> flight.altitude().isPresent())
        .toList();
  }

  private static double error(Length predicted, Length measured) {
    return Math.abs(measured.metres() / predicted.metres() - 1);
  }

  private static double mean(DoubleStream values) {
    return values.average().orElseThrow();
  }
}
