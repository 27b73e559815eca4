package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import padside.fact.Fault;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.preflight.Card;
import padside.preflight.Outlook;

/** What the made-up season says was measured is the flight model within the scatter it states. */
class DemoScatterTest {
  private static final double HALF_A_FOOT_M = 0.3048 / 2;
  private static final DemoScript SCRIPT = DemoScript.shipped();
  private static List<Flight> flights;
  private static Logbook book;

  @BeforeAll
  static void write() throws Fault {
    MemoryFlightLog log = new MemoryFlightLog();
    DemoSeason.write(log);
    book = Logbook.read(log, Shipped.motors());
    flights =
        log.list(Kind.FLIGHT).stream()
            .map(f -> new Flight(f.id(), f.facts()))
            .filter(flight -> flight.status() != Flight.Status.PLANNED)
            .toList();
  }

  @Test
  void every_altitude_is_the_models_within_the_scatter() {
    List<DemoStep> steps =
        SCRIPT.steps().stream().filter(step -> step.does().equals("flight")).toList();

    assertThat(steps).hasSameSizeAs(flights);
    List<Integer> measured =
        IntStream.range(0, flights.size())
            .filter(i -> flights.get(i).altitude().isPresent())
            .boxed()
            .toList();
    assertThat(measured).hasSizeGreaterThan(20);
    assertThat(measured)
        .allSatisfy(
            i ->
                assertThat(flights.get(i).altitude().orElseThrow().metres())
                    .as("%s, seed %d", steps.get(i), SCRIPT.seed())
                    .isBetween(
                        highestM(flights.get(i), steps.get(i), -DemoScatter.FURTHEST),
                        highestM(flights.get(i), steps.get(i), DemoScatter.FURTHEST)));
  }

  @Test
  void measured_altitudes_stray_from_the_predicted_ones_as_in_practice() {
    // Nominal flights; the drag coefficient the flier entered is off by up to a quarter.
    assertThat(flights)
        .filteredOn(flight -> flight.altitude().isPresent())
        .filteredOn(flight -> flight.facts().get(Flight.BURN).equals(Optional.of("nominal")))
        .filteredOn(flight -> flight.facts().get(Flight.BOOST).equals(Optional.of("straight")))
        .hasSizeGreaterThan(15)
        .allSatisfy(
            flight ->
                assertThat(
                        flight.altitude().orElseThrow().metres()
                            / flight.facts().get(Flight.PREDICTED_APOGEE).orElseThrow().metres())
                    .isCloseTo(1, within(0.2)));
  }

  @Test
  void draws_have_the_stated_spread_and_no_more_than_twice_it() {
    long seed = 7;
    Random random = new Random(seed);
    List<Double> impulses =
        IntStream.range(0, 20_000)
            .mapToObj(i -> SCRIPT.scatter().draw(random).impulseFactor() - 1)
            .toList();
    double size = SCRIPT.scatter().impulse();
    double square = impulses.stream().mapToDouble(x -> x * x).average().orElseThrow();

    assertThat(impulses).allMatch(x -> Math.abs(x) <= DemoScatter.FURTHEST * size * (1 + 1e-12));
    // A normal deviate held at two standard deviations has the variance 0.9205 (closed form:
    // erf(√2) - 4 φ(2) + 4 (1 - erf(√2))).
    assertThat(Math.sqrt(square))
        .as("seed %d", seed)
        .isCloseTo(size * Math.sqrt(0.9205), within(size * 0.02));
  }

  /** The highest point by the model when all that scatters lies that far toward high flights. */
  private static double highestM(Flight flight, DemoStep step, double deviations) {
    DemoScatter scatter = SCRIPT.scatter();
    DemoStep rocket = added("rocket", book.rocket(flight.rocket().orElseThrow()).map(Rocket::name));
    DemoStep lot = added("lot", book.lot(flight.lot().orElseThrow()).map(Lot::code));
    double delay = lot.factor("true_delay_factor") * step.factor("true_delay_factor");
    DemoTruth truth =
        new DemoTruth(
            rocket.factor("true_drag_coefficient") * (1 - deviations * scatter.drag()),
            lot.factor("true_impulse_factor")
                * step.factor("true_impulse_factor")
                * (1 + deviations * scatter.impulse()),
            Optional.of(delay * (1 + deviations * scatter.delay())),
            1);
    Outlook outlook = truth.flown(card(flight));
    double topM =
        outlook.ejection().orElseThrow().time().seconds() < outlook.timeToApogee().seconds()
            ? outlook.ejection().orElseThrow().altitude().metres()
            : outlook.apogee().metres();
    return topM + deviations * scatter.readingM() + Math.signum(deviations) * HALF_A_FOOT_M;
  }

  /** The card in the weather read last before it lifted off. */
  private static Card card(Flight flight) {
    Card now = Card.of(flight, book, Shipped.outcomes(), Optional.empty());
    Instant liftoff = flight.facts().get(Flight.LIFTOFF_AT).orElseThrow();
    Optional<Weather> then =
        book.weather().stream()
            .filter(reading -> reading.day().equals(flight.day()))
            .filter(reading -> reading.at().orElseThrow().isBefore(liftoff))
            .reduce((first, second) -> second);
    return now.withWeather(then);
  }

  private static DemoStep added(String kind, Optional<String> name) {
    return SCRIPT.steps().stream()
        .filter(step -> step.does().equals(kind))
        .filter(step -> step.subject().equals(name.orElseThrow()))
        .findFirst()
        .orElseThrow();
  }
}
