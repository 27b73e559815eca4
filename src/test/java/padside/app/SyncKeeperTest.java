package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Setting;
import padside.screen.Sync;
import padside.screen.Ticket;
import padside.store.Exchange;
import padside.store.Holdings;
import padside.store.LogFolder;
import padside.sync.Partners;
import padside.sync.Stranger;
import padside.sync.Terms;
import padside.sync.Told;
import padside.units.TimeSpan;

/** An exchange beside the screens, with a real log here and another there. */
class SyncKeeperTest {
  private static final String STICK = SyncPlaces.named("stick");
  private static final TimeSpan PATIENCE = new TimeSpan(20);

  @TempDir Path here;
  @TempDir Path there;

  private final Inbox inbox = new Inbox();
  private final List<Event> came = new ArrayList<>();
  private final CountDownLatch halfWay = new CountDownLatch(1);
  private final CountDownLatch goOn = new CountDownLatch(1);
  private LogKeeper keeper;
  private SyncKeeper sync;
  private boolean closed;

  /** Takes all the log there has, line by line; waits half-way. */
  private final class Whole implements SyncKeeper.Places {
    private final List<Partners.Partner> list = new ArrayList<>();

    @Override
    public List<Partners.Partner> list() {
      return List.copyOf(list);
    }

    @Override
    public void drop(String place) {
      list.removeIf(each -> each.place().equals(place));
    }

    @Override
    public Told exchange(String place, Exchange log, Terms terms) throws Fault {
      if (place.endsWith("nowhere")) {
        throw new Fault("sync-folder", "The folder nowhere is not there.", "Put the stick in.");
      }
      long in = 0;
      Exchange.Device club = new Exchange.Device("0001", "club");
      try (LogFolder other = LogFolder.open(there, new ThisMachine(Setting.Clock.TRUSTED))) {
        Holdings missing = other.exchange().holdings().without(log.holdings());
        if (!terms.mayTake(List.of(new Stranger(club, missing.count())))) {
          throw new Fault("sync-strangers", "Nothing was taken.", "Say yes.");
        }
        for (Map.Entry<String, List<Holdings.Span>> run : missing.runs().entrySet()) {
          for (Holdings.Span span : run.getValue()) {
            for (String raw : other.exchange().lines(run.getKey(), span)) {
              in += log.take(List.of(raw)).fresh();
              terms.moved(Terms.Stage.TAKING, in, missing.count());
              halfWay.countDown();
              await(goOn);
            }
          }
        }
        log.settle();
      }
      list.add(new Partners.Partner(place, "2026-05-02 09:30", 0, in, "Done."));
      return new Told(club, 0, in, 0, List.of(), List.of(), 0, 0);
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  @BeforeEach
  void open() throws Fault {
    try (LogFolder other = LogFolder.open(there, new ThisMachine(Setting.Clock.TRUSTED))) {
      other.save(rocket("Wren"));
      other.save(rocket("Kite"));
    }
    keeper = new LogKeeper(here, new ThisMachine(Setting.Clock.TRUSTED), inbox);
    keeper.open(false);
    assertThat(inbox.awaitOpened().fault()).isEmpty();
    sync = new SyncKeeper(keeper, new Whole(), inbox);
  }

  @AfterEach
  void close() {
    goOn.countDown();
    sync.close();
    if (!closed) {
      keeper.close();
    }
  }

  private static Action rocket(String name) {
    return Action.create("add rocket", Kind.ROCKET, Facts.none().with(Rocket.NAME, name));
  }

  /** Waits for what fits, looking at all that came. */
  private Event event(Predicate<Event> wanted) {
    for (int i = 0; i < 100; i++) {
      Optional<Event> found = came.stream().filter(wanted).findFirst();
      if (found.isPresent()) {
        return found.get();
      }
      for (Inbox.Item item : inbox.take(PATIENCE)) {
        assertThat(item).isInstanceOf(Inbox.Answered.class);
        came.add(((Inbox.Answered) item).event());
      }
    }
    throw new AssertionError("it never came: " + came);
  }

  private static boolean asks(Event event) {
    return event instanceof Event.Synced synced
        && synced.sync().running().filter(each -> !each.strangers().isEmpty()).isPresent();
  }

  private static boolean ended(Event event) {
    return event instanceof Event.Synced synced && synced.told().isPresent();
  }

  private Event.Synced end() {
    return (Event.Synced) event(SyncKeeperTest::ended);
  }

  private void begin() {
    sync.does(new Effect.Synchronise("stick"));
    event(SyncKeeperTest::asks);
    sync.does(new Effect.TakeStrangers(true));
  }

  @Test
  void what_came_is_told_with_the_log_read_anew_and_a_save_goes_in_between() {
    assertThat(sync.atStart()).isEqualTo(Sync.none());
    begin();
    await(halfWay);
    Ticket ticket = new Ticket(7, 1);
    keeper.does(new Effect.Save(ticket, rocket("Heron")));
    event(any -> any instanceof Event.Saved saved && saved.ticket().equals(ticket));
    assertThat(came).as("kept while the exchange stands half-way").noneMatch(SyncKeeperTest::ended);
    goOn.countDown();

    Event.Synced end = end();
    assertThat(end.told())
        .map(line -> line.startsWith("Synchronised with " + STICK + ": "))
        .contains(true);
    assertThat(end.sync().running()).isEmpty();
    assertThat(end.sync().partners()).extracting(Sync.Partner::in).containsExactly(3L);
    assertThat(end.log().orElseThrow().rockets())
        .extracting(Rocket::name)
        .containsExactlyInAnyOrder("Heron", "Kite", "Wren");
    assertThat(came)
        .anyMatch(
            any ->
                any instanceof Event.Synced synced
                    && synced.sync().running().filter(each -> each.of() == 3).isPresent());

    sync.does(new Effect.DropPartner(STICK));
    event(
        any ->
            any instanceof Event.Synced synced
                && synced.told().isEmpty()
                && synced.sync().equals(Sync.none()));
  }

  @Test
  void a_no_takes_nothing() {
    sync.does(new Effect.Synchronise("stick"));
    event(SyncKeeperTest::asks);
    event(any -> any instanceof Event.Noticed told && told.line().contains("y asks"));
    sync.does(new Effect.TakeStrangers(false));

    assertThat(end().told()).contains("Nothing was taken. Say yes.");
    assertThat(end().log().orElseThrow().rockets()).isEmpty();
  }

  @Test
  void stopped_half_way_what_had_come_stays_and_the_next_brings_the_rest() {
    begin();
    await(halfWay);
    sync.does(new Effect.StopSync());
    goOn.countDown();
    assertThat(end().told().orElseThrow()).contains("The exchange was stopped");
    assertThat(end().log().orElseThrow().rockets()).hasSizeLessThan(2);

    came.clear();
    begin();
    assertThat(end().log().orElseThrow().rockets()).hasSize(2);
  }

  @Test
  void stopped_while_it_asks_it_ends() {
    sync.does(new Effect.Synchronise("stick"));
    event(SyncKeeperTest::asks);
    sync.does(new Effect.StopSync());

    assertThat(end().told().orElseThrow()).contains("The exchange was stopped");
  }

  @Test
  void a_fault_is_told_in_its_sentence_with_what_to_do() {
    sync.does(new Effect.Synchronise("nowhere"));

    assertThat(end().told()).contains("The folder nowhere is not there. Put the stick in.");
  }

  @Test
  void the_program_ends_whatever_is_under_way() throws Exception {
    begin();
    await(halfWay);
    sync.does(new Effect.StopSync());
    keeper.close();
    closed = true;
    goOn.countDown();
    sync.close();

    for (Inbox.Item item : inbox.take(new TimeSpan(0.1))) {
      assertThat(item).isNotInstanceOf(Inbox.Failed.class);
    }
    try (LogFolder log = LogFolder.open(here, new ThisMachine(Setting.Clock.TRUSTED))) {
      assertThat(log.notices()).as("closed in order").isEmpty();
    }
  }
}
