package padside.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Bearings as {@code 240}, {@code 240°}, {@code 240 deg}, {@code WSW}, {@code southwest} or, as
 * shown, {@code 240° WSW}.
 */
final class BearingNotation implements Notation<Bearing> {
  private static final Pattern DEGREES =
      Pattern.compile(
          "(?<number>-?" + Typed.DECIMAL + ")\\s*(?:°|deg(?:rees?)?)?\\s*(?<point>[a-z\\s-]*)");

  @Override
  public Reading<Bearing> read(String typed) {
    Optional<String> unfit = Typed.unfit(typed);
    if (unfit.isPresent()) {
      return refused(typed, unfit.get());
    }
    String text = Typed.normal(typed);
    Matcher matcher = DEGREES.matcher(text);
    if (!matcher.matches()) {
      return Bearing.find(text)
          .map(Reading::of)
          .orElseGet(() -> refused(typed, "is neither degrees nor a compass point"));
    }
    return degrees(typed, matcher.group("number"), matcher.group("point"));
  }

  private Reading<Bearing> degrees(String typed, String number, String point) {
    boolean negative = number.startsWith("-");
    Reading<Double> degrees = Typed.decimal(negative ? number.substring(1) : number);
    if (degrees.objection().isPresent()) {
      return refused(typed, degrees.objection().get());
    }
    double turn = degrees.value().orElseThrow();
    if (negative || turn > 360) {
      return refused(typed, "is outside 0 to 360 degrees");
    }
    Bearing bearing = new Bearing(turn);
    Optional<String> typedPoint = Bearing.find(point).map(Bearing::compassPoint);
    if (!point.isBlank() && !typedPoint.equals(Optional.of(bearing.compassPoint()))) {
      return refused(typed, "disagrees with itself, for that number is " + show(bearing));
    }
    return Reading.of(bearing);
  }

  /** Whole degrees and the nearest of sixteen compass points: {@code 240° WSW}. */
  @Override
  public String show(Bearing value) {
    Bearing whole = new Bearing(Math.round(value.degrees()));
    return Math.round(whole.degrees()) + "° " + whole.compassPoint();
  }

  @Override
  public String example() {
    return "240";
  }

  private Reading<Bearing> refused(String typed, String why) {
    return Reading.refused(Typed.echo(typed) + " " + why + "; type it like 240, 240° or SW.");
  }
}
