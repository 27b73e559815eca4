package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.Trials;
import padside.screen.Setting;

/** The text of a settings file, read back by Java's own reader of such files. */
class SettingsTextTest {
  private static final int TRIALS = Trials.of("settings texts changed", 300, 20_000);

  private static final List<String> PARTS =
      List.of(
          "# my own comment",
          "",
          "units = metric",
          "#units = us",
          "units: us",
          "  own-limit=12 mph  ",
          "  # own-limit = 9 mph",
          "kites = yes",
          "#kites = no",
          "sync.ssh = ssh \\\n   -p 2222",
          "backup.second = C:\\\\second",
          "! another comment");

  private static Properties read(String text) throws Exception {
    Properties lines = new Properties();
    lines.load(new StringReader(text));
    return lines;
  }

  @Test
  void a_change_is_read_back_and_leaves_all_else_alone() throws Exception {
    List<String> values = List.of("metric", "12 mph", "C:\\new folder\\x", "ssh -p 22", "ü = #!");
    for (int number = 1; number <= TRIALS; number++) {
      Random random = Trials.random(number);
      List<String> lines = new ArrayList<>();
      for (int i = random.nextInt(9); i > 0; i--) {
        lines.add(PARTS.get(random.nextInt(PARTS.size())));
      }
      lines.add("units = us");
      String text = String.join(random.nextBoolean() ? "\n" : "\r\n", lines);
      Setting setting = Setting.ALL.get(random.nextInt(Setting.ALL.size()));
      Optional<String> value =
          Optional.of(values.get(random.nextInt(values.size())))
              .filter(any -> random.nextInt(4) > 0);

      String changed = new SettingsText(text).with(setting, value).text();

      Properties expected = read(text);
      expected.remove(setting.name());
      value.ifPresent(set -> expected.setProperty(setting.name(), set));
      assertThat(read(changed))
          .as("trial %d: %s: %s", number, setting.name(), text)
          .isEqualTo(expected);
      assertThat(changed.lines())
          .containsAll(lines.stream().filter(l -> l.contains("my own")).toList());
    }
  }

  @Test
  void a_fresh_file_tells_every_setting_and_sets_none() throws Exception {
    SettingsText fresh = SettingsText.fresh();

    assertThat(fresh.values()).isEmpty();
    for (Setting setting : Setting.ALL) {
      assertThat(fresh.text()).contains(setting.meaning(), "\n#" + setting.name() + " = ");
      String uncommented =
          fresh.text().replace("\n#" + setting.name() + " = ", "\n" + setting.name() + " = ");
      assertThat(read(uncommented)).containsOnlyKeys(setting.name());
    }
  }

  @Test
  void a_setting_goes_where_the_fresh_file_proposes_it_and_back() {
    SettingsText fresh = SettingsText.fresh();
    SettingsText set = fresh.with(Setting.UNITS, Optional.of("metric"));

    assertThat(set.values()).isEqualTo(Map.of("units", "metric"));
    assertThat(set.text().lines()).hasSameSizeAs(fresh.text().lines().toList());
    assertThat(set.with(Setting.UNITS, Optional.empty())).isEqualTo(fresh);
  }

  @Test
  void the_mark_some_editors_begin_a_file_with_is_no_part_of_a_name() {
    assertThat(new SettingsText("\uFEFFunits = metric\r\n").values())
        .isEqualTo(Map.of("units", "metric"));
  }
}
