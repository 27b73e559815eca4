package padside.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Flight.PartState;
import padside.flight.OutcomeTable;

/** Parts and states in the shipped words, codes and words side by side as data/outcomes.csv has. */
class ConditionsTest {
  private static final Conditions LINE = new Conditions(outcomes());

  private static OutcomeTable outcomes() {
    try (Reader csv =
        new InputStreamReader(
            ConditionsTest.class.getResourceAsStream("/data/outcomes.csv"),
            StandardCharsets.UTF_8)) {
      return OutcomeTable.read(csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<PartState> read(String typed) {
    return LINE.read(typed).value().orElseThrow();
  }

  private static List<String> completions(String typed) {
    return LINE.completions(typed).stream().map(Choices.Option::text).toList();
  }

  private static Form form(String typed) {
    Facts facts =
        typed.isEmpty() ? Facts.none() : Facts.none().with(Flight.CONDITION, read(typed), typed);
    FormField<List<PartState>> field = FormField.of(Flight.CONDITION, "Condition", LINE, "");
    FormField<String> note = FormField.of(Flight.NOTE, "Note", new Texts(""), "");
    return Form.of(List.of(field, note), facts);
  }

  private static Form typed(Form form, String text) {
    Form now = form;
    for (int i = 0; i < text.length(); i++) {
      now = now.type(text.substring(i, i + 1));
    }
    return now;
  }

  @ParameterizedTest
  @CsvSource({
    "fins cracked,fins,cracked",
    "FINS Cracked,fins,cracked",
    "fin cracked,fins,cracked",
    "nose cone scuffed,nose,scuffed",
    "nose scuffed,nose,scuffed",
    "cone scuffed,nose,scuffed",
    "body tube zip,body,zippered",
    "mount burnt,mount,burnt",
    "streamer torn,device,torn",
    "fins,fins,''",
    "fi cra,fins,cracked",
    "no sc,nose,scuffed",
    "no cracks,no,cracks",
    "fins out of line,fins,out of line",
    "fins ok,fins,ok",
    "payload section dented,payload section,dented",
    "payload,payload,''",
    "scuffed,'',scuffed",
    "no fin lost,no fin,lost",
    "decals peeling off,decals,peeling off"
  })
  void parts_and_states_are_words_of_the_table_or_ones_own(
      String typed, String part, String state) {
    assertThat(read(typed)).containsExactly(new PartState(part, state));
  }

  @Test
  void parts_are_divided_by_semicolons_and_nothing_is_refused() {
    assertThat(read("fins cracked; ;nose cone scuffed;"))
        .containsExactly(new PartState("fins", "cracked"), new PartState("nose", "scuffed"));
    assertThat(read(";")).isEmpty();
    Random random = new Random(11);
    String letters = "fins cracked;,.- nose 2\u00e4?";
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = 0; n < random.nextInt(12); n++) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      String line = text.toString();
      List<PartState> once = LINE.read(line).value().orElseThrow();
      assertThat(read(LINE.show(once))).as("seed 11: \"%s\"", line).isEqualTo(once);
      LINE.completions(line)
          .forEach(option -> assertThat(read(option.text())).isEqualTo(option.value()));
    }
  }

  @Test
  void the_part_is_found_as_one_types_then_its_state() {
    assertThat(completions("")).startsWith("nose cone", "body tube", "fins");
    assertThat(completions("c")).containsExactly("nose cone", "shock cord");
    assertThat(completions("fi")).containsExactly("fins");
    assertThat(completions("fins")).startsWith("fins", "fins scuffed");
    assertThat(completions("fins cracked; mo")).containsExactly("fins cracked; motor mount");
    assertThat(completions("nose sc")).containsExactly("nose cone scuffed");
    assertThat(completions("fins cracked")).isEmpty();
    assertThat(completions("fins ok")).as("not broken").isEmpty();
    assertThat(completions("decals off")).isEmpty();
  }

  @Test
  void what_is_left_half_typed_is_gone_on_with_and_a_part_alone_stays_alone() {
    assertThat(typed(form(""), "fi cr").next().text("condition")).isEqualTo("fins cracked");
    assertThat(typed(form(""), "fin cr").next().text("condition")).isEqualTo("fins cracked");
    assertThat(typed(form(""), "fins ").next().text("condition")).isEqualTo("fins");
    assertThat(typed(form(""), "fins out").next().text("condition")).isEqualTo("fins out");
    assertThat(form("").next().text("condition")).isEmpty();
    assertThat(form("fins cracked").next().touched()).isFalse();
  }

  @Test
  void a_part_picked_from_the_list_is_gone_on_with_by_typing() {
    Form picked = form("").pickNext().pickNext().pickNext();

    Form cracked = typed(picked, " cr").next();
    assertThat(cracked.text("condition")).isEqualTo("fins cracked");
    assertThat(cracked.facts().get(Flight.CONDITION))
        .isEqualTo(Optional.of(List.of(new PartState("fins", "cracked"))));
    assertThat(typed(form("fins cracked"), "; lug lo").next().text("condition"))
        .isEqualTo("fins cracked; launch lug loose");
  }
}
