package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.flight.Weather;

/** A program cut off goes on where it was. */
class ResumingTest {
  private static final String BACK = "You are back where Padside was cut off";
  private static final Duration PAUSE = Duration.ofSeconds(1);

  /** What tells of typing and keeping since the screen was opened, which is over then. */
  private static final String SINCE_OPENED = "(all|draft) kept|kept( when you go on)?";

  private static final String PAD = "nher<enter><f5>";
  static final String ARMED = PAD + "<enter><enter><enter><enter>a";

  /** Keys from the Day screen to every kind of screen, and to spots on it. */
  static final Map<String, String> PLACES =
      Map.ofEntries(
          Map.entry("a line of the day", "<home><down>"),
          Map.entry("a card with a rocket being looked for", "nher"),
          Map.entry("a card in its motor", "nher<enter><tab>"),
          Map.entry("a card with a wind being typed", "nher<enter><s-tab>6g9"),
          Map.entry("a kept card", "nher<enter><f2>c<tab><tab>"),
          Map.entry("a new card untouched", "n"),
          Map.entry("the card of a flown flight", "<home>c<tab>"),
          Map.entry("a debrief", "<home>d<tab><tab>"),
          Map.entry("a debrief being typed", "<home>d123"),
          Map.entry("the pad", PAD + "  <down>"),
          Map.entry("the pad, a wind being typed", PAD + "w12g1"),
          Map.entry("a reason to go on in spite of open lines", PAD + "ahurry"),
          Map.entry("a reason to have flown against NO-GO", "<home><down><down>gthey asked"),
          Map.entry("a misfire", ARMED + "mdamp igniter"),
          Map.entry("the log", "l<down>"),
          Map.entry("the log, a word being looked for", "l/ki"),
          Map.entry("how good predictions were", "lg"),
          Map.entry("all of a flight", "l<down>v<down>"),
          Map.entry("a trace asked for", "l<down>vt"),
          Map.entry("a trace's file being typed", "l<down>vt/media/card/fli"),
          Map.entry("the history of a flight", "h"),
          Map.entry("the fleet", "f<down>"),
          Map.entry("a rocket", "f<down><enter><tab><tab>12"),
          Map.entry("a new rocket", "fnPipit<tab>40g<tab>"),
          Map.entry("the fixes of a rocket", "f<home>f"),
          Map.entry("a fix", "f<home>f<enter>loose"),
          Map.entry("a new fix", "f<home>fnnew fin"),
          Map.entry("motors", "b<down>"),
          Map.entry("a lot", "b<enter><tab>"),
          Map.entry("recovery devices", "b<tab>"),
          Map.entry("a recovery device", "b<tab><enter><tab>"),
          Map.entry("altimeters", "b<tab><tab>"),
          Map.entry("a new altimeter", "b<tab><tab>nred"),
          Map.entry("motor types", "bt<down><down>"),
          Map.entry("lots, igniters, delays", "bl<down>"),
          Map.entry("a motor type", "bt/C6<enter><tab>"),
          Map.entry("fields", "p"),
          Map.entry("a field", "p<enter><tab>"),
          Map.entry("weather", "w6g9 SW<tab>3"),
          Map.entry("the day's own form", "e<tab><tab>"),
          Map.entry("the plan", "t<esc>t"),
          Map.entry("a new day to plan for", "t"),
          Map.entry("a new planned flight", "t<f2>n"),
          Map.entry("a planned flight", "t<f2>nher<enter><tab>"),
          Map.entry("the packing list", "t<f2>nher<enter><f2>k<down>"),
          Map.entry("a place to synchronise with being typed", "ya/media/st"),
          Map.entry("places to synchronise with", "y"),
          Map.entry("pages worth keeping", "v<down><down>"),
          Map.entry("conflicts", "r<tab>"),
          Map.entry("sights", "<home>i"),
          Map.entry("a sight", "<home>in45<tab>"),
          Map.entry("the checklist", PAD + "l<down>"),
          Map.entry("a line of the checklist", PAD + "l<down><enter>more"));

  private final Meadow meadow = meadow();

  static Meadow meadow() {
    Meadow meadow = new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));
    for (RecordId rocket : List.of(meadow.heron, meadow.kite)) {
      meadow.log.has(
          Kind.FIX,
          Facts.none()
              .with(Fix.ROCKET, rocket)
              .with(Fix.TEXT, "shock cord frayed")
              .with(Fix.SEVERITY, Fix.Severity.LOOK_AT));
    }
    Contested contested = new Contested(meadow.log, Kind.ROCKET, meadow.wren);
    for (Column<String> column : List.of(Rocket.NOTE, Rocket.FLIER)) {
      contested.says(
          List.of(Facts.none().with(column, "one", "one"), Facts.none().with(column, "other")));
    }
    return meadow;
  }

  @TestFactory
  Stream<DynamicTest> the_same_screen_stands_there_with_the_same_text() {
    return PLACES.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            place -> DynamicTest.dynamicTest(place.getKey(), () -> isThereAgain(place.getValue())));
  }

  private static void isThereAgain(String keys) {
    Desk desk = meadow().desk().press(keys).after(PAUSE).answerSaves().answerChecks();
    List<Bookmark> place = desk.session().bookmarks();
    String before = asOpened(desk.press("<c-l>").frame());
    Class<?> screen = desk.top().getClass();

    cutOff(desk);
    assertThat(desk.frame()).contains(BACK);
    assertThat(asOpened(desk.press("<c-l>").frame())).isEqualTo(before);
    assertThat(desk.top()).isInstanceOf(screen);
    assertThat(desk.session().bookmarks()).isEqualTo(place);
  }

  private static String asOpened(String frame) {
    return frame.replaceAll(SINCE_OPENED, "").replaceAll(" +\n", "\n");
  }

  @Test
  void every_kind_of_screen_that_is_returned_to_is_among_the_places() {
    Stream<Desk> there = PLACES.values().stream().map(keys -> meadow().desk().press(keys));
    Stream<Desk> atPad = Stream.of(meadow().desk().press(ARMED), inTheAir());
    Stream<String> reached =
        Stream.concat(there, atPad)
            .flatMap(desk -> desk.session().bookmarks().stream())
            .map(Bookmark::screen);
    Stream<String> forms =
        Stream.of(Kind.values())
            .filter(kind -> kind != Kind.FLIGHT && kind != Kind.ATTEMPT && kind != Kind.CLOCK)
            .map(Kind::code);

    assertThat(reached.collect(Collectors.toSet()))
        .containsExactlyInAnyOrderElementsOf(
            Stream.concat(names(), forms).collect(Collectors.toSet()));
  }

  static Desk inTheAir() {
    return meadow().desk().press(ARMED + " ").running(Duration.ofSeconds(6)).press(" ");
  }

  /** The names {@link Bookmarks} know. */
  private static Stream<String> names() {
    return Stream.of(Bookmarks.class.getDeclaredFields())
        .filter(field -> field.getType() == String.class)
        .map(
            field -> {
              try {
                return (String) field.get(null);
              } catch (IllegalAccessException e) {
                throw new AssertionError(e);
              }
            });
  }

  @Test
  void a_count_is_held_for_nobody_heard_the_rest_of_it() {
    Desk desk = meadow.desk().press(ARMED + " ").after(Duration.ofSeconds(2));
    assertThat(desk.frame()).contains("COUNT");

    assertThat(cutOff(desk).frame()).contains("HOLD").contains(BACK);
  }

  @Test
  void the_clock_of_a_flight_goes_on_and_an_ejection_not_seen_stays_unseen() {
    Desk desk = inTheAir().after(Duration.ofSeconds(5)).press("n");
    assertThat(desk.frame()).contains("next: TOUCHDOWN");

    assertThat(cutOff(desk).frame()).contains("next: TOUCHDOWN").contains(BACK);
    assertThat(desk.after(Duration.ofSeconds(20)).press(" ").frame())
        .contains("Enter goes on to the debrief.");
  }

  @Test
  void what_is_typed_next_goes_on_where_typing_stopped() {
    Desk desk =
        meadow.desk().press("nher<enter><s-tab>6g9").after(PAUSE).answerSaves().answerChecks();

    cutOff(desk).press(" SW<f2>");
    assertThat(meadow.flight(4).facts().typed(Weather.WIND_MEAN)).isEqualTo(Optional.of("6g9 SW"));
  }

  @Test
  void a_field_entered_and_not_typed_into_is_replaced_by_the_first_key() {
    Desk desk =
        meadow.desk().press("nher<enter><s-tab>6g9 SW<tab><s-tab>").answerSaves().answerChecks();

    cutOff(desk).press("4 W<f2>");
    assertThat(meadow.flight(4).facts().typed(Weather.WIND_MEAN)).isEqualTo(Optional.of("4 W"));
  }

  @Test
  void going_back_leads_where_it_would_have_led() {
    Desk desk = cutOff(meadow.desk().press("f<down><enter><tab>"));

    assertThat(desk.press("<esc>").frame()).contains("Fleet").contains("> ");
    assertThat(desk.press("<esc>").top()).isInstanceOf(DayScreen.class);
  }

  @Test
  void what_a_form_under_way_saves_first_the_list_below_goes_to() {
    Desk desk = cutOff(meadow.desk().press("fn")).press("Pipit<f2>");

    assertThat(desk.frame()).containsPattern("> Pipit");
  }

  @Test
  void a_record_that_is_gone_or_a_screen_nobody_knows_opens_the_day() {
    Desk desk = meadow.desk().press("nher<enter><s-tab>6g9").after(PAUSE).answerSaves();
    List<Bookmark> place = desk.session().bookmarks();
    RecordId card = meadow.flight(4).id();
    meadow.log.save(Action.remove("remove card", Kind.FLIGHT, card));

    assertThat(desk.cutOff(place).top()).isInstanceOf(DayScreen.class);
    assertThat(desk.frame()).doesNotContain(BACK);
    assertThat(desk.cutOff(List.of(Bookmark.of("a screen of tomorrow"))).frame())
        .contains("Day")
        .doesNotContain(BACK);
    assertThat(desk.cutOff(List.of()).frame()).doesNotContain(BACK);
  }

  @Test
  void a_misfire_that_is_waited_for_comes_first_and_what_was_open_stands_below() {
    Desk desk = cutOff(meadow.desk().press(ARMED + "m<esc><esc><esc>f<down>"));

    assertThat(desk.top()).isInstanceOf(MisfireScreen.class);
    assertThat(desk.press("<esc><esc>").frame()).contains("Fleet");
  }

  @Test
  void control_z_keeps_what_is_half_typed_and_puts_the_terminal_aside() {
    Session session = meadow.desk().press("nher<enter><s-tab>6g9").session();
    List<Effect> effects =
        session.on(new Event.Pressed(Key.control('z'), session.world().machine())).effects();

    assertThat(effects).last().isEqualTo(new Effect.PutAside());
    assertThat(effects)
        .filteredOn(Effect.Save.class::isInstance)
        .singleElement()
        .satisfies(save -> assertThat(save.toString()).contains("6g9"));
  }

  private static Desk cutOff(Desk desk) {
    return desk.cutOff(desk.session().bookmarks());
  }
}
