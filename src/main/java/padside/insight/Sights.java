package padside.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Sighting;
import padside.physics.Ellipse;
import padside.physics.RefusedInput;
import padside.physics.Tracking;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

/**
 * What lines of sight to a rocket come to: where to look for it, and how high it went.
 *
 * @param remarks what stands in the way of an answer, and what it takes for granted; sentences
 */
public record Sights(Optional<Search> search, Optional<Height> height, List<String> remarks) {
  /** One standard deviation of a bearing by hand compass: common practice, no source. */
  private static final Angle BY_HAND = Angle.ofDegrees(3);

  /**
   * Without a spread kept with the card: nine of ten times within half the distance and this;
   * common practice, no source.
   */
  private static final double USUAL_M = 20;

  /** Lines that meet flatter than this are helped by the prediction: common practice, no source. */
  private static final Angle FLATTEST = Angle.ofDegrees(15);

  private static final String BEHIND =
      "The place lies behind a spot as it was looked from; check the bearings.";

  private static final String NO_SPREAD =
      "No spread was kept with the card: half the expected distance and 20 m each way is taken to"
          + " hold 90 in 100 (common practice, no source).";

  private static final String NOT_PLACED =
      "A line of sight is left out: tell both how far and which way from the pad its spot lies.";

  /**
   * Where to look: the middle and the ellipse that holds it as often as asked for.
   *
   * @param toward of the middle from the pad
   * @param along where the longest diameter points to
   * @param fromLast from the spot of the last line of sight, where somebody may still stand
   * @param lines how many lines of sight it stands on
   * @param expectation whether the predicted landing counted as well, as it does until two lines
   *     cross
   */
  public record Search(
      Bearing toward,
      Length distance,
      Length longHalf,
      Length shortHalf,
      Bearing along,
      Optional<Way> fromLast,
      int lines,
      boolean expectation) {}

  /** Bearing and distance. */
  public record Way(Bearing toward, Length distance) {}

  /**
   * Altitude above the stations.
   *
   * @param closure of two stations, difference over sum of their heights; absent of one alone
   * @param counts false where two stations disagree by more than contests allow
   */
  public record Height(Length above, Optional<Double> closure, boolean counts) {
    /** The largest closure with which a height counts. */
    public static final double LARGEST_CLOSURE = Tracking.LARGEST_CLOSURE;
  }

  /** Keeps its own list. */
  public Sights {
    remarks = List.copyOf(remarks);
  }

  /**
   * Of all lines of sight to one flight, in the order they were told.
   *
   * @param flight for where the landing was predicted
   * @param confidence how often it is to lie within the area to search
   */
  public static Sights of(List<Sighting> sightings, Facts flight, Confidence confidence) {
    List<String> remarks = new ArrayList<>();
    List<Tracking.Line> lines =
        aimed(of(Sighting.Target.LANDING, sightings), remarks).stream().map(Sights::line).toList();
    Optional<Search> search = search(lines, flight, confidence, remarks);
    Optional<Height> height = height(of(Sighting.Target.APOGEE, sightings), remarks);
    return new Sights(search, height, remarks);
  }

  private static List<Sighting> of(Sighting.Target target, List<Sighting> sightings) {
    return sightings.stream().filter(each -> each.target().equals(Optional.of(target))).toList();
  }

  /** Those that point somewhere from a spot that is known; says so where one is left out. */
  private static List<Sighting> aimed(List<Sighting> seen, List<String> remarks) {
    List<Sighting> aimed =
        seen.stream().filter(each -> each.facts().get(Sighting.BEARING).isPresent()).toList();
    if (!aimed.stream().allMatch(Sights::placed)) {
      remarks.add(NOT_PLACED);
    }
    return aimed.stream().filter(Sights::placed).toList();
  }

  /** At the pad, where nothing is told of the spot; never taken to lie north for want of a way. */
  private static boolean placed(Sighting sighting) {
    boolean far = tells(sighting, Sighting.STATION_DISTANCE);
    boolean way = tells(sighting, Sighting.STATION_BEARING);
    Optional<Length> distance = sighting.facts().get(Sighting.STATION_DISTANCE);
    boolean both =
        distance.isPresent() && sighting.facts().get(Sighting.STATION_BEARING).isPresent();
    return both || (!far && !way) || distance.filter(length -> length.metres() == 0).isPresent();
  }

  private static boolean tells(Sighting sighting, Column<?> column) {
    return sighting.facts().get(column).isPresent() || sighting.facts().typed(column).isPresent();
  }

  /** Lines that cross tell more than any prediction, which would only draw the place toward it. */
  private static Optional<Search> search(
      List<Tracking.Line> lines, Facts flight, Confidence confidence, List<String> remarks) {
    double share = confidence.share();
    Optional<Ellipse> expected =
        expected(flight)
            .filter(any -> !cross(lines))
            .map(kept -> kept.rescaled(Confidence.told(flight), share));
    if (lines.isEmpty() && expected.isEmpty()) {
      return Optional.empty();
    }
    if (expected.isPresent() && flight.get(Flight.PREDICTED_SPREAD_LONG).isEmpty()) {
      remarks.add(NO_SPREAD);
    }
    try {
      Ellipse area = Tracking.search(lines, expected, share);
      if (lines.stream().anyMatch(line -> behind(line, area))) {
        remarks.add(BEHIND);
      }
      return Optional.of(search(lines, area, expected.isPresent()));
    } catch (RefusedInput refused) {
      remarks.add(refused.getMessage());
      return Optional.empty();
    }
  }

  private static Search search(List<Tracking.Line> lines, Ellipse area, boolean expectation) {
    Tracking.Way way = Tracking.way(area, new Length(0), new Length(0));
    Optional<Way> last =
        lines.stream()
            .reduce((first, second) -> second)
            .filter(line -> Math.hypot(line.east().metres(), line.north().metres()) > 0)
            .map(line -> Tracking.way(area, line.east(), line.north()))
            .map(each -> new Way(each.toward(), each.distance()));
    return new Search(
        way.toward(),
        way.distance(),
        area.longHalf(),
        area.shortHalf(),
        area.along(),
        last,
        lines.size(),
        expectation);
  }

  /** Whether any two of them cross, rather than run almost side by side. */
  private static boolean cross(List<Tracking.Line> lines) {
    return lines.stream()
        .anyMatch(
            one ->
                lines.stream()
                    .map(other -> Math.toRadians(one.toward().degreesTo(other.toward())))
                    .anyMatch(turn -> Math.abs(Math.sin(turn)) >= Math.sin(FLATTEST.radians())));
  }

  private static boolean behind(Tracking.Line line, Ellipse area) {
    Bearing toward = Tracking.way(area, line.east(), line.north()).toward();
    return Math.abs(line.toward().degreesTo(toward)) > 90;
  }

  private static Tracking.Line line(Sighting sighting) {
    Bearing toward = sighting.facts().get(Sighting.BEARING).orElseThrow();
    return new Tracking.Line(east(sighting), north(sighting), toward, BY_HAND);
  }

  private static Length east(Sighting sighting) {
    return new Length(distanceM(sighting) * Math.sin(stationRadians(sighting)));
  }

  private static Length north(Sighting sighting) {
    return new Length(distanceM(sighting) * Math.cos(stationRadians(sighting)));
  }

  private static double distanceM(Sighting sighting) {
    return sighting.facts().get(Sighting.STATION_DISTANCE).map(Length::metres).orElse(0.0);
  }

  private static double stationRadians(Sighting sighting) {
    return sighting.facts().get(Sighting.STATION_BEARING).map(Bearing::inRadians).orElse(0.0);
  }

  /** The predicted landing as far as the card kept it. */
  private static Optional<Ellipse> expected(Facts flight) {
    Optional<Bearing> toward = flight.get(Flight.PREDICTED_BEARING);
    Optional<Length> distance = flight.get(Flight.PREDICTED_DISTANCE);
    if (toward.isEmpty() || distance.isEmpty()) {
      return Optional.empty();
    }
    double metres = distance.get().metres();
    Length usual = new Length(metres / 2 + USUAL_M);
    return Optional.of(
        new Ellipse(
            new Length(metres * Math.sin(toward.get().inRadians())),
            new Length(metres * Math.cos(toward.get().inRadians())),
            flight.get(Flight.PREDICTED_SPREAD_LONG).orElse(usual),
            flight.get(Flight.PREDICTED_SPREAD_SHORT).orElse(usual),
            flight.get(Flight.PREDICTED_SPREAD_ALONG).orElse(new Bearing(0))));
  }

  private static Optional<Height> height(List<Sighting> seen, List<String> remarks) {
    List<Sighting> raised =
        seen.stream().filter(each -> each.facts().get(Sighting.ELEVATION).isPresent()).toList();
    if (raised.isEmpty()) {
      return Optional.empty();
    }
    try {
      List<Sighting> stations = raised.size() < 2 ? List.of() : aimed(raised, remarks);
      return Optional.of(
          stations.size() < 2 ? single(raised.get(raised.size() - 1), remarks) : both(stations));
    } catch (RefusedInput refused) {
      remarks.add(refused.getMessage());
      return Optional.empty();
    }
  }

  private static Height single(Sighting only, List<String> remarks) {
    Length height =
        Tracking.single(
            new Length(distanceM(only)), only.facts().get(Sighting.ELEVATION).orElseThrow());
    remarks.add("One station alone: true only if it rose straight up.");
    return new Height(height, Optional.empty(), true);
  }

  /** The two told last. */
  private static Height both(List<Sighting> raised) {
    Tracking.Reduction reduction =
        Tracking.reduce(sight(raised.get(raised.size() - 2)), sight(raised.get(raised.size() - 1)));
    return new Height(reduction.height(), Optional.of(reduction.closure()), reduction.closes());
  }

  private static Tracking.Sight sight(Sighting sighting) {
    return new Tracking.Sight(
        east(sighting),
        north(sighting),
        sighting.facts().get(Sighting.BEARING).orElseThrow(),
        sighting.facts().get(Sighting.ELEVATION).orElseThrow());
  }
}
