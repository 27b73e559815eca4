package padside.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.units.UnitSystem;

/**
 * Whatever is pressed, a form holds what a plain text editor would hold after the same keys, never
 * throws, and nothing of it is lost on the way through facts.
 */
class KeyScriptTest {
  private static final long SEED = 20260502;
  private static final String CHARACTERS = "4g9 .c>;°é5WoztN/-";

  /** The same fields as plain texts with a cursor: the editor the form is held against. */
  private static final class Editor {
    private final List<StringBuilder> texts = new ArrayList<>();
    private int at;
    private int cursor;
    private boolean fresh;

    Editor(int fields) {
      for (int i = 0; i < fields; i++) {
        texts.add(new StringBuilder());
      }
    }

    private StringBuilder text() {
      return texts.get(at);
    }

    void type(char character) {
      if (fresh) {
        text().setLength(0);
        cursor = 0;
      }
      text().insert(cursor++, character);
      fresh = false;
    }

    void edit(int key) {
      fresh = false;
      switch (key) {
        case 0 -> cursor = Math.max(0, cursor - 1);
        case 1 -> cursor = Math.min(text().length(), cursor + 1);
        case 2 -> cursor = 0;
        case 3 -> cursor = text().length();
        case 4 -> {
          if (cursor > 0) {
            text().deleteCharAt(--cursor);
          }
        }
        default -> {
          if (cursor < text().length()) {
            text().deleteCharAt(cursor);
          }
        }
      }
    }

    void to(int field) {
      at = Math.max(0, Math.min(texts.size() - 1, field));
      cursor = text().length();
      fresh = at > 0; // the name, in front, is free text
    }
  }

  private static Form edit(Form form, int key) {
    return switch (key) {
      case 0 -> form.left();
      case 1 -> form.right();
      case 2 -> form.home();
      case 3 -> form.end();
      case 4 -> form.backspace();
      default -> form.delete();
    };
  }

  @Test
  void random_keys_never_lose_typed_text() {
    Random random = new Random(SEED);
    for (int script = 0; script < 200; script++) {
      // The list field may put a choice for what was typed; the fields without a list never do.
      Form form =
          Form.of(
              Forms.fields(UnitSystem.US).stream()
                  .filter(field -> field.choices().isEmpty())
                  .toList(),
              Facts.none());
      Editor editor = new Editor(form.fields().size());
      for (int i = 0; i < 60; i++) {
        int what = random.nextInt(10);
        if (what < 6) {
          char typed = CHARACTERS.charAt(random.nextInt(CHARACTERS.length()));
          form = form.type(String.valueOf(typed));
          editor.type(typed);
        } else if (what < 9) {
          int key = random.nextInt(6);
          form = edit(form, key);
          editor.edit(key);
        } else {
          boolean on = random.nextBoolean();
          form = on ? form.next() : form.previous();
          editor.to(on ? editor.at + 1 : editor.at - 1);
        }
      }
      sameTexts(form, editor, "seed " + SEED + ", script " + script);
    }
  }

  private static void sameTexts(Form form, Editor editor, String about) {
    Form again = Form.of(form.fields(), form.facts());
    for (int field = 0; field < form.fields().size(); field++) {
      String typed = editor.texts.get(field).toString();
      assertThat(form.entries().get(field).typed()).as(about).isEqualTo(typed);
      if (!typed.isBlank()) {
        assertThat(again.entries().get(field).typed()).as(about + ", reopened").isEqualTo(typed);
      }
    }
  }

  @Test
  void random_keys_in_list_fields_end_in_an_option_or_in_what_was_typed() {
    Random random = new Random(SEED);
    for (int script = 0; script < 300; script++) {
      Form form = Forms.empty().to("device");
      for (int i = random.nextInt(12); i >= 0; i--) {
        form =
            switch (random.nextInt(5)) {
              case 0 -> form.pickNext();
              case 1 -> form.pickPrevious();
              case 2 -> edit(form, random.nextInt(6));
              default -> form.type(String.valueOf("24 inchutape".charAt(random.nextInt(12))));
            };
      }
      String typed = form.entry().typed();
      String left = form.next().text("device");
      boolean option = Forms.DEVICES.options().stream().anyMatch(o -> o.text().equals(left));
      assertThat(option || left.equals(typed))
          .as("seed %s, script %s: \"%s\" became \"%s\"", SEED, script, typed, left)
          .isTrue();
      assertThat(left.isBlank()).isEqualTo(typed.isBlank() && !option);
    }
  }
}
