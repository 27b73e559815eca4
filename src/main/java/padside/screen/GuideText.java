package padside.screen;

import java.util.Optional;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.units.Notations;
import padside.units.UnitSystem;

/** What the guide says on each screen: the next thing to do, and why. */
final class GuideText {
  /** Told once, when the card is done with. */
  static final String END =
      "That was a card, from field to debrief; h shows all that was kept of it. ? tells of any"
          + " screen what it is for.";

  private static final String DONE = "That will do: F2 is done.";
  private static final String BACK = "Esc goes back towards the day; the next step stands there.";

  private final Guide.Stage stage;
  private final UnitSystem units;

  private GuideText(World world) {
    this.stage = Guide.stage(world);
    this.units = world.settings().units();
  }

  /** Nothing where something else is to be answered first. */
  static Optional<String> of(Screen top, World world) {
    if (!world.ease().guide().leads(world)) {
      return Optional.empty();
    }
    GuideText text = new GuideText(world);
    return text.on(top)
        .map(words -> "Guide " + text.stage.of() + ": " + words + " (Ctrl-G: no guide)");
  }

  private Optional<String> on(Screen top) {
    if (top instanceof DayScreen) {
      return Optional.of(onDay());
    }
    if (top instanceof RecordList list) {
      return Optional.of(onList(list.shelf().kind()));
    }
    if (top instanceof RecordForm form) {
      return Optional.of(onForm(form.sheet().kind()));
    }
    if (top instanceof CardScreen card) {
      return Optional.of(onCard(card));
    }
    return top instanceof Alert || top instanceof RefusedScreen || top instanceof QuitQuestion
        ? Optional.empty()
        : Optional.of(atPad(top));
  }

  private String onDay() {
    return switch (stage) {
      case FIELD -> "p, then n: the field you fly on. Landings are held against its edges.";
      case ROCKET -> "f, then n: the rocket. Its mass and width decide how high it goes.";
      case RECOVERY -> "b, Tab, n: what it comes down on. That decides how far it drifts.";
      case DAY -> "o opens today on your field; cards and weather belong to a day.";
      case CARD -> "n begins a card: what flies, on which motor, in which wind.";
      case PAD -> "Enter takes the marked card to the pad.";
      case DEBRIEF -> "d: what came of it, while it is remembered.";
    };
  }

  private String onList(Kind kind) {
    if (stage == Guide.Stage.RECOVERY && kind == Kind.LOT) {
      return "Tab: the parachutes and streamers come next.";
    }
    boolean here =
        switch (stage) {
          case FIELD -> kind == Kind.FIELD;
          case ROCKET -> kind == Kind.ROCKET;
          case RECOVERY -> kind == Kind.DEVICE;
          case DAY, CARD, PAD, DEBRIEF -> false;
        };
    return here ? "n adds one." : "Kept. " + BACK;
  }

  private String onForm(Kind kind) {
    if (kind == Kind.FIELD && stage == Guide.Stage.FIELD) {
      return "a name, and its smallest side, like "
          + Notations.distance(units).example()
          + "; Tab goes on. Edges can wait. F2 is done.";
    }
    if (kind == Kind.ROCKET && stage == Guide.Stage.ROCKET) {
      return "name, bare mass and body diameter; Tab goes on past what can wait. F2 is done.";
    }
    if (kind == Kind.DEVICE && stage == Guide.Stage.RECOVERY) {
      return "a name, p for parachute, its diameter like 12in; then F2.";
    }
    return kind == Kind.DAY ? "Enter takes the field, then F2: today is open." : DONE;
  }

  private String onCard(CardScreen card) {
    String field = card.form().field().name();
    if (field.equals(Flight.ROCKET.name())) {
      return "Enter takes the rocket. The check at the right follows every key.";
    }
    if (field.equals(Flight.MOTOR.name())) {
      return "what is printed on the motor, like A8-3; then Tab.";
    }
    if (field.equals(Flight.DEVICE.name())) {
      return "Down picks what is packed; then Tab.";
    }
    if (field.equals(CardFields.WIND)) {
      return "the wind as read, like 4g6 SW. Watch the check; then F5 goes to the pad.";
    }
    return "Tab goes on to the wind; what is not known stays empty.";
  }

  private static String atPad(Screen top) {
    if (top instanceof PadScreen) {
      return "do each line, Space ticks it, Enter the rest of a part; then a.";
    }
    if (top instanceof AgainstScreen) {
      return "say in a few words why; the log keeps it.";
    }
    if (top instanceof CountScreen) {
      return "Space counts, any key holds. Press the button at zero, Space as it leaves.";
    }
    if (top instanceof MarkScreen) {
      return "Space at ejection and at touchdown; Enter goes on to the debrief.";
    }
    if (top instanceof DebriefScreen) {
      return "how high, if measured, and how it came down; F2 keeps it.";
    }
    return top instanceof ClockScreen ? "Enter if this is the time, else type it." : BACK;
  }
}
