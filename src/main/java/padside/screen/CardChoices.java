package padside.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.RecordId;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.Rocket;
import padside.form.Choices;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorTable;
import padside.motor.MotorText;
import padside.motor.MotorType;
import padside.preflight.OpenCards;
import padside.units.Length;
import padside.units.Notation;
import padside.units.Reading;
import padside.units.UnitSystem;

/** The lists a card's fields are filled from, what is most likely wanted first. */
final class CardChoices {
  private final Logbook book;
  private final StockWords stock;
  private final Map<String, List<Lot>> lots;

  CardChoices(World world) {
    this.book = world.log();
    this.stock = StockWords.of(world);
    this.lots =
        book.lots().stream()
            .collect(Collectors.groupingBy(lot -> designation(lot.motor()).orElse(lot.motor())));
  }

  /**
   * A designation with its delay, anything in the motor table allowed.
   *
   * @param several whether clusters and stacks are
   */
  record Designations(MotorTable motors, boolean several) implements Notation<String> {
    @Override
    public Reading<String> read(String typed) {
      return several
          ? motors.chooseAll(typed).map(MotorStack::designation)
          : motors.choose(typed).map(MotorChoice::designation);
    }

    @Override
    public String show(String value) {
      return value;
    }

    @Override
    public String example() {
      return "C6-5";
    }
  }

  /** The fleet, last flown first, then those that never flew. */
  Choices<RecordId> rockets() {
    List<RecordId> flown =
        book.flights().stream()
            .filter(flight -> !flight.isPlanned())
            .flatMap(flight -> flight.rocket().stream())
            .distinct()
            .toList();
    return new Choices<>(
        "rocket",
        book.rockets().stream()
            .sorted(Comparator.comparing(rocket -> rank(flown.indexOf(rocket.id()))))
            .map(rocket -> new Choices.Option<>(rocket.id(), rocket.name(), note(rocket)))
            .toList());
  }

  /** What a lot can be of: the motors of {@link #motors}. */
  Choices<String> oneMotor() {
    return listed(Optional.empty()).orElse(new Designations(book.motors(), false));
  }

  /**
   * Motors in the range box, then those used up, then the rest of the table; fitting ones first.
   * Several of them can be typed.
   */
  Choices<String> motors(Optional<Length> mount) {
    return listed(mount).orElse(new Designations(book.motors(), true));
  }

  private Choices<String> listed(Optional<Length> mount) {
    List<MotorChoice> motors = new ArrayList<>(book.motors().choices());
    motors.sort(
        Comparator.comparing(
                (MotorChoice motor) -> motor.type().fit(mount) == MotorType.Fit.TOO_WIDE)
            .thenComparing(motor -> stockRank(motor.designation()))
            .thenComparing(motor -> motor.type().fit(mount)));
    List<Choices.Option<String>> options = new ArrayList<>();
    for (MotorChoice motor : motors) {
      String designation = motor.designation();
      options.add(new Choices.Option<>(designation, designation, note(motor, mount)));
    }
    return new Choices<>("motor", options);
  }

  /** The lots of the motors of one stage, those with enough of them left first. */
  Choices<RecordId> lots(Optional<MotorText.Part> stage) {
    return new Choices<>(
        "lot" + stage.map(each -> " of " + each.motor()).orElse(""),
        lotsOf(stage).stream()
            .sorted(Comparator.comparing(lot -> !holds(lot, stage)))
            .map(lot -> new Choices.Option<>(lot.id(), lot.code(), stock.of(lot)))
            .toList());
  }

  Choices<RecordId> devices(UnitSystem units) {
    return devices(units, OpenCards.none(book));
  }

  /** With the card that each of them rides on already. */
  Choices<RecordId> devices(UnitSystem units, OpenCards others) {
    return new Choices<>(
        "parachute or streamer",
        book.devices().stream()
            .map(
                device ->
                    new Choices.Option<>(
                        device.id(),
                        device.name(),
                        Stream.concat(
                                Stream.of(RocketFields.size(device, units))
                                    .filter(size -> !size.isBlank()),
                                held(others, Flight.DEVICE, device.id()))
                            .collect(Collectors.joining(", "))))
            .toList());
  }

  private static Stream<String> held(OpenCards others, Column<RecordId> column, RecordId gear) {
    return others.holder(column, gear).map(card -> "on " + card).stream();
  }

  /** With the card that each of them rides on already. */
  Choices<RecordId> altimeters(OpenCards others) {
    return new Choices<>(
        "altimeter",
        book.altimeters().stream()
            .map(
                each ->
                    new Choices.Option<>(
                        each.id(),
                        each.name(),
                        held(others, Flight.ALTIMETER, each.id()).collect(Collectors.joining())))
            .toList());
  }

  /** The lot a stage's motors come from when there is no doubt: the only one with enough left. */
  Optional<Lot> onlyLot(Optional<MotorText.Part> stage) {
    List<Lot> stocked = lotsOf(stage).stream().filter(lot -> holds(lot, stage)).toList();
    return stocked.size() == 1 ? Optional.of(stocked.get(0)) : Optional.empty();
  }

  List<Lot> lotsOf(Optional<MotorText.Part> stage) {
    return stage
        .flatMap(each -> designation(each.motor()))
        .map(each -> lots.getOrDefault(each, List.of()))
        .orElse(List.of());
  }

  /** False when a lot was counted and less of it is left than the stage takes. */
  boolean holds(Lot lot, Optional<MotorText.Part> stage) {
    int wanted = stage.map(MotorText.Part::count).orElse(1);
    return book.left(lot).map(left -> left >= Math.max(1, wanted)).orElse(true);
  }

  private boolean usedUp(Lot lot) {
    return !holds(lot, Optional.empty());
  }

  private String note(Rocket rocket) {
    if (book.openFixes(rocket.id()).stream()
        .anyMatch(fix -> fix.severity() == Fix.Severity.GROUNDS_IT)) {
      return "grounded until mended";
    }
    return book.lastFlight(rocket.id())
        .flatMap(FlightText::motors)
        .map(motor -> "last " + motor)
        .orElse("not flown yet");
  }

  private String note(MotorChoice motor, Optional<Length> mount) {
    List<String> notes = new ArrayList<>();
    List<Lot> own = lots.getOrDefault(motor.designation(), List.of());
    List<Lot> stocked = own.stream().filter(lot -> !usedUp(lot)).toList();
    if (stocked.size() == 1) {
      notes.add(
          stock.told(stocked) + "lot " + stocked.get(0).code() + ", " + stock.left(stocked.get(0)));
    } else if (stocked.size() > 1) {
      notes.add(stock.told(stocked) + stocked.size() + " lots" + total(stocked));
    } else if (!own.isEmpty()) {
      notes.add("none left");
    }
    String fit = motor.type().fit(mount).words();
    if (!fit.isEmpty()) {
      notes.add(fit);
    }
    return String.join(", ", notes);
  }

  private String total(List<Lot> some) {
    return some.stream().allMatch(lot -> book.left(lot).isPresent())
        ? ", " + some.stream().mapToInt(lot -> book.left(lot).orElse(0)).sum() + " left"
        : "";
  }

  private int stockRank(String designation) {
    List<Lot> own = lots.getOrDefault(designation, List.of());
    if (own.isEmpty()) {
      return 2;
    }
    return own.stream().allMatch(this::usedUp) ? 1 : 0;
  }

  private Optional<String> designation(String typed) {
    return book.motors().choose(typed).value().map(MotorChoice::designation);
  }

  private static int rank(int index) {
    return index < 0 ? Integer.MAX_VALUE : index;
  }
}
