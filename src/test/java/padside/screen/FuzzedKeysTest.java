package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import padside.Trials;
import padside.fact.Fault;
import padside.flight.Logbook;
import padside.units.PrintableText;

/**
 * Keys pressed by nobody in his senses, in terminals of any size, with saves that fail or come late
 * and clocks that jump: every frame can be drawn and the log can be read.
 */
class FuzzedKeysTest {
  private static final int TRIALS = Trials.of("keys", 200, 20_000);
  private static final int KEYS = 150;

  private static final List<String> KEYS_OF_SCREENS =
      List.of(
          "<enter>",
          "<tab>",
          "<s-tab>",
          "<esc>",
          "<up>",
          "<down>",
          "<left>",
          "<right>",
          "<home>",
          "<end>",
          "<pageup>",
          "<pagedown>",
          "<backspace>",
          "<delete>",
          "<c-u>",
          "<c-c>",
          "<c-z>",
          "<f1>",
          "<f2>",
          "<f3>",
          "<f4>",
          "<f5>",
          "<f6>",
          "<f7>",
          "<f8>",
          "<f9>",
          "<f10>",
          "<f12>");

  private static final List<String> TEXTS =
      List.of(
          "6g9mph",
          "1.625in",
          "120g",
          "-1",
          "1e309",
          "NaN",
          "99999999999999999999999",
          "1,5 m",
          "C6-5",
          "3xC6-5",
          "C6-0 then C6-7",
          "35 deg 280 ft lane / road",
          "12:61",
          "2026-02-30",
          "0930",
          "29.92inHg",
          "%s%n\\{}'\";--",
          "e\u0301\u0301\u0301",
          "\u202eabc",
          "\uff37\ud83d\ude80",
          "x".repeat(300));

  private final AtomicLong pressed = new AtomicLong();

  @Test
  void whatever_is_pressed_a_frame_can_be_drawn_and_the_log_be_read() throws Exception {
    Trials.run(TRIALS, (number, random) -> play(random));
    Trials.say("%d keys pressed at random, every frame drawn".formatted(pressed.get()));
    assertThat(pressed.get()).isGreaterThanOrEqualTo((long) TRIALS * KEYS);
  }

  private void play(Random random) throws Exception {
    Desk desk = Desk.over(new Season().log);
    List<String> sofar = new ArrayList<>();
    for (int i = 0; i < KEYS; i++) {
      String next = next(random);
      sofar.add(next);
      pressed.addAndGet(Key.script(next).size());
      try {
        mishap(desk, random);
        desk.press(next);
        if (desk.hasQuit()) {
          desk = Desk.over(desk.log());
        }
        drawn(desk, random);
      } catch (RuntimeException e) {
        throw new AssertionError("after " + String.join(" ", sofar), e);
      }
    }
    Logbook.read(desk.log(), Desk.MOTORS);
  }

  private static String next(Random random) {
    int of = random.nextInt(10);
    if (of < 4) {
      return KEYS_OF_SCREENS.get(random.nextInt(KEYS_OF_SCREENS.size()));
    }
    return of < 8
        ? String.valueOf((char) ('!' + random.nextInt('~' - '!')))
        : TEXTS.get(random.nextInt(TEXTS.size()));
  }

  private static void mishap(Desk desk, Random random) {
    switch (random.nextInt(40)) {
      case 0 -> desk.failNextSave(new Fault("log-not-kept", "NOT SAVED.", "Try again."));
      case 1 -> desk.holdSaves();
      case 2 -> desk.answerSaves();
      case 3 -> desk.after(Duration.ofSeconds(random.nextInt(100)));
      case 4 -> desk.jump(Duration.ofDays(random.nextInt(40_000) - 20_000L));
      case 5 -> desk.reboot();
      default -> {}
    }
  }

  private static void drawn(Desk desk, Random random) {
    Size size = new Size(1 + random.nextInt(200), 1 + random.nextInt(60));
    desk.session()
        .view(size)
        .text()
        .lines()
        .forEach(
            line -> {
              assertThat(line.length()).isLessThanOrEqualTo(size.columns());
              assertThat(line.codePoints().allMatch(PrintableText::isPrintable)).isTrue();
            });
  }
}
