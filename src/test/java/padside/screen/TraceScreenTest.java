package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.trace.Found;
import padside.trace.KeptTrace;
import padside.trace.TraceFinding;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/** The altimeter's line of a flight: asked for, shown, taken, kept, drawn. */
class TraceScreenTest {
  private static final List<Size> SIZES =
      List.of(new Size(60, 20), new Size(80, 24), new Size(120, 40));

  private final Meadow meadow = new Meadow().withMorning();

  private static KeptTrace.Point point(double time, double height) {
    return new KeptTrace.Point(new TimeSpan(time), new Length(height));
  }

  private static KeptTrace trace() {
    return new KeptTrace(
        "alder-7.csv",
        0x1234abcdL,
        900,
        new Length(0.4),
        List.of(
            point(-1, 0),
            point(0, 0),
            point(0.5, 8),
            point(1.5, 60),
            point(3, 110),
            point(4.5, 133),
            point(5.5, 136),
            point(6.4, 133),
            point(6.41, 95),
            point(6.6, 130),
            point(8, 124),
            point(20, 63),
            point(32.5, 0),
            point(35, 0)),
        List.of(
            new KeptTrace.Mark(KeptTrace.Event.APOGEE, point(5.5, 136)),
            new KeptTrace.Mark(KeptTrace.Event.EJECTION, point(6.4, 133)),
            new KeptTrace.Mark(KeptTrace.Event.TOUCHDOWN, point(32.5, 0))));
  }

  private static Found<TimeSpan> seconds(double value, double within) {
    return Found.of(new TimeSpan(value), new TimeSpan(within));
  }

  private static TraceFinding finding() {
    return new TraceFinding(
        new TraceFinding.Source("alder-7.csv", false, 900, new TimeSpan(0.05)),
        12.3,
        Found.of(new Length(136.04), new Length(0.3)),
        seconds(5.5, 0.05),
        seconds(6.4, 0.05),
        true,
        List.of(
            new TraceFinding.Rate(
                new TimeSpan(8), new TimeSpan(32), new Speed(5.05), new Speed(0.02))),
        seconds(32.5, 0.1),
        Found.absent("the noise leaves it uncertain by 14 %"),
        Optional.of(new Length(142)),
        new Length(0.2),
        List.of("900 samples, one each 0.05 s, with a noise of 0.2 m."),
        trace());
  }

  /** The log with its last flight open. */
  private Desk opened(Desk desk) {
    return desk.opening(world -> FlightScreen.of(flown(world.log()).id()));
  }

  private Desk read(Desk desk) {
    opened(desk).press("t/stick/alder-7.csv<enter>");
    Effect.ReadTrace asked = last(desk, Effect.ReadTrace.class);
    return desk.told(new Event.TraceRead(asked.ticket(), asked.path(), 1, 2, finding()));
  }

  private static <T extends Effect> T last(Desk desk, Class<T> kind) {
    List<T> all = desk.exchanges().stream().filter(kind::isInstance).map(kind::cast).toList();
    return all.get(all.size() - 1);
  }

  private static Flight flown(Logbook log) {
    return log.flights().stream()
        .filter(each -> each.status() == Flight.Status.FLOWN)
        .findFirst()
        .orElseThrow();
  }

  private static Flight flight(Desk desk) {
    return flown(desk.book());
  }

  private static void holds(String name, Desk desk) {
    for (Size size : SIZES) {
      Golden.holds(name + "-" + size.columns() + "x" + size.rows(), desk.frame(size));
    }
  }

  @Test
  void a_file_is_asked_for_with_the_newest_listed() {
    Desk desk = opened(meadow.desk()).press("t");
    Effect.ListTraces list = last(desk, Effect.ListTraces.class);
    desk.told(new Event.TracesListed(list.ticket(), List.of("/stick/alder-7.csv", "/stick/old/")));
    Golden.holds("trace-asked", desk.press("/st").frame(new Size(80, 24)));

    desk.press("<enter>");
    assertThat(last(desk, Effect.ReadTrace.class).path()).isEqualTo("/stick/alder-7.csv");
    assertThat(desk.press("<esc>").top()).isInstanceOf(FlightScreen.class);
  }

  @Test
  void what_was_found_stands_beside_what_the_flight_says() {
    holds("trace-read", read(meadow.desk()));
    holds("trace-read-ascii", read(meadow.desk().withoutBraille()));
  }

  @Test
  void taken_it_is_one_change_that_leaves_alone_what_was_typed() {
    Desk desk = read(meadow.desk());
    Facts before = flight(desk).facts();
    Flight flown = flight(desk);
    desk.press("<enter>");

    assertThat(desk.top()).isInstanceOf(FlightScreen.class);
    Facts after = desk.book().flight(flown.id()).orElseThrow().facts();
    assertThat(after.get(Flight.TRACE)).contains(trace().text());
    boolean typed = before.typed(Flight.ALTITUDE).isPresent();
    assertThat(after.get(Flight.ALTITUDE))
        .isEqualTo(typed ? before.get(Flight.ALTITUDE) : Optional.of(new Length(136.04)));
    assertThat(desk.frame()).contains("trace of 14 points, 446 ft");
  }

  @Test
  void o_takes_it_over_what_was_typed() {
    Flight flight = flight(meadow.desk());
    meadow.log.save(
        Action.change(
            "type",
            Kind.FLIGHT,
            flight.id(),
            Facts.none().with(Flight.ALTITUDE, new Length(130), "130m")));
    Desk again = read(meadow.desk());
    assertThat(again.frame()).contains("typed 427 ft");
    again.press("o");

    assertThat(again.book().flight(flight.id()).orElseThrow().altitude())
        .contains(new Length(136.04));
  }

  @Test
  void what_cannot_be_read_is_told_and_the_path_stays() {
    Desk desk = opened(meadow.desk()).press("tx.csv<enter>");
    Effect.ReadTrace asked = last(desk, Effect.ReadTrace.class);
    desk.told(
        new Event.NotRead(
            asked.ticket(),
            new padside.fact.Fault("trace-file", "There is no file \"x.csv\".", "")));

    assertThat(desk.frame()).contains("There is no file \"x.csv\".").contains("x.csv");
  }

  @Test
  void a_kept_line_is_drawn() {
    meadow.log.save(
        Action.change(
            "take",
            Kind.FLIGHT,
            flight(meadow.desk()).id(),
            Facts.none().with(Flight.TRACE, trace().text())));
    holds("trace-kept", opened(meadow.desk()).press("t"));
    holds("trace-kept-ascii", opened(meadow.desk().withoutBraille()).press("t"));
  }
}
