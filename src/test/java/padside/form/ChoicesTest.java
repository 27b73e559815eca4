package padside.form;

import static org.assertj.core.api.Assertions.assertThat;
import static padside.form.Forms.BIG;
import static padside.form.Forms.DEVICES;
import static padside.form.Forms.SMALL;
import static padside.form.Forms.TAPE;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;

class ChoicesTest {
  private static List<String> texts(Choices<?> choices, String typed) {
    return choices.matching(typed).stream().<String>map(Choices.Option::text).toList();
  }

  private static Choices<Integer> numbered(String... texts) {
    List<String> list = List.of(texts);
    return new Choices<>(
        "rocket",
        list.stream().map(text -> new Choices.Option<>(list.indexOf(text), text, "")).toList());
  }

  @Test
  void beginnings_match_before_words_and_words_before_what_lies_inside() {
    assertThat(texts(numbered("old star", "Mustard", "Starling", "Bertha"), "STAR"))
        .containsExactly("Starling", "old star", "Mustard");
    assertThat(texts(DEVICES, " ")).hasSize(3);
    assertThat(texts(DEVICES, "kite")).isEmpty();
  }

  @Test
  void the_one_called_just_so_comes_first_even_when_others_begin_the_same() {
    Choices<Integer> choices = numbered("Alpha II", "Alpha");
    Form form = form(choices).type("alpha");

    assertThat(texts(choices, "alpha")).containsExactly("Alpha", "Alpha II");
    assertThat(form.accepted().entry().typed()).isEqualTo("Alpha");
    assertThat(choices.read("Alpha").value()).contains(1);
  }

  @Test
  void two_called_the_same_can_be_told_apart() {
    Choices<String> choices =
        new Choices<>(
            "device",
            List.of(
                new Choices.Option<>("a", "18 in", ""),
                new Choices.Option<>("b", "18 in", ""),
                new Choices.Option<>("c", "18 IN", "")));

    assertThat(texts(choices, "")).containsExactly("18 in", "18 in (2)", "18 IN (3)");
    assertThat(choices.read(choices.show("b")).value()).contains("b");
  }

  @Test
  void what_can_be_one_only_is_read_and_what_could_be_several_is_asked() {
    assertThat(DEVICES.read("ta").value()).contains(TAPE);
    assertThat(DEVICES.read("chute").objection())
        .contains("\"chute\" could be 24 in chute, 12 in chute; type more.");
    assertThat(DEVICES.read("kite").objection())
        .contains("No device is called \"kite\"; choose 24 in chute, 12 in chute, tape.");
    assertThat(DEVICES.read(" ").value()).isEmpty();
    assertThat(numbered().read("kite").objection())
        .contains("No rocket is called \"kite\"; there is none yet.");
    assertThat(numbered("a", "b", "c", "d").read("x").objection())
        .contains("No rocket is called \"x\"; choose a, b, c ….");
  }

  @Test
  void what_is_shown_can_be_read() {
    DEVICES
        .options()
        .forEach(
            option ->
                assertThat(DEVICES.read(DEVICES.show(option.value())).value())
                    .contains(option.value()));
    assertThat(DEVICES.show(new padside.fact.RecordId("gone"))).isEmpty();
    assertThat(DEVICES.example()).isEqualTo("24 in chute");
    assertThat(numbered().example()).isEmpty();
  }

  @Test
  void the_first_match_stands_for_what_was_typed_when_the_field_is_left() {
    Form form = Forms.empty().to("device").type("c");

    assertThat(form.listOpen()).isTrue();
    assertThat(form.next().text("device")).isEqualTo("24 in chute");
    assertThat(form.next().facts().get(Forms.DEVICE)).contains(BIG);
    assertThat(form.pickNext().next().facts().get(Forms.DEVICE)).contains(SMALL);
    assertThat(form.pickNext().pickNext().pickNext().pickedOption()).isEqualTo(1);
    assertThat(form.pickNext().pickPrevious().pickPrevious().pickedOption()).isZero();
  }

  @Test
  void a_closed_list_opens_on_what_stands_in_the_field() {
    Form form = Forms.over(Facts.none().with(Forms.DEVICE, SMALL)).to("device");

    assertThat(form.text("device")).isEqualTo("12 in chute");
    assertThat(form.listOpen()).isFalse();
    assertThat(form.pickNext().pickedOption()).isEqualTo(1);
    assertThat(form.pickPrevious().pickedOption()).isEqualTo(1);
    assertThat(form.pickNext().next().touched()).isFalse();
    assertThat(form.pickNext().pickNext().next().facts().get(Forms.DEVICE)).contains(TAPE);
    assertThat(Forms.empty().to("device").pickNext().next().facts().get(Forms.DEVICE))
        .contains(BIG);
  }

  @Test
  void a_field_without_list_or_match_stays_as_typed() {
    assertThat(Forms.empty().pickNext().picked()).isEqualTo(Form.NOTHING_PICKED);
    assertThat(Forms.empty().suggestions()).isEmpty();
    Form unknown = Forms.empty().to("device").type("kite").next();
    assertThat(unknown.text("device")).isEqualTo("kite");
    assertThat(unknown.facts().cells().get("device")).isEqualTo(Facts.Cell.unread("kite"));
    assertThat(Forms.over(unknown.facts()).text("device")).isEqualTo("kite");
  }

  private static Form form(Choices<Integer> choices) {
    return Form.of(
        List.of(FormField.choice(padside.flight.Lot.BOUGHT, "Which", choices, "one of the list")),
        Facts.none());
  }
}
