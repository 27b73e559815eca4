package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.MemoryFlightLog;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.motor.MotorTable;
import padside.units.Speed;
import padside.units.Wind;

/** What two open cards of a day cannot share, counted by hand from a few records. */
class OpenCardsTest {
  private final MemoryFlightLog log = new MemoryFlightLog();
  private final RecordId day = log.has(Kind.DAY, Facts.none().with(Day.PADS, 3));
  private final RecordId chute =
      log.has(Kind.DEVICE, Facts.none().with(RecoveryDevice.NAME, "12in red"));
  private final RecordId blue = log.has(Kind.ALTIMETER, Facts.none().with(Altimeter.NAME, "blue"));
  private final RecordId wren = log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Wren"));

  private Flight card(Flight.Status status, Facts more) {
    Facts facts = Facts.none().with(Flight.STATUS, status).with(Flight.DAY, day).with(more);
    return new Flight(log.has(Kind.FLIGHT, facts), facts);
  }

  private static Facts on(RecordId device) {
    return Facts.none().with(Flight.DEVICE, device);
  }

  private Logbook book() throws Fault {
    return Logbook.read(log, new MotorTable(List.of()));
  }

  private List<OpenCards.Claim> claims(Flight card) throws Fault {
    return Card.of(card, book(), new OutcomeTable(List.of()), Optional.empty()).claims();
  }

  @Test
  void a_device_in_two_open_cards_is_told_on_both() throws Fault {
    Flight first = card(Flight.Status.CARD, on(chute).with(Flight.ROCKET, wren));
    Flight second = card(Flight.Status.DRAFT, on(chute).with(Flight.ALTIMETER, blue));

    assertThat(claims(first))
        .extracting(OpenCards.Claim::sentence)
        .containsExactly("12in red rides on card 2 already");
    assertThat(claims(second))
        .extracting(OpenCards.Claim::sentence)
        .containsExactly("12in red rides on card 1 (Wren) already");

    Flight third = card(Flight.Status.CARD, Facts.none().with(Flight.ALTIMETER, blue));
    assertThat(claims(third))
        .extracting(OpenCards.Claim::sentence)
        .containsExactly("blue rides on card 2 already");
  }

  @Test
  void what_has_flown_or_waits_on_another_day_holds_nothing() throws Fault {
    card(Flight.Status.FLOWN, on(chute));
    card(Flight.Status.SCRUBBED, on(chute));
    card(Flight.Status.CARD, on(chute).with(Flight.DAY, new RecordId("another.day")));
    Flight card = card(Flight.Status.CARD, on(chute));

    assertThat(claims(card)).isEmpty();
    Facts flown = card.facts().with(Flight.STATUS, Flight.Status.FLOWN);
    card(Flight.Status.CARD, on(chute));
    assertThat(claims(new Flight(card.id(), flown))).isEmpty();
  }

  @Test
  void the_first_free_pad_is_the_lowest_nobody_stands_on() throws Fault {
    Flight first = card(Flight.Status.CARD, Facts.none().with(Flight.PAD, 1));
    card(Flight.Status.FLOWN, Facts.none().with(Flight.PAD, 2));
    card(Flight.Status.CARD, Facts.none().with(Flight.PAD, 3));
    OpenCards others = OpenCards.beside(Optional.empty(), Optional.of(day), book());

    assertThat(others.freePad(book().day(day).orElseThrow())).contains(2);
    assertThat(others.pad(1)).contains("pad 1 is taken by card 1");
    assertThat(OpenCards.beside(first, book()).pad(1)).isEmpty();
    assertThat(others.freePad(new Day(day, Facts.none()))).isEmpty();
  }

  @Test
  void a_card_with_a_device_that_rides_elsewhere_is_marginal_until_it_names_another() {
    CardBuilder calm =
        CardBuilder.small().wind(new Wind(new Speed(0.4), new Speed(0.4), Optional.empty()));
    Preflight preflight = new Preflight(Settings.standard());
    RecoveryDevice named = calm.build().device().orElseThrow();
    OpenCards.Claim claim = new OpenCards.Claim(Optional.of(named.id()), "it rides on card 2");
    Ruling ruling = preflight.answer(calm.claims(claim).build()).ruling();

    assertThat(ruling.verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(ruling.reason()).isEqualTo("it rides on card 2");
    RecoveryDevice other = new RecoveryDevice(new RecordId("test.other"), named.facts());
    Ruling changed = preflight.answer(calm.claims(claim).build().withDevice(other)).ruling();
    assertThat(changed.verdict()).isEqualTo(Verdict.GO);
  }
}
