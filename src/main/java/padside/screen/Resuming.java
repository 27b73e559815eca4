package padside.screen;

import java.util.ArrayList;
import java.util.List;

/** Opens the screens again that were open when the program ended without being left. */
final class Resuming {
  private static final String BACK =
      "You are back where Padside was cut off; all that was kept until then is here.";

  private final List<Effect> effects = new ArrayList<>();
  private Session session;

  private Resuming(Session session) {
    this.session = session;
  }

  /**
   * The screens of the bookmarks as far as their records are there, and over them what comes first
   * at every start. Says so where the last of them is there.
   */
  static Session.Turn at(List<Bookmark> marks, World world) {
    Screen day = DayScreen.open(world);
    Screen first = marks.isEmpty() ? day : day.at(marks.get(0));
    Resuming resuming = new Resuming(new Session(List.of(first), world));
    marks.forEach(resuming::open);
    resuming.openClock();
    resuming.openPad();
    return resuming.told(marks);
  }

  private void open(Bookmark mark) {
    World next = session.world().next(session.world().machine());
    Bookmarks.open(mark, session.top(), next).ifPresent(screen -> open(screen, next));
  }

  private void openClock() {
    World next = session.world().next(session.world().machine());
    ClockScreen.atStart(next).ifPresent(clock -> open(clock, next));
  }

  private void openPad() {
    World next = session.world().next(session.world().machine());
    PadReturn.screen(next)
        .filter(pad -> session.bookmarks().stream().noneMatch(mark -> isOf(pad, mark)))
        .ifPresent(pad -> open(pad, next));
  }

  private void open(Screen screen, World next) {
    List<Screen> screens = new ArrayList<>(session.stack());
    screens.set(screens.size() - 1, session.top().covered(next.turn()));
    Session there = new Session(screens, next);
    effects.addAll(there.opening(screen, screens));
    session = new Session(screens, next);
  }

  private Session.Turn told(List<Bookmark> marks) {
    boolean there =
        !marks.isEmpty()
            && session.stack().stream().anyMatch(each -> isOf(each, marks.get(marks.size() - 1)));
    return new Session.Turn(there ? session.telling(BACK) : session, effects);
  }

  private static boolean isOf(Screen screen, Bookmark mark) {
    return screen.bookmark().filter(mark::isOf).isPresent();
  }
}
