package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Screens with a mistake in them. */
public final class Faulty {
  /** What the mistake says; it must get nowhere. */
  public static final String MESSAGE = "a typed secret";

  private Faulty() {}

  /** A mistake as soon as a key comes. */
  public static Session atKey(Session session) {
    return over(session, new Broken(true));
  }

  /** A mistake as soon as it is drawn. */
  public static Session whenDrawn(Session session) {
    return over(session, new Broken(false));
  }

  private static Session over(Session session, Screen screen) {
    List<Screen> stack = new ArrayList<>(session.stack());
    stack.add(screen);
    return new Session(
        stack,
        session.world(),
        session.notice(),
        session.held(),
        session.typed(),
        session.steady());
  }

  private record Broken(boolean drawable) implements Screen {
    @Override
    public Step on(Event event, World world) {
      if (event instanceof Event.Pressed) {
        throw new IllegalStateException(MESSAGE);
      }
      return Step.stay(this);
    }

    @Override
    public void draw(Canvas canvas, World world) {
      if (!drawable) {
        throw new IllegalStateException(MESSAGE);
      }
    }

    @Override
    public String title(World world) {
      return "Broken";
    }

    @Override
    public String purpose() {
      return "Breaks.";
    }

    @Override
    public Optional<padside.units.TimeSpan> untilTick(World world) {
      return Optional.empty();
    }

    @Override
    public List<Binding> bindings() {
      return List.of();
    }
  }
}
