package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.page.Page;
import padside.page.TextPage;
import padside.preflight.Settings;
import padside.report.PageKind;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Setting;
import padside.screen.Ticket;
import padside.store.LogFolder;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** Pages made beside the screens, of a real log. */
class PageKeeperTest {
  private static final TimeSpan PATIENCE = new TimeSpan(20);
  private static final int FLIGHTS = 1300;

  @TempDir Path folder;

  private final Inbox inbox = new Inbox();
  private final List<Event> came = new ArrayList<>();
  private LogKeeper keeper;
  private PageKeeper pages;

  @BeforeEach
  void open() throws Fault {
    Facts flown = Facts.none().with(Flight.STATUS, Flight.Status.FLOWN).with(Flight.MOTOR, "C6-5");
    List<Action.Change> some = new ArrayList<>();
    for (int i = 0; i < FLIGHTS; i++) {
      some.add(new Action.Change(Kind.FLIGHT, Optional.empty(), flown));
    }
    ThisMachine machine = new ThisMachine(Setting.Clock.TRUSTED);
    try (LogFolder log = LogFolder.open(folder.resolve("log"), machine)) {
      log.save(new Action("save cards", some));
    }
    keeper = new LogKeeper(folder.resolve("log"), machine, inbox);
    keeper.open(false);
    assertThat(inbox.awaitOpened().fault()).isEmpty();
    pages = new PageKeeper(keeper, new PageMaker(folder.resolve("pages")), inbox);
  }

  @AfterEach
  void close() {
    pages.close();
    keeper.close();
  }

  private Event event(Predicate<Event> wanted) {
    for (int i = 0; i < 100; i++) {
      Optional<Event> found = came.stream().filter(wanted).findFirst();
      if (found.isPresent()) {
        return found.get();
      }
      inbox.take(PATIENCE).forEach(item -> came.add(((Inbox.Answered) item).event()));
    }
    throw new AssertionError("it never came: " + came);
  }

  private Ticket asksFor(PageKind kind, int serial) {
    Ticket ticket = new Ticket(4, serial);
    pages.does(
        new Effect.MakePage(ticket, kind, "all", Settings.standard().with(UnitSystem.METRIC)));
    return ticket;
  }

  private Page made(Ticket ticket) {
    Event.PageMade made =
        (Event.PageMade)
            event(any -> any instanceof Event.PageMade page && page.ticket().equals(ticket));
    return made.page().value().orElseThrow();
  }

  private static boolean answers(Event event, Ticket asked) {
    return (event instanceof Event.NotRead given && given.ticket().equals(asked))
        || (event instanceof Event.PageMade page && page.ticket().equals(asked));
  }

  private static Action rocket(String name) {
    return Action.create("add rocket", Kind.ROCKET, Facts.none().with(Rocket.NAME, name));
  }

  @Test
  void a_page_is_of_all_flights_and_is_written() throws Exception {
    Page page = made(asksFor(PageKind.SEASON, 1));

    assertThat(TextPage.lines(page, 80))
        .anySatisfy(line -> assertThat(line.text()).isEqualTo("Flights: " + FLIGHTS));
    pages.does(new Effect.WritePage(PageKind.SEASON, page));
    event(any -> any instanceof Event.Noticed told && told.line().startsWith("Written to "));
    try (var files = Files.list(folder.resolve("pages"))) {
      assertThat(files).singleElement().asString().endsWith(".html");
    }
  }

  /** The reader stops within the first flights handed over until the save is acknowledged. */
  @Test
  void a_save_is_kept_while_flights_are_gone_through() throws Fault {
    FlightLog log = new LogInTurn(keeper, () -> {});
    Ticket ticket = new Ticket(7, 1);
    List<RecordId> seen = new ArrayList<>();

    log.each(
        FlightLog.Sought.of(List.of(Flight.MOTOR), List.of()),
        flight -> {
          if (seen.isEmpty()) {
            keeper.does(new Effect.Save(ticket, rocket("Heron")));
            event(any -> any instanceof Event.Saved saved && saved.ticket().equals(ticket));
          }
          seen.add(flight.id());
        });

    assertThat(seen).hasSize(FLIGHTS).doesNotHaveDuplicates();
    assertThat(log.list(Kind.ROCKET)).hasSize(1);
  }

  @Test
  void no_turn_takes_more_flights_than_a_save_may_wait_for() throws Fault {
    FlightLog log = new LogInTurn(keeper, () -> {});

    FlightLog.Stretch first =
        log.pass(
            FlightLog.Sought.of(List.of(Flight.MOTOR), List.of()),
            Optional.empty(),
            Integer.MAX_VALUE);

    assertThat(first.flights()).hasSize(500);
    assertThat(first.end()).contains(first.flights().get(499).id());
  }

  @Test
  void a_page_asked_for_after_a_save_has_it_and_a_page_nobody_waits_for_is_given_up() {
    keeper.does(new Effect.Save(new Ticket(7, 1), rocket("Heron")));
    Ticket first = asksFor(PageKind.SEASON, 1);
    Ticket last = new Ticket(4, 2);
    pages.does(
        new Effect.MakePage(
            last, PageKind.ROCKET, "Heron", Settings.standard().with(UnitSystem.METRIC)));

    assertThat(made(last).title()).contains("Heron");
    assertThat(came)
        .as("either it was made before the other was asked for, or it says why not")
        .anyMatch(any -> answers(any, first));
  }
}
