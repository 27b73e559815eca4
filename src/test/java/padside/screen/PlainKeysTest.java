package padside.screen;

import static java.util.Locale.ROOT;
import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nothing needs two keys at once: what a chord does a plain key does too. */
class PlainKeysTest {
  /** What wants Shift on the keyboards of the US, letters being typed small; from memory. */
  private static final String SHIFTED = "~!@#$%^&*()_+{}|:\"<>?";

  private static boolean isChord(Key key) {
    boolean shifted =
        key.character().isPresent()
            && (SHIFTED.contains(key.name()) || !key.name().equals(key.name().toLowerCase(ROOT)));
    return key.equals(Key.BACK_TAB) || key.name().startsWith("<c-") || shifted;
  }

  private static boolean hasPlainKey(Binding binding) {
    return binding.keys().stream().anyMatch(key -> !isChord(key));
  }

  @Test
  void no_action_is_reached_by_a_chord_alone() throws Exception {
    List<Binding> all = bindings();
    Set<String> plain =
        all.stream()
            .filter(PlainKeysTest::hasPlainKey)
            .map(Binding::meaning)
            .collect(Collectors.toSet());

    assertThat(all).hasSizeGreaterThan(150);
    assertThat(all.stream().filter(each -> each.keys().stream().anyMatch(PlainKeysTest::isChord)))
        .as("chords there are")
        .hasSizeGreaterThan(8)
        .allSatisfy(each -> assertThat(plain).contains(each.meaning()));
  }

  @Test
  void the_plain_keys_of_forms_do_what_their_chords_do() {
    Desk desk = new Meadow().withMorning().desk().press("nher<enter>6g9 SW");
    assertThat(desk.press("<f11>").frame()).containsPattern("> Wind +│");
    String there = desk.press("<s-tab>").frame();
    assertThat(desk.press("<tab><pageup>").frame()).isEqualTo(there);
  }

  /** Every binding any class of the room keeps. */
  private static List<Binding> bindings() throws Exception {
    Path room = Path.of(Binding.class.getResource("Binding.class").toURI()).getParent();
    List<Binding> found = new ArrayList<>();
    try (Stream<Path> files = Files.list(room)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".class")).toList()) {
        String name = file.getFileName().toString().replaceFirst("\\.class$", "");
        collect(Class.forName("padside.screen." + name), found);
      }
    }
    return found;
  }

  private static void collect(Class<?> type, List<Binding> found) throws IllegalAccessException {
    for (Field field : type.getDeclaredFields()) {
      boolean one = field.getType() == Binding.class;
      if (one && Modifier.isStatic(field.getModifiers())) {
        field.setAccessible(true);
        found.add((Binding) field.get(null));
      } else if (one && type.isEnum()) {
        field.setAccessible(true);
        for (Object constant : type.getEnumConstants()) {
          found.add((Binding) field.get(constant));
        }
      }
    }
  }
}
