package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;

class SyncScreenTest {
  private static final Sync.Partner STICK =
      new Sync.Partner(
          "/media/stick", "2026-05-01 19:12", 41, 7, "All that either had the other has now.");
  private static final Sync.Partner DESKTOP =
      new Sync.Partner(
          "/media/share",
          "2026-04-25 20:40",
          0,
          0,
          "The machine desktop did not answer within 20 s. Is it on, and on this network? What was"
              + " exchanged until then stays.");

  private final Meadow meadow = new Meadow().withMorning();

  private static Sync two(Optional<Sync.Running> running) {
    return new Sync(List.of(STICK, DESKTOP), running);
  }

  private static Optional<Sync.Running> running(String doing, long done, long of) {
    return Optional.of(new Sync.Running("/media/stick", doing, done, of, false, List.of()));
  }

  private Desk desk() {
    return meadow.desk().synced(two(Optional.empty()), Optional.empty());
  }

  @Test
  void from_the_day_two_keys_synchronise_with_the_last_partner() {
    Desk desk = desk();
    int before = desk.keys();
    desk.press("y<enter>");

    assertThat(desk.exchanges()).containsExactly(new Effect.Synchronise("/media/stick"));
    assertThat(desk.keys() - before).isLessThanOrEqualTo(3);
  }

  @Test
  void each_place_says_when_what_came_and_went_and_how_it_ended() {
    Desk desk = desk().press("y");
    Golden.holds("sync", desk.frame());
    Golden.holds("sync-ended-badly-60x20", desk.press("<down>").frame(new Size(60, 20)));
    Golden.holds("sync-120x40", desk.frame(new Size(120, 40)));

    assertThat(desk.press("<enter>").exchanges())
        .containsExactly(new Effect.Synchronise("/media/share"));
  }

  @Test
  void before_the_first_time_it_says_what_to_do_and_a_place_is_typed() {
    Desk desk = meadow.desk().press("y");
    Golden.holds("sync-first-60x20", desk.frame(new Size(60, 20)));
    desk.press("<enter>/media/stock<backspace><backspace><backspace>ick");
    Golden.holds("sync-typed", desk.frame());

    assertThat(desk.press("<enter>").exchanges())
        .containsExactly(new Effect.Synchronise("/media/stick"));
  }

  @Test
  void a_place_with_letters_that_are_keys_is_text_while_it_is_typed() {
    Desk desk = desk().press("yassh:tx@sq<enter>");
    assertThat(desk.exchanges()).containsExactly(new Effect.Synchronise("ssh:tx@sq"));
    assertThat(desk.press("a<esc><esc>").top()).isInstanceOf(DayScreen.class);
    assertThat(desk.press("ya <enter>").exchanges()).hasSize(1);
  }

  @Test
  void an_exchange_under_way_is_told_and_goes_on_while_a_card_is_typed() {
    Desk desk = desk().press("y<enter>");
    desk.synced(two(running("taking in", 512, 2048)), Optional.empty());
    Golden.holds("sync-running", desk.frame());
    Golden.holds("sync-running-60x20", desk.frame(new Size(60, 20)));
    assertThat(desk.press("<enter>").frame()).contains("/media/stick goes on; s stops it");
    assertThat(desk.exchanges()).hasSize(1);

    desk.press("<esc>nher<enter>");
    desk.synced(two(running("taking in", 1024, 2048)), Optional.empty());
    assertThat(desk.top()).isInstanceOf(CardScreen.class);
    desk.press("<s-tab>6g9 SW");
    desk.synced(two(Optional.empty()), Optional.of("Synchronised with /media/stick."));
    assertThat(desk.frame()).contains("6g9 SW").contains("Synchronised with /media/stick.");
  }

  @Test
  void it_is_stopped_by_a_key() {
    Desk desk = desk().press("ys");
    assertThat(desk.exchanges()).isEmpty();
    desk.synced(two(running("sending", 1, 9)), Optional.empty()).press("s");

    assertThat(desk.exchanges()).containsExactly(new Effect.StopSync());
  }

  @Test
  void machines_nobody_knows_are_named_and_their_lines_taken_only_after_a_key() {
    Sync.Stranger club = new Sync.Stranger("club laptop", "0123456789abcdef0123", 340);
    Sync.Stranger nameless = new Sync.Stranger("", "00000000000000000001", 1);
    Sync asking =
        two(
            Optional.of(
                new Sync.Running("/media/stick", "", 0, 0, false, List.of(club, nameless))));
    Desk desk = desk().press("y").synced(asking, Optional.empty());
    Golden.holds("sync-strangers", desk.frame());
    Golden.holds("sync-strangers-60x20", desk.frame(new Size(60, 20)));
    assertThat(desk.press("y<enter><down>").exchanges()).isEmpty();

    desk.press("n").press("t");
    assertThat(desk.exchanges())
        .containsExactly(new Effect.TakeStrangers(false), new Effect.TakeStrangers(true));
    assertThat(desk().press("ytn").exchanges()).as("nothing was asked").isEmpty();
  }

  @Test
  void of_many_machines_the_key_and_how_many_there_are_stay_in_sight() {
    Sync.Stranger club = new Sync.Stranger("club laptop", "0123456789abcdef0123", 340);
    for (int count : List.of(5, 9)) {
      Sync.Running asks =
          new Sync.Running(
              "/media/stick", "", 0, 0, false, java.util.Collections.nCopies(count, club));
      String frame =
          desk().press("y").synced(two(Optional.of(asks)), Optional.empty()).frame(Size.SMALLEST);
      assertThat(frame).contains("t takes their lines");
      assertThat(frame.split("club laptop", -1)).hasSize(count == 5 ? 6 : 5);
      assertThat(frame.contains("and 5 more")).isEqualTo(count == 9);
    }
  }

  @Test
  void a_place_is_taken_out_of_the_list_after_a_second_x() {
    Desk desk = desk().press("y<down>x");
    assertThat(desk.frame()).contains("x again takes /media/share out of this list");
    assertThat(desk.press("<up>x<esc>").exchanges()).isEmpty();
    assertThat(desk.top()).isInstanceOf(SyncScreen.class);

    desk.press("xx");
    assertThat(desk.exchanges()).containsExactly(new Effect.DropPartner("/media/stick"));
  }

  @Test
  void what_came_shows_on_the_day_at_once_with_what_is_to_be_chosen() {
    Desk desk = desk();
    assertThat(desk.frame()).doesNotContain("Merlin");
    meadow.log.save(
        Action.create(
            "draft card",
            Kind.FLIGHT,
            Facts.none().with(Flight.DAY, meadow.day).with(Flight.MOTOR, "E9-6")));
    Facts one = Facts.none().with(Flight.NOTE, "hot", "hot");
    Facts other = Facts.none().with(Flight.NOTE, "cold", "cold");
    new Contested(meadow.log, Kind.FLIGHT, meadow.flight(1).id()).says(List.of(one, other));
    desk.synced(two(Optional.empty()), Optional.of("Synchronised with /media/stick."));

    assertThat(desk.frame())
        .contains("E9-6")
        .contains("Synchronised with /media/stick. 1 record in conflict: r.");
  }

  @Test
  void a_card_removed_elsewhere_while_it_stands_at_the_pad_closes_the_pad() {
    Desk desk = desk().press("nher<enter><f5>");
    assertThat(desk.top()).isInstanceOf(PadScreen.class);
    meadow.log.save(Action.remove("remove card", Kind.FLIGHT, meadow.flight(4).id()));

    desk.synced(two(Optional.empty()), Optional.of("Synchronised with /media/stick."));
    assertThat(desk.frame()).contains("Synchronised with");
    assertThat(desk.press("<down><up>").top()).isNotInstanceOf(PadScreen.class);
  }
}
