package padside.safety;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import padside.flight.Ruling.Verdict;
import padside.units.Angle;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * One safety code as far as it is known here. A value the file does not have is absent, which means
 * not known, never that the code does not care.
 */
public final class RuleSet {
  /**
   * What a rule set says of itself.
   *
   * @param name as files and the command line have it: {@code us-model}
   * @param title as sentences have it: {@code US model code}
   * @param sources full names of the sources by their short ones
   */
  record Heading(String name, String title, String about, Map<String, String> sources) {
    Heading {
      sources = Map.copyOf(sources);
    }
  }

  /**
   * What a code asks of the field.
   *
   * @param smallestSide least smallest side or diameter
   * @param past the verdict on a smaller field
   */
  public record SiteDemand(Sourced<Length> smallestSide, Verdict past) {}

  private final Heading heading;
  private final Map<Figure, Sourced<Double>> figures;
  private final Optional<BandTable> site;
  private final Optional<BandTable> people;
  private final List<Caution> cautions;

  RuleSet(
      Heading heading,
      Map<Figure, Sourced<Double>> figures,
      Optional<BandTable> site,
      Optional<BandTable> people,
      List<Caution> cautions) {
    this.heading = heading;
    this.figures = Map.copyOf(figures);
    this.site = site;
    this.people = people;
    this.cautions = List.copyOf(cautions);
  }

  /** As the command line and settings name it: {@code us-model}. */
  public String name() {
    return heading.name();
  }

  /** As sentences have it: {@code US model code}. */
  public String title() {
    return heading.title();
  }

  /** What the set covers and how far to trust it. */
  public String about() {
    return heading.about();
  }

  /** Full names of the sources by the short ones that values cite. */
  public Map<String, String> sources() {
    return heading.sources();
  }

  /** Largest wind. */
  public Optional<Sourced<Speed>> windLimit() {
    return figure(Figure.WIND_LIMIT_MPS, Speed::new);
  }

  /** Largest angle of the rod from vertical. */
  public Optional<Sourced<Angle>> launcherAngle() {
    return figure(Figure.LAUNCHER_ANGLE_DEG, Angle::ofDegrees);
  }

  /** Largest lift-off mass. */
  public Optional<Sourced<Mass>> liftoffMass() {
    return figure(Figure.LIFTOFF_MASS_KG, Mass::new);
  }

  /** Most propellant, all motors together. */
  public Optional<Sourced<Mass>> propellantMass() {
    return figure(Figure.PROPELLANT_MASS_KG, Mass::new);
  }

  /** Most total impulse, all motors together. */
  public Optional<Sourced<Impulse>> totalImpulse() {
    return figure(Figure.TOTAL_IMPULSE_NS, Impulse::new);
  }

  /** Least average thrust over lift-off weight. */
  public Optional<Sourced<Double>> leastThrustToWeight() {
    return figure(Figure.LEAST_THRUST_TO_WEIGHT, value -> value);
  }

  /** How long everybody stays away after a misfire. */
  public Optional<Sourced<TimeSpan>> misfireWait() {
    return figure(Figure.MISFIRE_WAIT_S, TimeSpan::new);
  }

  /** Least length of the countdown. */
  public Optional<Sourced<TimeSpan>> countdown() {
    return figure(Figure.COUNTDOWN_S, TimeSpan::new);
  }

  /** The rules no number tells. */
  public List<Caution> cautions() {
    return cautions;
  }

  /** Whether anything is known of how large the field must be. */
  public boolean knowsSite() {
    return site.isPresent() || figures.containsKey(Figure.SITE_AT_LEAST_M);
  }

  /**
   * How large the field must be; absent when nothing is known or the tables do not go so far.
   *
   * @param installed impulse of all motors together
   * @param apogee as expected, above the pad
   */
  public Optional<SiteDemand> site(Impulse installed, Mass liftoff, Length apogee) {
    return new SiteRule(this, site).demand(installed, liftoff, apogee);
  }

  /** Whether {@link #site} depends on mass and apogee and not on the impulse alone. */
  public boolean siteAsksApogee() {
    return site.map(BandTable::asksApogee).orElse(false)
        || figures.containsKey(Figure.SITE_ALTITUDE_SHARE);
  }

  /**
   * How far people stand back; absent when not known.
   *
   * @param installed impulse of all motors together
   * @param complex a cluster or stages
   */
  public Optional<Sourced<Length>> standBack(Impulse installed, boolean complex) {
    return people.flatMap(
        table ->
            Band.find(table.byImpulse(), installed.newtonSeconds())
                .flatMap(band -> complex ? complexPeople(table, band) : people(table, band)));
  }

  private static Optional<Sourced<Length>> people(BandTable table, Band band) {
    return band.people().map(distance -> table.origin().map(none -> distance));
  }

  /** That of one motor with as much impulse where none is known for several. */
  private static Optional<Sourced<Length>> complexPeople(BandTable table, Band band) {
    return band.complexPeople()
        .map(distance -> table.complexOrigin().orElse(table.origin()).map(none -> distance))
        .or(
            () ->
                people(table, band)
                    .map(of -> of.noted("for one motor; none is known here for several")));
  }

  /**
   * How far people stand back when several rockets leave at once; absent when their number asks no
   * more than {@link #standBack}, or nothing is known.
   *
   * @param installed impulse of the largest of them
   * @param highest greatest expected altitude of any of them
   */
  public Optional<Sourced<Length>> standBackFrom(int together, Impulse installed, Length highest) {
    Optional<Sourced<Double>> count = figure(Figure.MANY_COUNT);
    if (count.isEmpty() || together < count.get().value()) {
      return Optional.empty();
    }
    double ordinary = standBack(installed, true).map(each -> each.value().metres()).orElse(0.0);
    double least =
        Stream.of(
                figure(Figure.MANY_ALTITUDE_SHARE, share -> share * highest.metres()),
                figure(Figure.MANY_COMPLEX_SHARE, share -> share * ordinary),
                figure(Figure.MANY_MOST_M))
            .flatMap(Optional::stream)
            .mapToDouble(Sourced::value)
            .min()
            .orElse(ordinary);
    return Optional.of(count.get().map(n -> new Length(Math.max(ordinary, least))));
  }

  /** The diameter to clear around the pad of what burns; absent when not known. */
  public Optional<Sourced<Length>> clearedDiameter(Impulse installed, boolean sparks) {
    double share = sparks ? figure(Figure.SPARKS_SHARE).map(Sourced::value).orElse(1.0) : 1.0;
    return people.flatMap(
        table ->
            Band.find(table.byImpulse(), installed.newtonSeconds())
                .flatMap(Band::clearedDiameter)
                .map(cleared -> table.origin().map(n -> new Length(cleared.metres() * share))));
  }

  Optional<Sourced<Double>> figure(Figure figure) {
    return Optional.ofNullable(figures.get(figure));
  }

  /** A value the file must have. */
  Sourced<Double> needed(Figure figure) {
    return figure(figure)
        .orElseThrow(() -> new IllegalStateException(title() + " lack " + figure.key()));
  }

  <T> Optional<Sourced<T>> figure(Figure figure, DoubleFunction<T> of) {
    return figure(figure).map(sourced -> sourced.map(of::apply));
  }

  /** The source of what a code says about a topic in words; empty when it says nothing. */
  Optional<String> cited(Caution.Topic topic) {
    return cautions.stream()
        .filter(caution -> caution.about() == topic)
        .map(caution -> caution.text().cited())
        .findFirst();
  }
}
