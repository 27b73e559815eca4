package padside.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.form.Form;
import padside.form.FormField;
import padside.units.UnitSystem;

/**
 * What the flier has set, as a form.
 *
 * @param texts what the file sets, by name
 * @param form absent until the file is read
 * @param sent the settings on their way to the file, by name
 */
record SettingsScreen(
    Ticket request, Map<String, String> texts, Optional<Form> form, Map<String, String> sent)
    implements Screen {
  static final String MEANING = "settings: units, safety code, limits, looks";

  private static final Binding KEEP =
      Binding.of("<f2>", "keep", "write what was changed to the settings file, and go by it");
  private static final Binding LEAVE =
      Binding.of("<esc>", "leave", "back; what was changed here is not kept");

  /** Keeps its own maps. */
  SettingsScreen {
    texts = Map.copyOf(texts);
    sent = Map.copyOf(sent);
  }

  static SettingsScreen open(World world) {
    return new SettingsScreen(new Ticket(world.turn(), 0), Map.of(), Optional.empty(), Map.of());
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Opened) {
      return Step.stay(this).and(new Effect.ReadSettings(request));
    }
    if (event instanceof Event.SettingsRead read && read.ticket().equals(request)) {
      Step step = Step.stay(showing(read.texts(), world));
      return read.told().isEmpty()
          ? step
          : step.and(new Effect.Tell(String.join(" ", read.told())));
    }
    if (event instanceof Event.SettingsKept kept && kept.ticket().equals(request)) {
      return kept(kept.ease(), world);
    }
    if (event instanceof Event.NotRead failed && failed.ticket().equals(request)) {
      return Step.stay(new SettingsScreen(request, texts, form, Map.of()));
    }
    return event instanceof Event.Pressed pressed ? pressed(pressed.key()) : Step.stay(this);
  }

  private SettingsScreen showing(Map<String, String> read, World world) {
    Facts facts = Facts.none();
    for (Setting setting : Setting.ALL) {
      facts = setting.with(facts, read.getOrDefault(setting.name(), setting.usual()));
    }
    Form fresh = Form.of(fields(world.settings().units()), facts);
    return new SettingsScreen(request, read, Optional.of(fresh), Map.of());
  }

  private Step kept(Ease ease, World world) {
    String later =
        Setting.ALL.stream()
            .filter(setting -> sent.containsKey(setting.name()) && !setting.atOnce())
            .map(Setting::label)
            .collect(Collectors.joining(", "));
    String line = later.isEmpty() ? "Kept." : "Kept; from the next start on: " + later + ".";
    Ease eased = eased(world.ease(), ease);
    String unseen =
        eased
            .overruled()
            .filter(any -> sent.containsKey(Setting.LOOKS.name()))
            .map(why -> " " + why + ".")
            .orElse("");
    Step step = Step.close().and(new Effect.Tell(line + unseen));
    return eased.equals(world.ease()) ? step : step.and(new Effect.Use(eased));
  }

  /** What was changed here as it is set; a key may have changed the rest, which stays so. */
  private Ease eased(Ease now, Ease set) {
    return new Ease(
        sent.containsKey(Setting.LOOKS.name()) ? set.looks() : now.looks(),
        sent.containsKey(Setting.HANDS.name()) ? set.hands() : now.hands(),
        sent.containsKey(Setting.GUIDE.name()) ? set.guide() : now.guide(),
        now.colours());
  }

  private Step pressed(Key key) {
    if (LEAVE.has(key)) {
      return Step.close();
    }
    if (form.isEmpty() || !sent.isEmpty()) {
      return Step.stay(this);
    }
    if (KEEP.has(key)) {
      return keep(form.get().accepted());
    }
    return Step.stay(FormKeys.press(form.get(), key).map(this::with).orElse(this));
  }

  /** With the fields in the units that are chosen. */
  private SettingsScreen with(Form other) {
    boolean same = form.map(SettingsScreen::units).filter(units(other)::equals).isPresent();
    Form fitting = same ? other : other.with(fields(units(other)), other.facts());
    return new SettingsScreen(request, texts, Optional.of(fitting), sent);
  }

  private Step keep(Form typed) {
    Optional<Integer> wrong = typed.firstObjection();
    if (wrong.isPresent()) {
      return Step.stay(with(typed.at(typed.fields().get(wrong.get()).name())));
    }
    Map<String, String> changed = new TreeMap<>();
    for (Setting setting : Setting.ALL) {
      String text = typed.text(setting.name()).strip();
      String value =
          setting.read(text, units(typed)).value().filter(any -> !text.isEmpty()).orElse("");
      if (!value.equals(texts.getOrDefault(setting.name(), setting.usual()))) {
        changed.put(setting.name(), value);
      }
    }
    return changed.isEmpty()
        ? Step.close()
        : Step.stay(new SettingsScreen(request, texts, Optional.of(typed), changed))
            .and(new Effect.KeepSettings(request, changed));
  }

  private static UnitSystem units(Form form) {
    return Setting.UNITS
        .read(form.text(Setting.UNITS.name()), UnitSystem.US)
        .value()
        .map(word -> Setting.constant(UnitSystem.class, word))
        .orElse(UnitSystem.US);
  }

  private static List<FormField<String>> fields(UnitSystem units) {
    return Setting.ALL.stream().map(setting -> setting.field(units)).toList();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    Size size = canvas.size();
    form.ifPresent(
        shown ->
            FormPane.draw(
                canvas, shown, new FormPane.Area(1, 1, size.columns() - 2, size.rows() - 3)));
  }

  @Override
  public String title(World world) {
    return "Settings";
  }

  @Override
  public String purpose() {
    return "What holds for every card and screen: units, safety code, your own limits, how the"
        + " screens look. It is kept in a file that can be edited too.";
  }

  @Override
  public List<Binding> bindings() {
    return Stream.concat(Stream.of(KEEP, LEAVE), FormKeys.TABLE.stream()).toList();
  }

  @Override
  public boolean takesText() {
    return form.isPresent();
  }
}
