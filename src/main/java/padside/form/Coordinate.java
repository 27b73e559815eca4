package padside.form;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.units.Notation;
import padside.units.Reading;

/**
 * Latitude or longitude in decimal degrees, WGS84: {@code 43.65}, {@code 43.65 N}, {@code -93.2},
 * {@code 93.2W}.
 *
 * @param name of the coordinate, for objections
 * @param positive the letter of the half with positive degrees
 * @param negative the letter of the other half
 * @param most the largest number of degrees
 */
public record Coordinate(String name, char positive, char negative, int most)
    implements Notation<Double> {
  public static final Coordinate LATITUDE = new Coordinate("latitude", 'N', 'S', 90);
  public static final Coordinate LONGITUDE = new Coordinate("longitude", 'E', 'W', 180);

  private static final Pattern DEGREES =
      Pattern.compile("([+-]?)([0-9]{1,3}(?:[.,][0-9]{1,12})?)\\s*°?\\s*([NSEW]?)");

  @Override
  public Reading<Double> read(String typed) {
    String text = typed.strip().toUpperCase(Locale.ROOT).replace('\u2212', '-');
    Matcher matcher = DEGREES.matcher(text);
    if (!matcher.matches()) {
      return refused(typed, "is not a number of degrees");
    }
    String half = matcher.group(3);
    boolean south = half.equals(String.valueOf(negative));
    boolean signed = !matcher.group(1).isEmpty();
    if (!half.isEmpty() && !south && !half.equals(String.valueOf(positive))) {
      return refused(typed, "is no " + name);
    }
    if (signed && !half.isEmpty()) {
      return refused(typed, "has both a sign and a letter");
    }
    double degrees = Double.parseDouble(matcher.group(2).replace(',', '.'));
    if (degrees > most) {
      return refused(typed, "is beyond " + most + " degrees");
    }
    return Reading.of(south || matcher.group(1).equals("-") ? 0 - degrees : degrees);
  }

  private Reading<Double> refused(String typed, String why) {
    return Reading.refused(
        Reading.echo(typed)
            + " "
            + why
            + "; type a "
            + name
            + " like "
            + example()
            + " or -"
            + example()
            + ".");
  }

  /** Every digit: a fifth decimal is a metre on the ground. */
  @Override
  public String show(Double degrees) {
    return BigDecimal.valueOf(degrees).stripTrailingZeros().toPlainString();
  }

  @Override
  public String example() {
    return most == 90 ? "43.652" : "79.383";
  }
}
