package padside.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * What an altimeter would write of a body without drag: it is pushed up evenly, rises freely, falls
 * freely and comes down evenly. Heights and times follow from uniformly accelerated motion
 * (Halliday and Resnick, Fundamentals of Physics, table 2-1).
 */
final class AltimeterFile {
  private static final double G = 9.80665;
  private static final double PUSH = 20;
  private static final double PUSHED_S = 1.5;
  private static final double FALLEN_S = 1;
  private static final double DOWN_MPS = 4;
  private static final double RATE = 20;
  private static final double WAITS_S = 3;

  private static final double SPEED = PUSH * PUSHED_S;
  private static final double BURNOUT_M = PUSH * PUSHED_S * PUSHED_S / 2;

  /** From lift-off. */
  static final double APOGEE_S = PUSHED_S + SPEED / G;

  static final double APOGEE_M = BURNOUT_M + SPEED * SPEED / (2 * G);
  static final double EJECTION_S = APOGEE_S + FALLEN_S;
  private static final double EJECTION_M = APOGEE_M - G * FALLEN_S * FALLEN_S / 2;
  static final double TOUCHDOWN_S = EJECTION_S + EJECTION_M / DOWN_MPS;

  private AltimeterFile() {}

  private static double height(double t) {
    if (t < PUSHED_S) {
      return PUSH * Math.max(0, t) * Math.max(0, t) / 2;
    }
    if (t < EJECTION_S) {
      double since = t - PUSHED_S;
      return BURNOUT_M + SPEED * since - G * since * since / 2;
    }
    return Math.max(0, EJECTION_M - DOWN_MPS * (t - EJECTION_S));
  }

  /** So many such flights, one after the other. */
  static Path write(Path file, int flights) throws IOException {
    StringBuilder text = new StringBuilder("time_s,altitude_m\n");
    double length = WAITS_S + TOUCHDOWN_S + 20;
    for (int i = 0; i < flights * length * RATE; i++) {
      double now = i / RATE;
      text.append(String.format(Locale.ROOT, "%.2f,%.2f%n", now, height(now % length - WAITS_S)));
    }
    return Files.writeString(file, text);
  }
}
