package padside.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Attempt;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.insight.Measured;
import padside.insight.Reliability;
import padside.motor.MotorText;
import padside.motor.MotorType;
import padside.page.Form;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** One failed motor, in the order it is asked about. */
final class FailureForm {
  private final Flight flight;
  private final Facts facts;
  private final Logbook book;
  private final PageSource source;
  private final UnitSystem units;
  private final Reliability reliability;

  /** Of a flight of the log whose motors the reliability has counted. */
  FailureForm(Flight flight, Logbook book, PageSource source, Reliability reliability) {
    this.reliability = reliability;
    this.flight = flight;
    this.facts = flight.facts();
    this.book = book;
    this.source = source;
    this.units = source.units();
  }

  List<Form> forms() {
    return List.of(motor(), failure(), flown(), who());
  }

  private Form motor() {
    Optional<Lot> lot = flight.lot().flatMap(book::lot);
    Optional<MotorType> type =
        flight
            .motor()
            .flatMap(line -> book.motors().chooseAll(line).value())
            .map(stack -> stack.top().motor().type());
    return form(
        "The motor",
        half("Designation", flight.motor()),
        half("Maker", Optional.empty()),
        half("Lot", lot.map(Lot::code)),
        half("Maker's date code", lot.flatMap(Lot::dateCode)),
        half(
            "Lot of the booster",
            flight.boosterLot().flatMap(book::lot).map(Lot::code).or(this::noStack)),
        half("Propellant, use", type.flatMap(each -> each.facts().get(MotorType.PROPELLANT))),
        half("Case diameter", type.flatMap(MotorType::diameter).map(FailureForm::millimetres)),
        half("Bought on", lot.flatMap(each -> each.facts().get(Lot.BOUGHT_ON))),
        half("Bought where", Optional.empty()),
        half("Kept in", lot.flatMap(each -> each.facts().get(Lot.PLACE))),
        half("Warmest and coldest it was kept", Optional.empty()),
        half("Fired of this lot", lot.map(this::fired)),
        wide("How this lot did", lot.map(each -> reliability.of(each).words())),
        wide(
            "Beside others of its type",
            lot.flatMap(reliability::contrast).map(Reliability.Contrast::words)),
        wide("Note on the lot", lot.flatMap(each -> each.facts().get(Lot.NOTE))));
  }

  /** One motor alone has none, which is no question left open. */
  private Optional<String> noStack() {
    boolean staged = flight.motor().flatMap(line -> MotorText.of(line).booster()).isPresent();
    return staged ? Optional.empty() : Optional.of("none");
  }

  private static String millimetres(Length length) {
    return Notations.bodyLength(UnitSystem.METRIC).show(length);
  }

  private String fired(Lot lot) {
    return book.firedByLot().getOrDefault(lot.id(), 0)
        + book.left(lot).map(left -> ", " + left + " left").orElse("");
  }

  private Form failure() {
    Measured marks = Measured.of(facts, book.motors());
    Optional<TimeSpan> delay = facts.get(Flight.MEASURED_DELAY).or(marks::delay);
    return form(
        "What happened",
        half("Burn", aspect(Flight.BURN)),
        half("Ejection charge", aspect(Flight.EJECTION)),
        half("Delay as sold", marks.stamped().map(FlightWords::seconds)),
        half("Delay as measured", delay.map(FlightWords::seconds)),
        half("Boost", aspect(Flight.BOOST)),
        half("Recovery", aspect(Flight.RECOVERY)),
        half("Landing", aspect(Flight.LANDING)),
        half("Altitude reached", flight.altitude().map(Notations.altitude(units)::show)),
        half("Igniter", igniter()),
        half("Misfires before", Optional.of(String.valueOf(attempts().size()))),
        wide("Damage", damage()),
        wide("Note", facts.get(Flight.NOTE)),
        wide("Noise, flame, smoke, what was seen", Optional.empty()),
        wide("Where photos and the remains are", Optional.empty()));
  }

  private List<Attempt> attempts() {
    return book.attemptsOf(flight.id());
  }

  private Optional<String> igniter() {
    return attempts().stream()
        .flatMap(each -> each.facts().get(Attempt.IGNITER).stream())
        .reduce((first, second) -> second);
  }

  private Optional<String> damage() {
    String told =
        Stream.concat(
                facts.get(Flight.DAMAGE).stream(),
                facts.get(Flight.CONDITION).orElse(List.of()).stream()
                    .map(
                        each ->
                            source.outcomes().words("part", each.part())
                                + " "
                                + source.outcomes().words("state", each.state())))
            .collect(Collectors.joining("; "));
    return told.isEmpty() ? Optional.empty() : Optional.of(told);
  }

  private Form flown() {
    Optional<Weather> weather = flight.day().flatMap(book::latestWeather);
    Optional<Rocket> rocket = flight.rocket().flatMap(book::rocket);
    return form(
        "The flight",
        half("Date", day().flatMap(Day::date).map(FlightWords::date)),
        half("Lift-off at", facts.get(Flight.LIFTOFF_AT).map(source::clock)),
        half("Field", day().flatMap(Day::field).flatMap(book::field).map(Field::name)),
        half("Wind", flight.wind().map(Notations.wind(units)::show)),
        half(
            "Air temperature",
            weather.flatMap(Weather::temperature).map(Notations.temperature(units)::show)),
        half(
            "Humidity",
            weather.flatMap(Weather::humidity).map(each -> Math.round(100 * each) + " %")),
        half("Rocket", rocket.map(Rocket::name)),
        half(
            "Mass without motor",
            facts
                .get(Flight.MASS)
                .or(() -> rocket.flatMap(Rocket::mass))
                .map(Notations.mass(units)::show)),
        half("Tube", rocket.flatMap(Rocket::diameter).map(Notations.bodyLength(units)::show)),
        half("Rod", facts.get(Flight.ROD).map(Notations.rodLength(units)::show)),
        half("Check said", flight.verdict().map(verdict -> verdict.word())),
        half(
            "Predicted apogee",
            facts.get(Flight.PREDICTED_APOGEE).map(Notations.altitude(units)::show)));
  }

  private Optional<Day> day() {
    return flight.day().flatMap(book::day);
  }

  private Form who() {
    return form(
        "Who tells it",
        half("Flier", flight.flier().or(source::flier)),
        half("Member number", Optional.empty()),
        half("How to be reached", Optional.empty()),
        half("Witness", Optional.empty()),
        half("Sent to", Optional.empty()),
        half("Sent on", Optional.empty()),
        wide("Signed", Optional.empty()));
  }

  private Optional<String> aspect(Column<String> column) {
    return facts.get(column).map(code -> source.outcomes().words(column.name(), code));
  }

  private static Form.Entry half(String label, Optional<String> value) {
    return Form.Entry.of(label, value.orElse(""));
  }

  private static Form.Entry wide(String label, Optional<String> value) {
    return Form.Entry.wide(label, value.orElse(""));
  }

  private static Form form(String title, Form.Entry... entries) {
    return new Form(title, List.of(entries), false);
  }
}
