package padside.screen;

import java.util.Map;
import java.util.Optional;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;

/** What the guide says on each screen: the next thing to do, and why. */
final class GuideText {
  /** Told once, when the card is done with. */
  static final String END =
      "That was a card, from field to debrief; h shows all that was kept of it. ? tells of any"
          + " screen what it is for.";

  private static final String DONE = "That will do: F2 is done.";
  private static final String WAITS = "this can wait; Tab goes on.";

  private static final String NAME = "what you call it; then Tab.";

  /** What a step wants, by kind of record and field. */
  private static final Map<Kind, Map<String, String>> ASKED =
      Map.of(
          Kind.FIELD,
          Map.of(
              Field.NAME.name(),
              NAME,
              Field.EDGES.name(),
              "each edge as paced from the pad: N 500ft; E 450ft; S 500ft; W 450ft, then F2."),
          Kind.ROCKET,
          Map.of(
              Rocket.NAME.name(),
              NAME,
              Rocket.MASS.name(),
              "as it flies but without a motor, like 1.3oz; then Tab.",
              Rocket.DIAMETER.name(),
              "of the body tube, like 0.976in; then F2."),
          Kind.DEVICE,
          Map.of(
              RecoveryDevice.NAME.name(),
              NAME,
              RecoveryDevice.SHAPE.name(),
              "p for parachute, s for streamer; then Tab.",
              RecoveryDevice.DIAMETER.name(),
              "across, like 12in; then F2."),
          Kind.DAY,
          Map.of(Day.FIELD.name(), "Enter takes the field, then F2: today is open."));

  private static final String BACK = "Esc goes back towards the day; the next step stands there.";

  private final Guide.Stage stage;

  private GuideText(World world) {
    this.stage = Guide.stage(world);
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
      return Optional.of(onForm(form));
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
    return kind == wanted() ? "n adds one." : "Kept. " + BACK;
  }

  /** By the field the cursor is in, while what the step wants is not there yet. */
  private String onForm(RecordForm form) {
    Kind kind = form.sheet().kind();
    return kind == wanted() || kind == Kind.DAY
        ? ASKED.get(kind).getOrDefault(form.form().field().name(), WAITS)
        : DONE;
  }

  /** The kind of record the step asks for. */
  private Kind wanted() {
    return switch (stage) {
      case FIELD -> Kind.FIELD;
      case ROCKET -> Kind.ROCKET;
      case RECOVERY -> Kind.DEVICE;
      case DAY -> Kind.DAY;
      case CARD, PAD, DEBRIEF -> Kind.FLIGHT;
    };
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
    if (field.equals(Flight.ROD.name())) {
      return "how long the rod is that guides it, like 36in; then Tab.";
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
