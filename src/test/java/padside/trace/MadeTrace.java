package padside.trace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import padside.physics.Air;
import padside.physics.Airframe;
import padside.physics.CanopyDrag;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Motor;
import padside.physics.Prediction;
import padside.physics.Rod;
import padside.physics.Stage;
import padside.physics.ThrustCurve;
import padside.physics.TrackPoint;
import padside.physics.WindProfile;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/**
 * A flight whose truth is known, flown by the program's own physics, and what an altimeter would
 * write down of it: noise, drift, a spike at the charge, samples left out, rounding.
 */
final class MadeTrace {
  private static final double STEP_S = 0.002;

  final Prediction truth;
  private final List<TrackPoint> track;

  /** What the altimeter does to the heights. */
  record Faults(
      double rate,
      double noiseM,
      double driftMps,
      double spikeM,
      double lostShare,
      double roundedM) {
    static Faults none(double rate) {
      return new Faults(rate, 0, 0, 0, 0, 0);
    }
  }

  /** Samples, times from the altimeter's start, {@link #PAD_S} before ignition. */
  record Written(List<double[]> samples, double ignition) {
    Path to(Path folder) {
      return to(folder, "time_s,altitude_m", h -> h);
    }

    /** As pressures over a pad of that pressure and temperature, by the formula of the tables. */
    Path asPressures(Path folder, double padPa, double padK) {
      return to(
          folder, "time s,pressure Pa", h -> padPa * Math.pow(1 - 0.0065 * h / padK, 5.2558798));
    }

    private Path to(Path folder, String header, java.util.function.DoubleUnaryOperator level) {
      StringBuilder text = new StringBuilder(header).append('\n');
      for (double[] each : samples) {
        text.append(
            String.format(Locale.ROOT, "%.3f,%.3f%n", each[0], level.applyAsDouble(each[1])));
      }
      try {
        return Files.writeString(folder.resolve("made.csv"), text);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  static final double PAD_S = 12;
  private static final double AFTER_S = 25;

  private MadeTrace(Launch launch) {
    truth = Flight.predict(launch);
    track = Flight.track(launch, new TimeSpan(STEP_S));
  }

  /**
   * A model rocket of 60 to 250 g on a motor of 8 to 40 N·s, its charge up to 2 s off the apogee.
   */
  static MadeTrace drawn(Random random) {
    double kg = 0.05 + 0.2 * random.nextDouble();
    double burn = 0.8 + random.nextDouble();
    double impulse = Math.max(8, kg * (90 + 60 * random.nextDouble()));
    double diameter = 0.025 + 0.03 * random.nextDouble();
    double off = -1 + 3 * random.nextDouble();
    Launch free = launch(kg, burn, impulse, diameter, Optional.empty());
    double best = Flight.predict(free).bestDelay().seconds();
    double delay = Math.max(0.5, best + off);
    return new MadeTrace(launch(kg, burn, impulse, diameter, Optional.of(new TimeSpan(delay))));
  }

  private static Launch launch(
      double kg, double burn, double impulse, double diameter, Optional<TimeSpan> delay) {
    double peak = 1.8 * impulse / burn;
    ThrustCurve curve =
        ThrustCurve.of(
            new Impulse(impulse),
            new TimeSpan(burn),
            Optional.of(
                new ThrustCurve.Peak(
                    new Force(peak), new TimeSpan(burn * 0.12), new TimeSpan(burn * 0.18))));
    Motor motor = new Motor(curve, new Mass(impulse / 370), new Mass(impulse / 800));
    Speed wind = new Speed(2);
    return new Launch(
        new Airframe(new Mass(kg), new Length(diameter), 0.7),
        List.of(Stage.of(motor)),
        new Rod(new Length(0.9), Angle.ofDegrees(2), new Bearing(240)),
        Air.standardAt(new Length(0)),
        WindProfile.of(new Wind(wind, wind, Optional.of(new Bearing(240)))),
        delay,
        Optional.of(CanopyDrag.parachute(new Length(0.2 + 1.6 * Math.sqrt(kg) * 0.5), 0.75)),
        List.of());
  }

  double ejectionS() {
    return truth.ejection().orElseThrow().time().seconds();
  }

  /** Highest point of the flight as flown, the charge included. */
  double highestM() {
    return track.stream().mapToDouble(p -> p.height().metres()).max().orElseThrow();
  }

  private double heightAt(double sinceIgnition) {
    int i = (int) Math.floor(sinceIgnition / STEP_S);
    if (sinceIgnition <= 0 || i + 1 >= track.size()) {
      return 0;
    }
    double share = sinceIgnition / STEP_S - i;
    return (1 - share) * track.get(i).height().metres()
        + share * track.get(i + 1).height().metres();
  }

  /** When it left the pad: half a metre up by its push is some hundredths later. */
  double liftOffS() {
    for (TrackPoint point : track) {
      if (point.height().metres() > 0.01) {
        return point.time().seconds();
      }
    }
    throw new AssertionError("it never left");
  }

  Written written(Faults faults, Random random) {
    List<double[]> samples = new ArrayList<>();
    double phase = random.nextDouble() / faults.rate;
    double end = PAD_S + truth.flightTime().seconds() + AFTER_S;
    for (long n = 0; n / faults.rate + phase < end; n++) {
      double at = n / faults.rate + phase;
      double since = at - PAD_S;
      double after = since - ejectionS();
      // The charge presses on the sensor: it reads lower for a moment.
      double spike = after >= 0 ? -faults.spikeM * Math.exp(-after / 0.12) : 0;
      double height =
          heightAt(since) + spike + faults.driftMps * at + faults.noiseM * random.nextGaussian();
      double shown =
          faults.roundedM > 0 ? Math.rint(height / faults.roundedM) * faults.roundedM : height;
      if (random.nextDouble() >= faults.lostShare) {
        samples.add(new double[] {at, shown});
      }
    }
    return new Written(samples, PAD_S);
  }
}
