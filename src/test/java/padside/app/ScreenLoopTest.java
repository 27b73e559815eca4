package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.flight.Logbook;
import padside.preflight.Settings;
import padside.screen.Bookmark;
import padside.screen.Ease;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Faulty;
import padside.screen.Frame;
import padside.screen.Key;
import padside.screen.Session;
import padside.screen.Setting;
import padside.screen.Size;
import padside.screen.Sync;
import padside.screen.World;
import padside.store.LogFolder;
import padside.terminal.Input;
import padside.wire.WireWind;

/** The loop over a real log and a real place, at a terminal nobody looks at. */
class ScreenLoopTest {
  private static final Size SIZE = new Size(80, 24);
  private static final ThisMachine MACHINE = new ThisMachine(Setting.Clock.TRUSTED);

  @TempDir Path folder;
  private final Inbox inbox = new Inbox();
  private LogKeeper keeper;
  private PlaceKeeper place;
  private final Table table = new Table();

  /** A table without a terminal: counts what would be seen of it. */
  private final class Table implements ScreenLoop.Outside {
    private int painted;
    private int paintedWhole;
    private int aside;
    private int again;

    @Override
    public Moment moment() {
      return MACHINE.moment();
    }

    @Override
    public Size size() {
      return SIZE;
    }

    @Override
    public void paint(Frame frame, boolean all) {
      painted++;
      paintedWhole += all ? 1 : 0;
    }

    @Override
    public void does(Effect effect) {
      if (effect instanceof Effect.Quit) {
        place.forget();
        keeper.finish();
      } else {
        keeper.does(effect);
      }
    }

    @Override
    public void keepPlace(List<Bookmark> marks) {
      place.keep(marks);
    }

    @Override
    public void forgetPlace() {
      place.forget();
    }

    @Override
    public void finish() {
      keeper.finish();
    }

    @Override
    public void putAside() {
      aside++;
      press("<c-c>q");
    }

    @Override
    public void takeAgain() {
      again++;
    }
  }

  @BeforeEach
  void open() {
    place = new PlaceKeeper(folder, inbox::failed);
    keeper = new LogKeeper(folder, MACHINE, inbox);
    keeper.open(false);
  }

  private World world(Logbook book) {
    return new World(
        MACHINE.moment(),
        ZoneOffset.UTC,
        Settings.standard(),
        book,
        Shipped.outcomes(),
        Shipped.checklist(),
        Shipped.packing(),
        true,
        Ease.usual(),
        Optional.empty(),
        Sync.none(),
        WireWind.none(),
        0);
  }

  private Session start() {
    return Session.start(world(inbox.awaitOpened().book().orElseThrow()));
  }

  /** With a rocket's name half typed, which no pause has kept yet. */
  private Session halfTyped() {
    Session session = start();
    for (Key key : Key.script("fnPip")) {
      session = session.on(new Event.Pressed(key, MACHINE.moment())).session();
    }
    return session;
  }

  private void press(String keys) {
    Key.script(keys).forEach(key -> inbox.input(new Input.Pressed(key)));
  }

  private void run(Session session) {
    try {
      new ScreenLoop(inbox, table).run(new Session.Turn(session, List.of()));
    } finally {
      keeper.close();
      place.close();
    }
  }

  /** What the next start shows. */
  private Frame next() throws Fault {
    try (LogFolder log = LogFolder.open(folder, MACHINE)) {
      World world = world(Logbook.read(log, Shipped.motors()));
      List<Bookmark> marks = new PlaceKeeper(folder, inbox::failed).read();
      return Session.resume(world, marks).session().view(SIZE);
    }
  }

  private List<String> rockets() throws Fault {
    try (LogFolder log = LogFolder.open(folder, MACHINE)) {
      return Logbook.read(log, Shipped.motors()).rockets().stream().map(r -> r.name()).toList();
    }
  }

  private void failsWith(UnaryOperator<Session> mistake) {
    Session session = mistake.apply(halfTyped());
    press("x");

    assertThatThrownBy(() -> run(session)).hasMessage(Faulty.MESSAGE);
  }

  @Test
  void a_mistake_at_a_key_loses_nothing_and_the_next_start_goes_on_there() throws Fault {
    failsWith(Faulty::atKey);

    assertThat(rockets()).containsExactly("Pip");
    assertThat(next().text())
        .contains(" Rocket: Pip ")
        .containsPattern("> Name +Pip")
        .contains("You are back where Padside was cut off");
  }

  @Test
  void a_field_half_typed_while_the_one_before_is_still_being_kept_is_kept_too() throws Fault {
    Session session = halfTyped();
    for (Key key : Key.script("it<tab>40g")) {
      Session.Turn turn = session.on(new Event.Pressed(key, MACHINE.moment()));
      turn.effects().forEach(table::does);
      session = turn.session();
    }
    Session broken = Faulty.atKey(session);
    press("x");

    assertThatThrownBy(() -> run(broken)).hasMessage(Faulty.MESSAGE);
    assertThat(next().text())
        .containsPattern("Name +Pipit")
        .containsPattern("> Bare mass +40g")
        .contains("cut off");
  }

  @Test
  void a_mistake_before_any_key_was_pressed_is_not_gone_back_to() throws Fault {
    failsWith(Faulty::whenDrawn);

    assertThat(rockets()).containsExactly("Pip");
    assertThat(next().text()).startsWith(" Day").doesNotContain("cut off");
  }

  @Test
  void a_mistake_on_another_thread_loses_nothing() throws Fault {
    Session session = halfTyped();
    inbox.failed(new StackOverflowError("a typed secret"));

    assertThatThrownBy(() -> run(session)).hasCauseInstanceOf(StackOverflowError.class);
    assertThat(rockets()).containsExactly("Pip");
  }

  @Test
  void a_terminal_that_hangs_up_loses_nothing_and_the_next_start_goes_on_there() throws Fault {
    Session session = halfTyped();
    inbox.input(new Input.HungUp());
    run(session);

    assertThat(rockets()).containsExactly("Pip");
    assertThat(next().text()).contains("You are back where Padside was cut off");
  }

  @Test
  void leaving_by_hand_begins_with_the_day_again() throws Fault {
    Session session = halfTyped();
    press("<c-c>q");
    run(session);

    assertThat(rockets()).containsExactly("Pip");
    assertThat(next().text()).startsWith(" Day").doesNotContain("cut off");
  }

  @Test
  void put_aside_once_all_is_kept_and_painted_whole_after_it() throws Fault {
    Session session = halfTyped();
    press("<c-z>");
    run(session);

    assertThat(table.aside).isEqualTo(1);
    assertThat(table.paintedWhole).isGreaterThanOrEqualTo(2);
    assertThat(rockets()).containsExactly("Pip");
  }

  @Test
  void a_terminal_that_was_somebody_elses_is_taken_again_and_painted_whole() {
    Session session = start();
    inbox.input(new Input.BroughtBack());
    press("qy");
    run(session);

    assertThat(table.again).isEqualTo(1);
    assertThat(table.painted).isGreaterThanOrEqualTo(1);
  }

  @Test
  void what_is_told_of_a_mistake_holds_nothing_of_the_fliers() {
    List<String> told = new ArrayList<>();
    try {
      run(Faulty.atKey(pressing(halfTyped())));
    } catch (IllegalStateException bug) {
      bug.addSuppressed(new IllegalArgumentException(Faulty.MESSAGE));
      told.addAll(
          CrashFile.lines(new IllegalStateException(Faulty.MESSAGE, bug), Optional.of(SIZE)));
    }

    assertThat(told)
        .contains("Padside unpackaged", "Java " + Runtime.version(), "terminal 80 x 24")
        .contains("java.lang.IllegalStateException", "java.lang.IllegalArgumentException")
        .anySatisfy(
            line -> assertThat(line).matches("  at padside\\.app\\.ScreenLoop\\.run:[0-9]+"))
        .noneSatisfy(line -> assertThat(line).contains(Faulty.MESSAGE))
        .noneSatisfy(line -> assertThat(line).contains("/"))
        .noneSatisfy(line -> assertThat(line).contains(System.getProperty("user.home")));
  }

  private Session pressing(Session session) {
    press("x");
    return session;
  }
}
