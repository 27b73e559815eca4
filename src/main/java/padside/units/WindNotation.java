package padside.units;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The wind shorthand: {@code calm}, {@code 6}, {@code 6g9}, {@code 6g9 SW}, {@code B3 W}, {@code
 * 2.5 m/s 240}, {@code 6 gusting 9 mph from SW}, {@code SW 6g9}.
 *
 * <p>A unit stands for both speeds when only one has it. The direction is where the wind comes
 * from. A direction in bare degrees needs three digits, {@code 040}, or a degree sign or {@code
 * from} before it: {@code 6 9} is more often a forgotten {@code g} than a wind from 9°. How a
 * Beaufort number is taken: {@link Beaufort#wind}. Behind it may stand {@code by wire}, which says
 * that a meter told it and nobody typed it.
 */
public final class WindNotation implements Notation<Wind> {
  private static final String UNIT =
      Dimension.SPEED.units().stream()
          .flatMap(unit -> unit.spellings().stream())
          .sorted(Comparator.comparing(String::length).reversed())
          .map(Pattern::quote)
          .collect(Collectors.joining("|", "(?:", ")(?![a-z/])"));

  private static final Pattern SPEEDS =
      Pattern.compile(
          "(?<mean>DECIMAL)(?:\\s*(?<unit>UNIT))?+"
                  .replace("DECIMAL", Typed.DECIMAL)
                  .replace("UNIT", UNIT)
              + "(?:\\s*g(?:usts?|usting)?\\s*(?:to\\s*)?"
              + "(?<gust>DECIMAL)(?:\\s*(?<gustunit>UNIT))?+)?+(?<rest>.*)"
                  .replace("DECIMAL", Typed.DECIMAL)
                  .replace("UNIT", UNIT));

  private static final Pattern BEAUFORT =
      Pattern.compile(
          "(?:(?:b|bft|beaufort|force)\\s*(?<first>\\d{1,4})|(?<last>\\d{1,4})\\s*(?:bft|beaufort))"
              + "(?<rest>\\D.*|)");

  private static final Pattern FROM =
      Pattern.compile("(?:\\s*,?\\s+|(?=[a-z]))(?<from>from\\b)?\\s*(?<bearing>.*)");

  private static final Pattern DIRECTION_FIRST =
      Pattern.compile("(?:from )?(?<point>[a-z][a-z\\s-]*?)(?:\\bat\\b)?\\s*(?<speeds>[\\d.,].*)");

  private static final String LIKE = "; type wind like 6g9 SW, calm, B3 W or 2.5 m/s 240.";

  private static final String BY_WIRE = " by wire";

  private final UnitNotation<Speed> speed;

  WindNotation(UnitNotation<Speed> speed) {
    this.speed = speed;
  }

  /** The same, refusing bare speeds with the list of units: for the command line. */
  public WindNotation withUnitRequired() {
    return new WindNotation(speed.withUnitRequired());
  }

  @Override
  public Reading<Wind> read(String typed) {
    Optional<String> unfit = Typed.unfit(typed);
    if (unfit.isPresent()) {
      return refused(typed, unfit.get());
    }
    String text = withoutWire(Typed.normal(typed));
    if (text.equals("calm")) {
      return Reading.of(Wind.calm());
    }
    Matcher beaufort = BEAUFORT.matcher(text);
    if (beaufort.matches()) {
      return readBeaufort(typed, beaufort);
    }
    Matcher turned = DIRECTION_FIRST.matcher(text);
    if (turned.matches() && Bearing.find(turned.group("point")).isPresent()) {
      text = turned.group("speeds") + " from " + turned.group("point");
    }
    Matcher speeds = SPEEDS.matcher(text);
    return speeds.matches()
        ? readSpeeds(typed, speeds)
        : refused(typed, "does not begin with a wind speed that I can read");
  }

  private Reading<Wind> readBeaufort(String typed, Matcher matcher) {
    String first = matcher.group("first");
    Optional<Beaufort> force =
        Beaufort.find(Integer.parseInt(first == null ? matcher.group("last") : first));
    if (force.isEmpty()) {
      return refused(typed, "is not on the Beaufort scale, which goes from 0 to 12");
    }
    Reading<Optional<Bearing>> from = readFrom(matcher.group("rest"));
    return from.objection().isPresent()
        ? refused(typed, from.objection().get())
        : Reading.of(force.get().wind(from.value().orElseThrow()));
  }

  private Reading<Wind> readSpeeds(String typed, Matcher matcher) {
    String unit = Optional.ofNullable(matcher.group("unit")).orElse("");
    String gustUnit = Optional.ofNullable(matcher.group("gustunit")).orElse("");
    String gustNumber = matcher.group("gust");
    Reading<Speed> mean = speed.read(matcher.group("mean") + (unit.isEmpty() ? gustUnit : unit));
    Reading<Speed> gust =
        gustNumber == null ? mean : speed.read(gustNumber + (gustUnit.isEmpty() ? unit : gustUnit));
    Reading<Optional<Bearing>> from = readFrom(matcher.group("rest"));
    if (from.objection().isPresent()) {
      return refused(typed, from.objection().get());
    }
    if (mean.objection().or(gust::objection).isPresent()) {
      return Reading.refused(mean.objection().or(gust::objection).get());
    }
    return windOf(typed, mean.value().orElseThrow(), gust.value().orElseThrow(), from);
  }

  private Reading<Wind> windOf(
      String typed, Speed mean, Speed gust, Reading<Optional<Bearing>> from) {
    return gust.metresPerSecond() < mean.metresPerSecond()
        ? refused(typed, "has a gust below its mean")
        : Reading.of(new Wind(mean, gust, from.value().orElseThrow()));
  }

  /** The objection is the middle of a sentence. */
  private static Reading<Optional<Bearing>> readFrom(String rest) {
    if (rest.isBlank()) {
      return Reading.of(Optional.empty());
    }
    Matcher matcher = FROM.matcher(rest);
    if (!matcher.matches()) {
      return Reading.refused("has " + Typed.echo(rest) + " that I cannot read");
    }
    String bearing = matcher.group("bearing");
    if (matcher.group("from") == null && bearing.matches("\\d{1,2}(?:[.,]\\d*)?")) {
      return Reading.refused(
          "has "
              + bearing
              + ", which could be a gust, g"
              + bearing
              + ", or a bearing, "
              + bearing
              + "°");
    }
    Reading<Bearing> read = new BearingNotation().read(bearing);
    return read.value()
        .map(value -> Reading.of(Optional.of(value)))
        .orElseGet(() -> Reading.refused("has " + Typed.echo(bearing) + " that I cannot read"));
  }

  /** As it is said: {@code 6 gusting 9 mph from SW}, {@code calm}. */
  @Override
  public String show(Wind value) {
    return show(value, " gusting ", " from ");
  }

  /** As it is typed: {@code 6g9 mph SW}. */
  public String showShort(Wind value) {
    return show(value, "g", " ");
  }

  /** As it is told by a meter: {@code 6g9 mph 225 by wire}. */
  public String showByWire(Wind value) {
    String speeds = showShort(new Wind(value.mean(), value.gust(), Optional.empty()));
    return speeds + value.from().map(WindNotation::threeDigits).orElse("") + BY_WIRE;
  }

  private static String threeDigits(Bearing from) {
    return String.format(Locale.ROOT, " %03d", Math.round(from.degrees()) % 360);
  }

  /** Whether a wind written like this came by wire. */
  public static boolean isByWire(String typed) {
    return Typed.normal(typed).endsWith(BY_WIRE);
  }

  private static String withoutWire(String text) {
    return text.endsWith(BY_WIRE) ? text.substring(0, text.length() - BY_WIRE.length()) : text;
  }

  private String show(Wind value, String gusting, String from) {
    String mean = speed.showBare(value.mean());
    String gust = speed.showBare(value.gust());
    if (gust.equals("0") && value.from().isEmpty()) {
      return "calm";
    }
    String speeds = mean.equals(gust) ? mean : mean + gusting + gust;
    return speeds
        + " "
        + speed.symbol()
        + value.from().map(each -> from + direction(each)).orElse("");
  }

  /** The compass point alone where it says as much as whole degrees would. */
  private static String direction(Bearing from) {
    boolean point =
        from.isCompassPoint() || new Bearing(Math.round(from.degrees())).isCompassPoint();
    return point ? from.compassPoint() : new BearingNotation().show(from);
  }

  @Override
  public String example() {
    return "6g9 SW";
  }

  private static Reading<Wind> refused(String typed, String why) {
    return Reading.refused(Typed.echo(typed) + " " + why + LIKE);
  }
}
