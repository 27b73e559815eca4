package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;
import padside.form.Conditions;
import padside.report.FlightWords;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitSystem;

/**
 * All that is kept about a flight, as labelled lines under headings. What is absent has no line.
 */
final class FlightFacts {
  private final Flight flight;
  private final Facts facts;
  private final World world;
  private final UnitSystem units;
  private final List<Fact> lines = new ArrayList<>();

  private FlightFacts(Flight flight, World world) {
    this.flight = flight;
    this.facts = flight.facts();
    this.world = world;
    this.units = world.settings().units();
  }

  /**
   * One line.
   *
   * @param heading starts a group
   */
  record Fact(String label, String text, boolean heading) {}

  static List<Fact> of(Flight flight, World world) {
    FlightFacts all = new FlightFacts(flight, world);
    all.conflicts();
    all.card();
    all.check();
    all.pad();
    all.measured();
    all.outcome();
    return List.copyOf(all.lines);
  }

  private void conflicts() {
    List<String> fields = Disputes.of(flight.id(), world).stream().map(Dispute::about).toList();
    if (!fields.isEmpty()) {
      heading("CONFLICT", String.join(", ", fields) + ": machines say different things; r chooses");
    }
  }

  private void card() {
    heading("CARD", flight.status().words());
    Optional<Day> day = flight.day().flatMap(world.log()::day);
    line("Day", day.map(d -> FlightText.date(flight, world) + place(d)));
    line("Rocket", flight.rocket().map(id -> FlightText.rocket(flight, world)));
    line("Motor", Flight.MOTOR, Function.identity());
    line("Lot", flight.lot().map(this::lot));
    line("Booster lot", flight.boosterLot().map(this::lot));
    line(
        "Recovery",
        flight
            .device()
            .map(id -> world.log().device(id).map(RecoveryDevice::name).orElse("removed device")));
    line(
        "Altimeter",
        flight
            .altimeter()
            .map(id -> world.log().altimeter(id).map(Altimeter::name).orElse("removed altimeter")));
    line("Bare mass", Flight.MASS, Notations.mass(units)::show);
    line("Rod", Flight.ROD, Notations.rodLength(units)::show);
    line("Tilt", Flight.TILT, Notations.angle()::show);
    line("Tilt toward", Flight.TILT_TOWARD, Notations.bearing()::show);
    line(
        "Wind",
        ByWire.shown(facts, world)
            .or(() -> facts.typed(Flight.WIND_MEAN).map(FlightFacts::unread)));
    line("Flier", Flight.FLIER, Function.identity());
    line("Pad", Flight.PAD, String::valueOf);
    line("Note", Flight.NOTE, Function.identity());
  }

  private String lot(RecordId id) {
    return world.log().lot(id).map(Lot::code).orElse("removed lot");
  }

  private String place(Day day) {
    return day.field()
        .flatMap(world.log()::field)
        .map(Field::name)
        .map(name -> " at " + name)
        .orElse("");
  }

  private void check() {
    flight.verdict().ifPresent(verdict -> heading("CHECK", verdict.word() + " when it was kept"));
    line("Because", Flight.REASON, Function.identity());
    line("Wind limit", Flight.LIMIT, Notations.windSpeed(units)::showDown);
    line("Flown anyway", Flight.AGAINST, Function.identity());
  }

  private void pad() {
    List<Fact> before = List.copyOf(lines);
    line(
        "Ticked",
        facts.get(Flight.TICKED).map(keys -> keys.isEmpty() ? "" : keys.size() + " lines"));
    line("Left open", Flight.UNTICKED, open -> String.join("; ", open));
    line("Went on", Flight.WENT_ON, Function.identity());
    world
        .log()
        .attemptsOf(flight.id())
        .forEach(attempt -> line("Misfire", Optional.of(MisfireText.told(attempt, world))));
    if (lines.size() > before.size()) {
      lines.add(before.size(), new Fact("PAD", "", true));
    }
  }

  /** Prediction and measurement of the same thing on one line. */
  private void measured() {
    List<Fact> before = List.copyOf(lines);
    FlightText.compared(facts, world)
        .forEach(each -> pair(each.label(), each.predicted(), each.measured(), each.difference()));
    line("Trace", Flight.TRACE, new TraceNotation(units)::show);
    pair(
        "Landing",
        landing(Flight.PREDICTED_BEARING, Flight.PREDICTED_DISTANCE),
        landing(Flight.LANDING_BEARING, Flight.LANDING_DISTANCE),
        "");
    if (lines.size() > before.size()) {
      lines.add(before.size(), new Fact("FLIGHT", "", true));
    }
  }

  private Optional<String> landing(Column<Bearing> bearing, Column<Length> distance) {
    return FlightWords.landing(facts.get(bearing), facts.get(distance), units);
  }

  private void outcome() {
    if (flight.status() != Flight.Status.FLOWN) {
      return;
    }
    heading("OUTCOME", FlightText.outcome(flight, world));
    aspect("Boost", Flight.BOOST);
    line("Toward", Flight.BOOST_TOWARD, Notations.bearing()::show);
    aspect("Burn", Flight.BURN);
    aspect("Ejection", Flight.EJECTION);
    aspect("Recovery", Flight.RECOVERY);
    aspect("Landing", Flight.LANDING);
    aspect("Landed on", Flight.LANDED_ON);
    line("Damage", Flight.DAMAGE, Function.identity());
    line("Condition", Flight.CONDITION, new Conditions(world.outcomes())::show);
    line("To mend", Flight.TO_MEND, Function.identity());
    world.log().fixes().stream()
        .filter(fix -> fix.facts().get(Fix.FLIGHT).equals(Optional.of(flight.id())))
        .forEach(fix -> line("Fix", Optional.of(fix.text() + ", " + FixShelf.state(fix))));
    line(
        "Lift-off",
        facts.get(Flight.LIFTOFF_AT).map(at -> at.atZone(world.zone()).toLocalTime().toString()));
  }

  private void aspect(String label, Column<String> column) {
    line(label, column, code -> world.outcomes().words(column.name(), code));
  }

  private void heading(String label, String text) {
    lines.add(new Fact(label, text, true));
  }

  private <T> void line(String label, Column<T> column, Function<T, String> show) {
    Optional<String> value = facts.get(column).map(show);
    line(label, value.or(() -> facts.typed(column).map(FlightFacts::unread)));
  }

  private void line(String label, Optional<String> text) {
    text.filter(shown -> !shown.isBlank())
        .ifPresent(shown -> lines.add(new Fact(label, shown, false)));
  }

  private void pair(
      String label, Optional<String> predicted, Optional<String> measured, String more) {
    if (predicted.isPresent() || measured.isPresent()) {
      String first = predicted.map(text -> "predicted " + text).orElse("not predicted");
      String second = measured.map(text -> " · measured " + text + more).orElse("");
      lines.add(new Fact(label, first + second, false));
    }
  }

  private static String unread(String typed) {
    return typed + " (could not be read)";
  }
}
