package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import padside.flight.Kind;
import padside.flight.Weather;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.Wind;

class WeatherScreenTest {
  private final Meadow meadow = new Meadow();

  private Weather latest() {
    return meadow.desk().book().latestWeather(meadow.day).orElseThrow();
  }

  @Test
  void a_reading_is_one_of_now() {
    meadow.desk().press("w6g9 sw<enter><enter>55F<enter>29.1<enter>55%<enter>3000<enter>haze<f2>");

    assertThat(latest().at()).contains(Desk.MORNING);
    assertThat(latest().wind().map(Wind::gust)).contains(Speed.ofMph(9));
    assertThat(latest().temperature()).contains(Temperature.ofFahrenheit(55));
    assertThat(latest().pressure()).contains(Pressure.ofInchesOfMercury(29.1));
    assertThat(latest().humidity()).contains(0.55);
    assertThat(latest().cloudBase()).contains(Length.ofFeet(3000));
    assertThat(latest().facts().get(Weather.SKY)).contains("haze");
    assertThat(latest().windHeight()).as("not said").isEmpty();
  }

  @Test
  void the_slower_values_come_from_the_reading_before_and_the_wind_does_not() {
    meadow.withWeather("6g9 SW", Duration.ofMinutes(40)).desk().press("w8<f2>");

    assertThat(latest().temperature()).contains(Temperature.ofFahrenheit(61));
    assertThat(latest().wind().map(Wind::mean)).contains(Speed.ofMph(8));
    assertThat(latest().wind().flatMap(Wind::from)).isEmpty();
  }

  @Test
  void looking_into_the_form_reads_nothing() {
    meadow.withWeather("6g9 SW", Duration.ofMinutes(40)).desk().press("w<esc>");

    assertThat(meadow.log.list(Kind.WEATHER)).hasSize(1);
  }

  /**
   * 35 °C, 985.1 hPa, dew point 20 °C, which is 41.5 % humidity: 3536 ft by the formula of the US
   * National Weather Service, whose own zero is 19 ft off.
   */
  @Test
  void the_density_altitude_of_what_is_typed_is_told_while_it_is_typed() {
    Desk desk = meadow.desk().press("w<tab><tab>");
    assertThat(desk.frame()).as("nothing is known yet").doesNotContain("density altitude");

    String frame = desk.press("35C<tab>985.1hPa<tab>41.5%").frame();
    assertThat(feet(frame)).isCloseTo(3536, within(40.0));
    assertThat(feet(desk.press("<c-u>5%").frame())).as("dry air is denser").isLessThan(3450);
  }

  private static double feet(String frame) {
    Matcher told = Pattern.compile("Air as at (\\d+) ft").matcher(frame);
    assertThat(told.find()).as(frame).isTrue();
    return Double.parseDouble(told.group(1));
  }

  @Test
  void the_pressure_asked_for_is_told() {
    Desk desk = meadow.desk().press("w<tab><tab><tab>");

    assertThat(desk.frame()).contains("> Station pressure").contains("NOT reduced to sea level");
  }
}
