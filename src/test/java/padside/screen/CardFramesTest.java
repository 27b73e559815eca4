package padside.screen;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import padside.flight.MemoryFlightLog;

/** The looks of day, card and check, held to frames that were looked at. */
class CardFramesTest {
  private static final Size NARROW = new Size(60, 20);
  private static final Size WIDE = new Size(120, 40);

  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(24));

  private Desk card() {
    return meadow.desk().press("nher<enter>");
  }

  @Test
  void the_day() {
    Golden.holds("day", meadow.desk().frame());
    Golden.holds("day-60x20", meadow.desk().frame(NARROW));
    Golden.holds("day-120x40", meadow.desk().frame(WIDE));
  }

  @Test
  void days_that_are_not_open() {
    Golden.holds("day-none", Desk.over(new MemoryFlightLog()).frame());
    Golden.holds("day-past", meadow.desk().after(Duration.ofDays(7)).frame());
    Golden.holds("day-past-60x20", meadow.desk().after(Duration.ofDays(7)).frame(NARROW));
  }

  @Test
  void the_keys_of_the_day() {
    Golden.holds("day-keys", meadow.desk().press("<f1>").frame());
  }

  @Test
  void opening_a_day() {
    Golden.holds("day-open", meadow.desk().press("o").frame());
  }

  @Test
  void a_new_card() {
    Golden.holds("card-new", meadow.desk().press("n").frame());
  }

  @Test
  void a_card_the_check_lets_go() {
    Golden.holds("card-go", card().frame());
    Golden.holds("card-go-60x20", card().frame(NARROW));
    Golden.holds("card-go-120x40", card().frame(WIDE));
  }

  @Test
  void a_card_the_check_holds_back() {
    Golden.holds("card-no-go", card().press("8g14 sw").frame());
    Golden.holds("card-no-go-60x20", card().press("8g14 sw").frame(NARROW));
  }

  @Test
  void a_card_with_what_would_help() {
    Desk desk = card().press("8g14 sw").advise(Fixed.advice());
    Golden.holds("card-help", desk.frame());
    Golden.holds("card-help-60x20", desk.frame(NARROW));
    Golden.holds("card-help-120x40", desk.frame(WIDE));
    Golden.holds("check-help", desk.press("<f3>").frame());
  }

  @Test
  void a_card_while_the_check_is_out() {
    Golden.holds("card-checking", card().holdChecks().press("8g14").frame());
  }

  @Test
  void a_card_with_a_field_that_cannot_be_read() {
    Golden.holds("card-unreadable", card().press("8x14").frame());
    Golden.holds("card-unreadable-60x20", card().press("8x14").frame(NARROW));
  }

  @Test
  void choosing_a_motor() {
    Desk desk = card();
    while (!desk.frame().contains("> Motor")) {
      desk.press("<s-tab>");
    }
    desk.press("<down><down>");
    Golden.holds("card-motors", desk.frame());
    Golden.holds("card-motors-60x20", desk.frame(NARROW));
  }

  @Test
  void the_whole_check() {
    Desk desk = card().press("<f3>");
    Golden.holds("check", desk.frame());
    Golden.holds("check-below", desk.press("<pagedown>").frame());
    Golden.holds("check-end", desk.press("<pagedown><pagedown><pagedown>").frame());
  }

  @Test
  void reading_the_weather() {
    Golden.holds("weather", meadow.desk().press("w7<tab><tab><tab>").frame());
  }

  @Test
  void flying_against_no_go() {
    Golden.holds("against", meadow.desk().press("<end>gno").frame());
  }
}
