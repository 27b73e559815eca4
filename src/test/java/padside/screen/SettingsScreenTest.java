package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Fault;
import padside.preflight.Settings;
import padside.safety.OwnLimits;
import padside.units.Speed;
import padside.units.UnitSystem;

/** Settings on their screen: the file is asked for, and told what was changed and no more. */
class SettingsScreenTest {
  private final Desk desk = new Meadow().withMorning().desk();

  private Effect newest() {
    List<Effect> effects = desk.exchanges();
    return effects.get(effects.size() - 1);
  }

  private Ticket asked() {
    return ((Effect.ReadSettings) newest()).ticket();
  }

  private void open(Map<String, String> texts) {
    desk.press("a");
    desk.told(new Event.SettingsRead(asked(), texts, List.of()));
  }

  private Effect.KeepSettings kept() {
    return (Effect.KeepSettings) newest();
  }

  @Test
  void frames_of_the_settings() {
    open(Map.of("own-limit", "12 mph"));

    Golden.holds("settings", desk.frame());
    Golden.holds("settings-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("settings-120x40", desk.frame(new Size(120, 40)));
    assertThat(desk.press("<tab>".repeat(7)).frame(new Size(60, 20)))
        .as("the longest meaning, whole")
        .contains("> Confidence        90", "no lot looks safer.");
    desk.press("<s-tab>".repeat(7));
    Golden.holds("settings-rules", desk.press("<tab><down>").frame());
  }

  @Test
  void what_was_changed_goes_to_the_file_and_the_world_follows() {
    open(Map.of("own-limit", "12 mph"));

    desk.press("me<tab><tab>5<f2>");
    assertThat(kept().changed()).isEqualTo(Map.of("units", "metric", "own-limit", "5 m/s"));
    Settings metric =
        Settings.standard()
            .with(UnitSystem.METRIC)
            .with(OwnLimits.none().withWind(Optional.of(new Speed(5))));
    desk.told(new Event.SettingsKept(kept().ticket(), metric, Ease.usual()));
    assertThat(desk.session().world().settings()).isEqualTo(metric);
    assertThat(desk.frame()).startsWith(" Day").contains("Kept.");
  }

  @Test
  void looks_change_at_once_and_what_does_not_is_named() {
    open(Map.of());

    Ease dusk =
        new Ease(Ease.Looks.WHITE_ON_BLACK, Ease.Hands.WARM, Guide.off(), Ease.Colours.SHOWN);
    desk.press("<tab>".repeat(9) + "white<tab><tab><tab><tab>trusted<f2>");
    assertThat(kept().changed()).containsOnlyKeys("looks", "clock");
    desk.told(new Event.SettingsKept(kept().ticket(), Settings.standard(), dusk));
    assertThat(desk.used()).contains(dusk);
    assertThat(desk.frame()).contains("from the next start on: Clock");
  }

  @Test
  void looks_that_no_color_hides_are_kept_all_the_same() {
    desk.showing(Ease.Colours.NO_COLOR);
    open(Map.of());
    desk.press("<tab>".repeat(9) + "white<f2>");
    assertThat(kept().changed()).isEqualTo(Map.of("looks", "white-on-black"));
    Ease dusk = Ease.of(Ease.Looks.WHITE_ON_BLACK, Ease.Hands.WARM, false);
    desk.told(new Event.SettingsKept(kept().ticket(), Settings.standard(), dusk));
    assertThat(desk.frame())
        .contains("Kept. No colours: NO_COLOR is set and wins over white on black.");
    assertThat(desk.session().world().ease().shown()).isEqualTo(Ease.Looks.MONOCHROME);
  }

  @Test
  void the_guide_is_turned_off_at_once_and_looks_changed_by_key_stay() {
    desk.press("<f8><f8><c-g>");
    Ease led = desk.session().world().ease();
    assertThat(led.looks()).isEqualTo(Ease.Looks.MONOCHROME);
    assertThat(led.guide().wanted()).isTrue();
    open(Map.of());
    desk.press("<tab>".repeat(11) + "off<f2>");
    assertThat(kept().changed()).isEqualTo(Map.of("guide", "off"));

    desk.told(new Event.SettingsKept(kept().ticket(), Settings.standard(), Ease.usual()));

    assertThat(desk.used()).contains(led.with(Guide.off()));
    assertThat(desk.session().world().ease()).isEqualTo(led.with(Guide.off()));
  }

  @Test
  void an_emptied_field_unsets_and_nothing_changed_is_not_sent() {
    open(Map.of("own-limit", "12 mph"));
    desk.press("<tab><tab><f11><f2>");
    assertThat(kept().changed()).isEqualTo(Map.of("own-limit", ""));

    Desk same = new Meadow().withMorning().desk().press("a");
    same.told(new Event.SettingsRead(new Ticket(1, 0), Map.of(), List.of()));
    assertThat(same.press("<tab><f2>").frame()).startsWith(" Day");
    assertThat(same.exchanges()).noneMatch(Effect.KeepSettings.class::isInstance);
  }

  @Test
  void what_cannot_be_read_keeps_the_form_and_says_why() {
    open(Map.of());

    assertThat(desk.press("<tab><tab>soft<f2>").frame()).contains("! Own wind limit", "6mph");
    assertThat(newest()).isInstanceOf(Effect.ReadSettings.class);
    assertThat(desk.press("<f11>12" + "<tab>".repeat(4) + "99<f2>").frame()).contains("1 to 20");
  }

  @Test
  void a_file_that_cannot_be_written_loses_nothing_typed() {
    open(Map.of());
    desk.press("<tab><tab>14<f2>");
    desk.told(new Event.NotRead(kept().ticket(), new Fault("full", "No room.", "Make room.")));

    assertThat(desk.frame()).contains("No room.", "Make room.");
    assertThat(desk.press("<enter>").frame()).contains("Own wind limit", "14");
    desk.press("<f2>");
    assertThat(kept().changed()).isEqualTo(Map.of("own-limit", "14 mph"));
  }
}
