package padside.motor;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;

/** A type of motor, known by its trade designation without the delay, such as C6. */
public record MotorType(RecordId id, Facts facts) {
  /** A delay label that stands for no ejection charge. */
  public static final String PLUGGED = "P";

  /** A delay label that stands for a booster, which lights the stage above as it burns out. */
  public static final String BOOSTER = "0";

  /** Cases and mounts are named by whole millimetres; up to half of one is play. */
  private static final Length PLAY = Length.ofMillimetres(0.5);

  /** How a motor meets the mount, the best first. */
  public enum Fit {
    SNUG(""),
    WITH_ADAPTER("with adapter"),
    TOO_WIDE("too wide");

    private final String words;

    Fit(String words) {
      this.words = words;
    }

    /** As notes say it; empty where nothing needs saying. */
    public String words() {
      return words;
    }
  }

  /** Stands for all delays where a mass limit does not depend on them. */
  public static final String EVERY_DELAY = "";

  /** The largest lift-off mass for one delay, or for {@link #EVERY_DELAY}. */
  public record MassLimit(String delay, Mass mass) {}

  /** One point of an entered thrust curve, time from ignition. */
  public record CurvePoint(TimeSpan time, Force thrust) {}

  public static final Column<String> DESIGNATION =
      Column.text("designation", "trade designation without the delay");
  public static final Column<String> IMPULSE_CLASS = Column.text("class", "impulse class letter");
  public static final Column<String> PROPELLANT =
      Column.text("propellant", "propellant and how the motor is made up");
  public static final Column<Length> DIAMETER =
      Column.quantity("diameter_m", "outer diameter of the case", Length::new, Length::metres);
  public static final Column<Length> LENGTH =
      Column.quantity("length_m", "length of the case", Length::new, Length::metres);
  public static final Column<List<String>> DELAYS =
      Column.texts("delays", "delays on sale in seconds; 0 is a booster, P is plugged");
  public static final Column<Impulse> TOTAL_IMPULSE =
      Column.quantity("total_impulse_ns", "total impulse", Impulse::new, Impulse::newtonSeconds);
  public static final Column<Force> AVERAGE_THRUST =
      Column.quantity(
          "average_thrust_n", "total impulse over burn time", Force::new, Force::newtons);
  public static final Column<Force> PEAK_THRUST =
      Column.quantity("peak_thrust_n", "largest thrust", Force::new, Force::newtons);
  public static final Column<TimeSpan> TIME_TO_PEAK =
      Column.quantity(
          "time_to_peak_s", "from ignition to largest thrust", TimeSpan::new, TimeSpan::seconds);
  public static final Column<TimeSpan> TIME_TO_SUSTAIN =
      Column.quantity(
          "time_to_sustain_s",
          "from ignition to where the thrust settles",
          TimeSpan::new,
          TimeSpan::seconds);
  public static final Column<TimeSpan> BURN_TIME =
      Column.quantity("burn_time_s", "from ignition to burnout", TimeSpan::new, TimeSpan::seconds);
  public static final Column<Mass> TOTAL_MASS =
      Column.quantity("total_mass_kg", "mass of the unused motor", Mass::new, Mass::kilograms);
  public static final Column<Mass> PROPELLANT_MASS =
      Column.quantity("propellant_mass_kg", "mass of its propellant", Mass::new, Mass::kilograms);
  public static final Column<List<MassLimit>> MAX_LIFTOFF_MASS =
      Column.list(
          "max_liftoff_mass",
          "largest lift-off mass by delay",
          item ->
              new MassLimit(
                  (String) item.get("delay"),
                  new Mass(((Number) item.get("mass_kg")).doubleValue())),
          limit -> Map.of("delay", limit.delay(), "mass_kg", limit.mass().kilograms()));
  public static final Column<List<CurvePoint>> CURVE =
      Column.list(
          "curve",
          "entered thrust curve from a certification sheet or a static test",
          item ->
              new CurvePoint(
                  new TimeSpan(((Number) item.get("time_s")).doubleValue()),
                  new Force(((Number) item.get("thrust_n")).doubleValue())),
          point -> Map.of("time_s", point.time().seconds(), "thrust_n", point.thrust().newtons()));
  public static final Column<String> PROVENANCE =
      Column.text("provenance", "where the numbers come from and how sure they are");

  public static final List<Column<?>> COLUMNS =
      List.of(
          DESIGNATION,
          IMPULSE_CLASS,
          PROPELLANT,
          DIAMETER,
          LENGTH,
          DELAYS,
          TOTAL_IMPULSE,
          AVERAGE_THRUST,
          PEAK_THRUST,
          TIME_TO_PEAK,
          TIME_TO_SUSTAIN,
          BURN_TIME,
          TOTAL_MASS,
          PROPELLANT_MASS,
          MAX_LIFTOFF_MASS,
          CURVE,
          PROVENANCE);

  public String designation() {
    return facts.get(DESIGNATION).orElse("?");
  }

  public List<String> delays() {
    return facts.get(DELAYS).orElse(List.of());
  }

  public Optional<Length> diameter() {
    return facts.get(DIAMETER);
  }

  /** How it meets a mount; where either width is not known nothing speaks against it. */
  public Fit fit(Optional<Length> mount) {
    if (mount.isEmpty() || diameter().isEmpty()) {
      return Fit.SNUG;
    }
    double over = diameter().get().metres() - mount.get().metres();
    if (over > PLAY.metres()) {
      return Fit.TOO_WIDE;
    }
    return over < -2 * PLAY.metres() ? Fit.WITH_ADAPTER : Fit.SNUG;
  }

  public Optional<Impulse> totalImpulse() {
    return facts.get(TOTAL_IMPULSE);
  }

  public Optional<TimeSpan> burnTime() {
    return facts.get(BURN_TIME);
  }

  public Optional<Mass> totalMass() {
    return facts.get(TOTAL_MASS);
  }

  public Optional<Mass> propellantMass() {
    return facts.get(PROPELLANT_MASS);
  }

  /** True where it is told to burn composite propellant and not black powder. */
  public boolean isComposite() {
    return facts
        .get(PROPELLANT)
        .filter(it -> it.toLowerCase(Locale.ROOT).contains("composite"))
        .isPresent();
  }

  public String provenance() {
    return facts.get(PROVENANCE).orElse("provenance not stated");
  }

  /** The largest lift-off mass with that delay, absent when unknown. */
  public Optional<Mass> maxLiftoffMass(String delay) {
    return facts.get(MAX_LIFTOFF_MASS).orElse(List.of()).stream()
        .filter(limit -> limit.delay().equals(delay) || limit.delay().equals(EVERY_DELAY))
        .map(MassLimit::mass)
        .findFirst();
  }

  /** The full designation with a delay, as on the box: C6-5. */
  public String withDelay(String delay) {
    return designation() + "-" + delay;
  }
}
