package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.screen.Event;
import padside.screen.Setting;
import padside.store.LogFolder;
import padside.units.TimeSpan;

/** The first screen waits for few flights of a long log; the rest comes by itself. */
class FirstLookTest {
  private static final TimeSpan PATIENCE = new TimeSpan(10);

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {31, 340})
  void a_long_log_is_shown_before_it_is_read(int flights) throws Exception {
    Inbox inbox = new Inbox();
    LogKeeper keeper = keeper(flights, inbox);
    Logbook first = opened(keeper, inbox, true);
    assertThat(first.flights()).hasSize(30);
    Logbook rest = rest(inbox);
    assertThat(rest.flights()).hasSize(flights);
    assertThat(rest.flights().subList(0, 30)).isEqualTo(first.flights());
    assertThat(rest.past().whole()).isTrue();
    assertThat(rest.past().burns().values()).containsExactly(flights);
    keeper.close();
  }

  @Test
  void where_one_comes_back_to_a_place_all_is_read_first() throws Exception {
    Inbox inbox = new Inbox();
    LogKeeper keeper = keeper(340, inbox);
    assertThat(opened(keeper, inbox, false).flights()).hasSize(340);
    keeper.close();
  }

  @Test
  void of_a_short_log_all_is_shown_before_it_is_counted() throws Exception {
    Inbox inbox = new Inbox();
    LogKeeper keeper = keeper(12, inbox);
    Logbook first = opened(keeper, inbox, true);
    assertThat(first.flights()).hasSize(12);
    assertThat(first.past().burns()).isEmpty();
    Logbook rest = rest(inbox);
    assertThat(rest.flights()).isEqualTo(first.flights());
    assertThat(rest.past().burns().values()).containsExactly(12);
    assertThat(rest.isFirstLook()).isFalse();
    keeper.close();
  }

  private static Logbook opened(LogKeeper keeper, Inbox inbox, boolean atOnce) {
    keeper.open(atOnce);
    return inbox.awaitOpened().book().orElseThrow();
  }

  private static Logbook rest(Inbox inbox) {
    for (int i = 0; i < 100; i++) {
      for (Inbox.Item item : inbox.take(PATIENCE)) {
        if (item instanceof Inbox.Answered answer
            && answer.event() instanceof Event.PastRead read) {
          return read.log();
        }
      }
    }
    throw new AssertionError("the rest never came");
  }

  private LogKeeper keeper(int flights, Inbox inbox) throws Fault {
    Facts flown = Facts.none().with(Flight.STATUS, Flight.Status.FLOWN).with(Flight.MOTOR, "C6-5");
    List<Action.Change> some = new ArrayList<>();
    for (int i = 0; i < flights; i++) {
      some.add(new Action.Change(Kind.FLIGHT, Optional.empty(), flown));
    }
    ThisMachine machine = new ThisMachine(Setting.Clock.TRUSTED);
    try (LogFolder log = LogFolder.open(folder.resolve("log"), machine)) {
      log.save(new Action("save flights", some));
    }
    return new LogKeeper(folder.resolve("log"), machine, inbox);
  }
}
