package padside.trace;

import padside.units.Length;

/**
 * Where in a file one flight is.
 *
 * @param first number of its first sample, from 0, some time before the lift-off
 * @param end number of the sample after its last, some time after the touchdown
 * @param startS when it left the ground, about, by the file's time
 * @param heightM how high above the ground it went, about
 */
public record Stretch(long first, long end, double startS, double heightM) {
  long samples() {
    return end - first;
  }

  /** How high above the ground it went, about. */
  public Length height() {
    return new Length(heightM);
  }
}
