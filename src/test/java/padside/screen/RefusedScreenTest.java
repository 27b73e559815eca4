package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.flight.MemoryFlightLog;
import padside.units.TimeSpan;

/**
 * A medium that takes nothing: told on every screen, tried again, kept elsewhere, told when over.
 */
class RefusedScreenTest {
  private static final Size SIZE = new Size(80, 24);

  private final Session day = Desk.over(new MemoryFlightLog()).session();

  @Test
  void it_stands_in_the_title_bar_until_it_is_over_and_then_that_is_told() {
    Session refused = told(day, Optional.of(refused(2)));
    assertThat(text(refused).lines().findFirst().orElseThrow())
        .contains("NOT SAVED, F9 tells more: 2 changes in memory only (No space left on device)");

    Session over = told(refused, Optional.empty());
    assertThat(text(over)).contains("All is saved").doesNotContain("NOT SAVED");
  }

  @Test
  void it_is_tried_again_once_in_five_seconds_however_often_time_is_told() {
    Session refused = told(day, Optional.of(refused(1)));
    int tries = 0;
    for (int tenth = 1; tenth <= 200; tenth++) {
      Session.Turn turn = refused.ticked(later(0.1 * tenth));
      refused = turn.session();
      tries += (int) turn.effects().stream().filter(Effect.TryAgain.class::isInstance).count();
    }
    assertThat(tries).isEqualTo(4);
    assertThat(refused.untilTick(refused.world().moment()).seconds()).isLessThanOrEqualTo(5);
  }

  @Test
  void nothing_is_tried_while_the_medium_takes_all() {
    assertThat(day.ticked(later(60)).effects()).isEmpty();
  }

  @Test
  void another_folder_is_asked_for_and_goes_out() {
    Session.Turn turn = new Session.Turn(told(day, Optional.of(refused(1))), List.of());
    for (Key key : Key.script("<f9>/media/stick<enter>")) {
      turn = turn.session().on(new Event.Pressed(key, later(0)));
    }
    assertThat(text(turn.session()))
        .contains("refused the journal", "Folder", "/media/stick", "tried again every 5 s");
    assertThat(turn.effects())
        .singleElement()
        .isInstanceOfSatisfying(
            Effect.KeepIn.class, keep -> assertThat(keep.folder()).isEqualTo("/media/stick"));
  }

  private Moment later(double seconds) {
    Moment now = day.world().moment();
    return new Moment(
        now.wall().plus(Duration.ofMillis(Math.round(seconds * 1000))),
        new TimeSpan(now.up().seconds() + seconds),
        now.boot(),
        now.trust());
  }

  private static Session told(Session session, Optional<Refused> refused) {
    Event event = new Event.Medium(refused, session.world().log(), Optional.empty());
    return session.on(event).session();
  }

  private static String text(Session session) {
    return session.view(SIZE).text();
  }

  private static Refused refused(int changes) {
    Fault fault =
        new Fault(
            "log-not-kept", "NOT SAVED: the medium refused the journal: full.", "Free space.");
    return new Refused(fault, "No space left on device", changes, Optional.empty(), false);
  }
}
