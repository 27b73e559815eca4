package padside.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Pressure;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.TimeSpan;
import padside.units.Wind;

/**
 * One rocket, its motors and wind in plain SI numbers and degrees, which the reference flies from
 * the numbers and the program from the {@link Launch} built of them.
 */
record Trial(
    double rocketKg,
    double diameterM,
    double cd,
    List<Lit> stages,
    double rodM,
    double tiltDeg,
    double tiltTowardDeg,
    double padK,
    double padPa,
    double windMps,
    double windFromDeg,
    double readingHeightM,
    double delayS,
    double chuteM,
    double chuteCd) {

  /** Equal motors of one stage: the curve of one, masses of one, what drops with their cases. */
  record Lit(
      List<Double> curveS,
      List<Double> curveN,
      double motorKg,
      double propellantKg,
      int count,
      double droppedKg) {
    double burnS() {
      return curveS.get(curveS.size() - 1);
    }

    /** Of one motor. */
    double impulseNs() {
      double sum = 0;
      for (int i = 1; i < curveS.size(); i++) {
        sum += (curveS.get(i) - curveS.get(i - 1)) * (curveN.get(i) + curveN.get(i - 1)) / 2;
      }
      return sum;
    }

    Stage stage() {
      List<ThrustCurve.Point> points = new ArrayList<>();
      for (int i = 0; i < curveS.size(); i++) {
        points.add(ThrustCurve.Point.of(curveS.get(i), curveN.get(i)));
      }
      ThrustCurve curve = ThrustCurve.ofPoints(points);
      Motor motor = new Motor(curve, new Mass(motorKg), new Mass(propellantKg));
      return new Stage(motor, count, new Mass(droppedKg));
    }
  }

  /** A rocket of an A to F motor that leaves its rod, everything else anywhere in its range. */
  static Trial random(Random random) {
    double impulse = 2 * Math.pow(40, random.nextDouble());
    double burn = between(random, 0.5, 3);
    double toPeak = 0.12 * burn;
    double toSustain = 0.2 * burn;
    double level = impulse / burn;
    double peak = between(random, 1.5, 4) * level;
    double sustained = (impulse - peak * toSustain / 2) / (burn - toPeak / 2 - toSustain / 2);
    double propellant = impulse / between(random, 700, 1900);
    double liftoff = peak / 9.80665 / between(random, 8, 40);
    double motor = Math.min(2.2 * propellant, 0.6 * liftoff);
    return new Trial(
        liftoff - motor,
        between(random, 0.018, 0.06),
        between(random, 0.4, 1.1),
        List.of(
            new Lit(
                List.of(0.0, toPeak, toSustain, burn),
                List.of(0.0, peak, sustained, sustained),
                motor,
                Math.min(propellant, 0.8 * motor),
                1,
                0)),
        between(random, 0.6, 2.5),
        between(random, 0, 12),
        between(random, 0, 360),
        between(random, 263, 308),
        between(random, 80000, 103000),
        random.nextInt(6) == 0 ? 0 : between(random, 0.5, 9),
        between(random, 0, 360),
        random.nextInt(4) == 0 ? 10 : 2,
        2 + random.nextInt(7),
        random.nextInt(5) == 0 ? 0 : Math.sqrt(liftoff) * between(random, 0.6, 1.8),
        between(random, 0.5, 0.9));
  }

  /** The same rocket as the upper stage of two on a random cluster of up to four motors. */
  static Trial stacked(Random random) {
    Trial upper = random(random);
    Lit above = upper.stages.get(0);
    double impulse = between(random, 0.5, 1.5) * above.impulseNs();
    double burn = between(random, 0.4, 1.2);
    double propellant = impulse / between(random, 700, 1900);
    double booster = between(random, 0.1, 0.4) * upper.rocketKg;
    int count = 1 + random.nextInt(4);
    double liftoff = upper.liftoffKg() + booster + 2 * propellant;
    double peak = liftoff * 9.80665 * between(random, 5, 15);
    double sustained = Math.max(0.3 * peak, impulse / burn);
    Lit below =
        new Lit(
            List.of(0.0, 0.1 * burn, 0.25 * burn, burn),
            List.of(0.0, peak / count, sustained / count, sustained / count),
            2 * propellant / count,
            propellant / count,
            count,
            booster);
    return upper.on(List.of(below, above));
  }

  /** The same in another wind under a canopy that falls at this speed in the air at the pad. */
  Trial fallingAt(double fallMps, double windMps) {
    Lit last = stages.get(stages.size() - 1);
    double dropped = stages.stream().mapToDouble(Lit::droppedKg).sum();
    double kg = rocketKg - dropped + last.count() * (last.motorKg() - last.propellantKg());
    double areaM2 = 2 * kg * 9.80665 / (padPa / (287.05287 * padK) * chuteCd * fallMps * fallMps);
    return with(rocketKg, stages, windMps, Math.sqrt(4 * areaM2 / Math.PI));
  }

  private Trial on(List<Lit> lit) {
    double dropped = lit.stream().mapToDouble(Lit::droppedKg).sum();
    return with(rocketKg + dropped, lit, windMps, chuteM);
  }

  private Trial with(double rocketKg, List<Lit> stages, double windMps, double chuteM) {
    return new Trial(
        rocketKg,
        diameterM,
        cd,
        stages,
        rodM,
        tiltDeg,
        tiltTowardDeg,
        padK,
        padPa,
        windMps,
        windFromDeg,
        readingHeightM,
        delayS,
        chuteM,
        chuteCd);
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  double liftoffKg() {
    return rocketKg + stages.stream().mapToDouble(lit -> lit.count() * lit.motorKg()).sum();
  }

  Launch launch() {
    return launch(new Speed(windMps), new Bearing(windFromDeg), new Bearing(tiltTowardDeg));
  }

  /** The same with the wind and the rod's lean pointing elsewhere. */
  Launch launch(Speed wind, Bearing from, Bearing tiltToward) {
    Optional<CanopyDrag> chute =
        chuteM == 0
            ? Optional.empty()
            : Optional.of(CanopyDrag.parachute(new Length(chuteM), chuteCd));
    return new Launch(
        new Airframe(new Mass(rocketKg), new Length(diameterM), cd),
        stages.stream().map(Lit::stage).toList(),
        new Rod(new Length(rodM), Angle.ofDegrees(tiltDeg), tiltToward),
        Air.at(
            new Length(0),
            Optional.of(new Temperature(padK)),
            Optional.of(new Pressure(padPa)),
            OptionalDouble.empty()),
        new WindProfile(new Wind(wind, wind, Optional.of(from)), new Length(readingHeightM)),
        Optional.of(new TimeSpan(delayS)),
        chute,
        List.of(new TimeSpan(delayS), new TimeSpan(delayS / 2)));
  }
}
