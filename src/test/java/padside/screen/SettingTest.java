package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import padside.units.UnitSystem;

class SettingTest {
  static final List<Setting> ALL = Setting.ALL;

  @ParameterizedTest
  @FieldSource("ALL")
  void takes_what_is_usual_and_what_it_gives_as_an_example(Setting setting) {
    for (UnitSystem units : UnitSystem.values()) {
      if (!setting.usual().isEmpty()) {
        assertThat(setting.read(setting.usual(), units).value()).contains(setting.usual());
      }
      String kept = setting.read(setting.example(), units).value().orElseThrow();
      assertThat(setting.read(kept, units).value()).contains(kept);
    }
    assertThat(Setting.find(setting.name())).contains(setting);
    assertThat(setting.meaning()).endsWith(".");
  }

  @ParameterizedTest
  @CsvSource({
    "units, mars, us",
    "rules, mars, us-model",
    "own-limit, soft, 6mph",
    "rod-divisor, 0, 1 to 20",
    "own-ceiling, high, ft",
    "own-ceiling, -5ft, below zero",
    "own-rod-exit, fast, ft/s",
    "own-rod-exit, -30ft/s, like",
    "own-thrust, 0.5, 1 to 50",
    "confidence, 100, 50 to 99",
    "confidence, 100%, 50 to 99",
    "confidence, %, 50 to 99",
    "confidence, 90.5, like 90",
    "looks, plaid, black-on-white",
    "hands, three, cold",
    "clock, maybe, trusted"
  })
  void refuses_in_a_sentence_what_it_cannot_read(String name, String typed, String advice) {
    Setting setting = Setting.find(name).orElseThrow();

    assertThat(setting.read(typed, UnitSystem.US).objection().orElseThrow())
        .contains('"' + typed + '"', advice)
        .endsWith(".");
  }

  @ParameterizedTest
  @ValueSource(strings = {"90", "90%", "90 %"})
  void a_confidence_may_be_told_with_a_percent_sign(String typed) {
    assertThat(Setting.CONFIDENCE.read(typed, UnitSystem.US).value()).contains("90");
  }

  /** A limit typed under one system stays the same wind under the other. */
  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void a_quantity_is_kept_with_its_unit(UnitSystem units) {
    String kept = Setting.OWN_LIMIT.read("12", units).value().orElseThrow();

    assertThat(kept).isEqualTo(units == UnitSystem.US ? "12 mph" : "12 m/s");
  }
}
