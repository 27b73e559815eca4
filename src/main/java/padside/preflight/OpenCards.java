package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;

/**
 * The open cards of a day beside one of them. A parachute, streamer or altimeter rides in one
 * rocket at a time, and on a pad stands one.
 *
 * @param day every flight of the day, in its order
 */
public record OpenCards(Logbook book, List<Flight> day, List<Flight> others) {
  /**
   * Something a card names that another open card holds.
   *
   * @param device the parachute or streamer it is about; absent for anything else
   * @param sentence what is held and by whom
   */
  public record Claim(Optional<RecordId> device, String sentence) {
    /** Whether it still stands for a card that names this parachute or streamer now. */
    boolean of(Optional<RecoveryDevice> named) {
      return device.isEmpty() || device.equals(named.map(RecoveryDevice::id));
    }
  }

  /** Keeps its own lists. */
  public OpenCards {
    day = List.copyOf(day);
    others = List.copyOf(others);
  }

  /** No card at all. */
  public static OpenCards none(Logbook book) {
    return beside(Optional.empty(), Optional.empty(), book);
  }

  /** Those beside a flight. */
  public static OpenCards beside(Flight own, Logbook book) {
    return beside(Optional.of(own.id()), own.day(), book);
  }

  /**
   * Those of a day.
   *
   * @param own the card not to be counted; absent while it has no id yet
   */
  public static OpenCards beside(Optional<RecordId> own, Optional<RecordId> day, Logbook book) {
    List<Flight> flights = day.map(book::flightsOf).orElse(List.of());
    return new OpenCards(
        book,
        flights,
        flights.stream()
            .filter(each -> each.isOpen() && !own.equals(Optional.of(each.id())))
            .toList());
  }

  /** Which other card holds a parachute or streamer, in a sentence without its end. */
  public Optional<String> device(RecordId device) {
    String name = book.device(device).map(RecoveryDevice::name).orElse("this device");
    return holder(Flight.DEVICE, device).map(card -> name + " rides on " + card + " already");
  }

  /** Which other card holds an altimeter, in a sentence without its end. */
  public Optional<String> altimeter(RecordId altimeter) {
    String name = book.altimeter(altimeter).map(Altimeter::name).orElse("this altimeter");
    return holder(Flight.ALTIMETER, altimeter).map(card -> name + " rides on " + card + " already");
  }

  /** Which other card stands on a pad, in a sentence without its end. */
  public Optional<String> pad(int pad) {
    return holder(Flight.PAD, pad).map(card -> "pad " + pad + " is taken by " + card);
  }

  /** The other card with this value, as it is called: {@code card 2 (Kestrel)}. */
  public <T> Optional<String> holder(Column<T> column, T value) {
    return others.stream()
        .filter(each -> each.facts().get(column).equals(Optional.of(value)))
        .findFirst()
        .map(this::called);
  }

  /** The first pad nobody stands on, where the day has several. */
  public Optional<Integer> freePad(Day here) {
    for (int pad = 1; pad <= here.pads() && here.pads() > 1; pad++) {
      if (pad(pad).isEmpty()) {
        return Optional.of(pad);
      }
    }
    return Optional.empty();
  }

  /** What this flight names of the range box and another card holds; nothing once it has flown. */
  List<Claim> claims(Flight own) {
    List<Claim> claims = new ArrayList<>();
    if (own.isOpen()) {
      own.device()
          .flatMap(this::device)
          .ifPresent(sentence -> claims.add(new Claim(own.device(), sentence)));
      own.altimeter()
          .flatMap(this::altimeter)
          .ifPresent(sentence -> claims.add(new Claim(Optional.empty(), sentence)));
    }
    return claims;
  }

  private String called(Flight flight) {
    String rocket =
        flight
            .rocket()
            .flatMap(book::rocket)
            .map(Rocket::name)
            .map(each -> " (" + each + ")")
            .orElse("");
    return "card " + (day.indexOf(flight) + 1) + rocket;
  }
}
