package padside.screen;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Field;
import padside.flight.Kind;
import padside.units.Bearing;
import padside.units.Length;

/** The landing chart and the height over time. */
class ChartScreenTest {
  private static final List<Size> SIZES =
      List.of(new Size(60, 20), new Size(80, 24), new Size(120, 40));

  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(24));

  private static Field.Edge edge(double bearing, double feet, String name, String beyond) {
    return new Field.Edge(new Bearing(bearing), Length.ofFeet(feet), name, beyond);
  }

  private Desk desk() {
    meadow.log.save(
        Action.change(
            "pace",
            Kind.FIELD,
            meadow.field,
            Facts.none()
                .with(
                    Field.EDGES,
                    List.of(
                        edge(0, 310, "hedge", "crops"),
                        edge(45, 380, "lane", "road"),
                        edge(90, 330, "wood", "trees"),
                        edge(180, 250, "ditch", "water"),
                        edge(225, 400, "corner by the old barn", ""),
                        edge(270, 290, "", "")))));
    return meadow.desk();
  }

  @Test
  void look() {
    for (boolean braille : new boolean[] {true, false}) {
      Desk desk = desk();
      desk = (braille ? desk : desk.withoutBraille()).press("nher<enter>8g14 sw<f4>");
      for (Size size : SIZES) {
        System.out.println(desk.frame(size));
      }
      desk.press("<tab>");
      for (Size size : SIZES) {
        System.out.println(desk.frame(size));
      }
    }
  }
}
