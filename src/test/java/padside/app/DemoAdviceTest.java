package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Fault;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Rocket;
import padside.flight.Ruling.Verdict;
import padside.motor.MotorStack;
import padside.preflight.Advice;
import padside.preflight.Box;
import padside.preflight.Card;
import padside.preflight.Preflight;
import padside.preflight.Settings;

/** The made-up season has a card that something in its range box helps. */
class DemoAdviceTest {
  private final Preflight preflight = new Preflight(Settings.standard());

  @Test
  void a_card_on_a_lot_that_failed_is_shown_to_the_sound_lot_of_the_same_motor() throws Fault {
    Logbook book = Logbook.read(DemoLog.written(), Shipped.motors());
    Flight flight =
        book.flightsOf(book.days().get(5).id()).stream()
            .filter(each -> rocket(each, book).equals(Optional.of("Tin Whistle")))
            .filter(each -> each.motor().equals(Optional.of("C6-5")))
            .findFirst()
            .orElseThrow();
    Card card = Card.of(flight, book, Shipped.outcomes(), Optional.empty());
    Advice.Help help = preflight.advise(card, preflight.answer(card), () -> false).helps().get(0);
    Box.Stock sound =
        card.box().motors().stream()
            .filter(stock -> help.change().equals("with C6-5 of lot " + stock.record().code()))
            .findFirst()
            .orElseThrow();

    assertThat(preflight.answer(card).ruling().verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(sound.record().burns().failed()).isZero();
    assertThat(sound.left().orElse(1)).isPositive();
    MotorStack same = MotorStack.of(sound.motor());
    assertThat(
            preflight.answer(card.withMotors(same, Optional.of(sound.record()))).ruling().verdict())
        .isEqualTo(Verdict.GO)
        .isEqualTo(help.verdict());
  }

  private static Optional<String> rocket(Flight flight, Logbook book) {
    return flight.rocket().flatMap(book::rocket).map(Rocket::name);
  }
}
