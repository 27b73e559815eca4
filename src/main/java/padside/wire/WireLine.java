package padside.wire;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.units.Bearing;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.UnitSystem;
import padside.units.Wind;
import padside.units.WindNotation;

/** The form of a line from a wind meter, which the room's description lays down. */
public final class WireLine {
  /** Longer lines are none of a wind meter; a sentence of NMEA 0183 has 82 characters at most. */
  public static final int LONGEST = 256;

  /** No wind near the ground has been measured above 113 m/s; from memory. */
  private static final double LARGEST_MPS = 113.0;

  private static final WindNotation WORDS = Notations.wind(UnitSystem.METRIC).withUnitRequired();
  private static final String WORD = "wind ";

  private static final Pattern MWV =
      Pattern.compile(
          "\\$(?<summed>[A-Z]{2}MWV,(?<angle>\\d{1,3}(?:\\.\\d{1,3})?)?,[RT],"
              + "(?<speed>\\d{1,3}(?:\\.\\d{1,3})?),(?<unit>[KMN]),A)\\*(?<sum>[0-9A-Fa-f]{2})");

  private WireLine() {}

  /** The wind a line tells of; empty where it is no reading. */
  public static Optional<Wind> read(String line) {
    String text = line.strip();
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    Optional<Wind> wind =
        text.startsWith(WORD)
            ? WORDS.read(text.substring(WORD.length())).value()
            : readSentence(text);
    return wind.filter(each -> each.gust().metresPerSecond() <= LARGEST_MPS);
  }

  private static Optional<Wind> readSentence(String text) {
    Matcher mwv = MWV.matcher(text);
    if (!mwv.matches() || sum(mwv.group("summed")) != Integer.parseInt(mwv.group("sum"), 16)) {
      return Optional.empty();
    }
    double number = Double.parseDouble(mwv.group("speed"));
    Speed speed =
        switch (mwv.group("unit")) {
          case "K" -> Speed.ofKilometresPerHour(number);
          case "N" -> Speed.ofKnots(number);
          default -> new Speed(number);
        };
    Optional<Double> angle = Optional.ofNullable(mwv.group("angle")).map(Double::valueOf);
    return angle.filter(each -> each > 360).isPresent()
        ? Optional.empty()
        : Optional.of(new Wind(speed, speed, angle.map(Bearing::new)));
  }

  private static int sum(String text) {
    return text.chars().reduce(0, (sum, character) -> sum ^ character);
  }
}
