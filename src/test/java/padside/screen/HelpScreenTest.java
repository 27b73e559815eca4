package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import padside.clock.Moment.Trust;
import padside.fact.Fault;

/** Help over every screen there is, whatever is done on it. */
class HelpScreenTest {
  private static final Set<Size> SIZES =
      Set.of(new Size(60, 20), new Size(80, 24), new Size(120, 40));

  /** Screens that no bookmark opens, beside those that one does. */
  private static Map<String, Supplier<Desk>> places() {
    Map<String, Supplier<Desk>> places = new TreeMap<>();
    ResumingTest.PLACES.forEach((name, keys) -> places.put(name, () -> at(keys)));
    places.put("the count", () -> at(ResumingTest.ARMED + " "));
    places.put("the air", ResumingTest::inTheAir);
    places.put("the check", () -> at("nher<enter><f3>"));
    places.put("the chart", () -> at("nher<enter><f4>"));
    places.put("the height", () -> at("nher<enter><f4><tab>"));
    places.put("a page", () -> at("v<enter>"));
    places.put("the settings", () -> at("a"));
    places.put("what was removed", () -> at("fX"));
    places.put("the question before the end", () -> at("<c-c>"));
    places.put("a question before a removal", () -> at("f<down>x"));
    places.put("a fault", HelpScreenTest::fault);
    places.put("the question for the time", HelpScreenTest::clock);
    places.put("a medium that refuses", HelpScreenTest::refused);
    return places;
  }

  private static Desk at(String keys) {
    return ResumingTest.meadow().desk().press(keys);
  }

  private static Desk fault() {
    return at("").opening(world -> Alert.of(new Fault("test", "It broke.", "Mend it.")));
  }

  private static Desk clock() {
    return Desk.over(new Season().log).trusting(Trust.NONE).reboot();
  }

  private static Desk refused() {
    return at("").opening(RefusedScreen::of);
  }

  @TestFactory
  Stream<DynamicTest> a_question_mark_opens_it_unless_it_is_typed_and_f1_always() {
    return places().entrySet().stream()
        .map(place -> DynamicTest.dynamicTest(place.getKey(), () -> opens(place.getValue())));
  }

  private static void opens(Supplier<Desk> place) {
    Desk desk = place.get();
    Screen screen = desk.top();
    boolean typing = screen.takesText();
    desk.press("?");
    assertThat(desk.top() instanceof HelpScreen).isEqualTo(!typing);

    Desk other = place.get();
    other.press("<f1>");
    assertThat(other.top()).isInstanceOf(HelpScreen.class);
    tellsAll(other, screen);
  }

  private static void tellsAll(Desk desk, Screen screen) {
    for (Size size : SIZES) {
      String all = scrolled(desk, size);
      assertThat(screen.purpose()).endsWith(".").hasSizeLessThan(200);
      assertThat(all).contains(joined(screen.purpose()));
      screen.bindings().forEach(key -> assertThat(all).contains(joined(key.meaning())));
      screen.marks().forEach(mark -> assertThat(all).contains(joined(mark.meaning())));
    }
  }

  /** All of a help page, scrolled line by line, as letters alone: lines are broken anywhere. */
  private static String scrolled(Desk desk, Size size) {
    StringBuilder all = new StringBuilder();
    String before = "";
    for (String now = desk.frame(size); !now.equals(before); now = desk.frame(size)) {
      all.append(now);
      before = now;
      desk.press("<down>");
    }
    desk.press("<pageup>".repeat(8));
    return joined(all.toString());
  }

  private static String joined(String text) {
    return text.replaceAll("\\s+", "");
  }

  @Test
  void the_places_are_all_the_screens_there_are() {
    Set<String> reached =
        places().values().stream()
            .map(place -> place.get().top().getClass().getSimpleName())
            .collect(Collectors.toSet());

    assertThat(reached).containsAll(screens());
  }

  private static List<String> screens() {
    return new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("padside.screen")
            .stream()
            .filter(type -> type.isAssignableTo(Screen.class) && !type.isInterface())
            .filter(type -> !type.isAssignableTo(Unseen.class))
            .filter(type -> !type.isEquivalentTo(HelpScreen.class))
            .map(type -> type.getSimpleName())
            .toList();
  }

  @Test
  void it_goes_back_to_the_screen_as_it_was() {
    Desk desk = at("f<down>");
    String before = desk.frame();

    assertThat(desk.press("?").press("<down><pagedown><esc>").frame()).isEqualTo(before);
  }

  @Test
  void in_a_field_a_question_mark_is_typed() {
    Desk desk = at("fnWhat?").after(Duration.ofSeconds(1));

    assertThat(desk.frame()).contains("What?");
    assertThat(desk.press("<f1>").top()).isInstanceOf(HelpScreen.class);
  }
}
