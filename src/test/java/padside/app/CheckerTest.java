package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padside.fact.Fault;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.preflight.Advice;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Ticket;
import padside.units.TimeSpan;
import picocli.CommandLine;

/**
 * The thread of the check beside the thread of the keys. Nothing here waits a time: every step of
 * the check is held until the test has done the other thread's part.
 */
class CheckerTest {
  private static final long SCREEN = 3;
  private static final Advice ADVICE = new Advice(List.of(), Optional.of("nothing in the box"));

  private final Inbox inbox = new Inbox();
  private final CountDownLatch begun = new CountDownLatch(1);

  @Test
  void the_verdict_comes_first_and_what_would_help_second_with_the_same_ticket() {
    Checker checker = checker(new Saying(Verdict.NO_GO));

    checker.check(card(1));

    assertThat(arrived(2)).containsExactly(checked(1, Verdict.NO_GO), helped(1, Verdict.NO_GO));
  }

  @ParameterizedTest
  @EnumSource(Verdict.class)
  void help_is_looked_for_where_the_card_could_fly_otherwise(Verdict verdict) {
    Checker checker = checker(new Saying(verdict));
    boolean helps = verdict == Verdict.MARGINAL || verdict == Verdict.NO_GO;
    List<Event> told =
        helps ? List.of(checked(1, verdict), helped(1, verdict)) : List.of(checked(1, verdict));

    checker.check(card(1));
    assertThat(arrived(told.size())).isEqualTo(told);
    checker.check(card(2));

    assertThat(arrived(1)).startsWith(checked(2, verdict));
  }

  @Test
  void what_is_worked_out_for_an_older_card_is_abandoned_as_soon_as_a_newer_one_comes() {
    Saying saying =
        new Saying(Verdict.GO) {
          @Override
          Answer answer(Card card, BooleanSupplier abandoned) {
            untilAbandoned(card, abandoned);
            return super.answer(card, abandoned);
          }
        };
    Checker checker = checker(saying);

    checker.check(card(1));
    await(begun);
    checker.check(card(2));

    assertThat(arrived(1)).containsExactly(checked(2, Verdict.GO));
  }

  @Test
  void looking_for_help_is_abandoned_as_well_and_the_verdict_stays() {
    Saying saying =
        new Saying(Verdict.MARGINAL) {
          @Override
          Advice advise(Card card, Answer answer, BooleanSupplier abandoned) {
            untilAbandoned(card, abandoned);
            return super.advise(card, answer, abandoned);
          }
        };
    Checker checker = checker(saying);

    checker.check(card(1));
    await(begun);
    checker.check(card(2));

    assertThat(arrived(3))
        .containsExactly(
            checked(1, Verdict.MARGINAL),
            checked(2, Verdict.MARGINAL),
            helped(2, Verdict.MARGINAL));
  }

  @Test
  void of_cards_that_wait_only_the_newest_is_looked_at() {
    CountDownLatch typed = new CountDownLatch(1);
    Saying saying =
        new Saying(Verdict.NO_GO) {
          @Override
          Answer answer(Card card, BooleanSupplier abandoned) {
            begun.countDown();
            await(typed);
            return super.answer(card, abandoned);
          }
        };
    Checker checker = checker(saying);

    checker.check(card(1));
    await(begun);
    checker.check(card(2));
    checker.check(card(3));
    typed.countDown();

    assertThat(arrived(3))
        .as("the first is told, as it was done already, but no help is looked for")
        .containsExactly(
            checked(1, Verdict.NO_GO), checked(3, Verdict.NO_GO), helped(3, Verdict.NO_GO));
  }

  @Test
  void a_mistake_in_the_check_is_told_and_the_next_card_is_still_answered() {
    IllegalStateException mistake = new IllegalStateException("a mistake");
    Saying saying =
        new Saying(Verdict.GO) {
          @Override
          Answer answer(Card card, BooleanSupplier abandoned) {
            if (tilt(card) == 1) {
              throw mistake;
            }
            return super.answer(card, abandoned);
          }
        };
    Checker checker = checker(saying);

    checker.check(card(1));
    assertThat(inbox.take(new TimeSpan(60))).containsExactly(new Inbox.Failed(mistake));
    checker.check(card(2));

    assertThat(arrived(1)).containsExactly(checked(2, Verdict.GO));
  }

  @Test
  void a_mistake_before_the_log_is_open_ends_the_waiting_for_it() {
    IllegalStateException mistake = new IllegalStateException("a mistake");
    inbox.failed(mistake);

    assertThatThrownBy(inbox::awaitOpened).hasRootCause(mistake);
  }

  private Checker checker(Saying saying) {
    return new Checker(() -> new Checker.Check(saying::answer, saying::advise), inbox);
  }

  /** Events in the order they came, until so many are there. */
  private List<Event> arrived(int count) {
    List<Event> events = new ArrayList<>();
    while (events.size() < count) {
      for (Inbox.Item item : inbox.take(new TimeSpan(60))) {
        events.add(((Inbox.Answered) item).event());
      }
    }
    return events;
  }

  private void untilAbandoned(Card card, BooleanSupplier abandoned) {
    if (tilt(card) == 1) {
      begun.countDown();
      while (!abandoned.getAsBoolean()) {
        Thread.onSpinWait();
      }
      throw new CancellationException();
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private static Event checked(long serial, Verdict verdict) {
    return new Event.Checked(new Ticket(SCREEN, serial), said(verdict));
  }

  private static Event helped(long serial, Verdict verdict) {
    return new Event.Checked(new Ticket(SCREEN, serial), said(verdict).with(ADVICE));
  }

  /** A card known from others by how many degrees its rod leans. */
  private static Effect.Check card(long serial) {
    try {
      Card card =
          CommandLine.populateCommand(new FlightOptions(), "--tilt=" + serial + "deg").card();
      return new Effect.Check(new Ticket(SCREEN, serial), card);
    } catch (Fault e) {
      throw new AssertionError(e);
    }
  }

  private static long tilt(Card card) {
    return Math.round(Math.toDegrees(card.tilt().radians()));
  }

  private static Answer said(Verdict verdict) {
    Ruling ruling = new Ruling(verdict, Optional.empty(), "as told", List.of(), List.of());
    return new Answer(ruling, "as told", Optional.empty(), List.of(), Optional.empty());
  }

  /** Says the same to every card. */
  private static class Saying {
    private final Verdict verdict;

    Saying(Verdict verdict) {
      this.verdict = verdict;
    }

    Answer answer(Card card, BooleanSupplier abandoned) {
      return said(verdict);
    }

    Advice advise(Card card, Answer answer, BooleanSupplier abandoned) {
      return ADVICE;
    }
  }
}
