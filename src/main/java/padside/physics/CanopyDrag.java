package padside.physics;

import java.util.Locale;
import padside.units.Length;

/**
 * What slows the rocket after ejection: a drag coefficient and the area it refers to, in square
 * metres.
 */
public record CanopyDrag(double dragCoefficient, double areaM2, ReferenceArea reference) {
  /** Which area of the device its drag coefficient is measured on. */
  public enum ReferenceArea {
    /** The canopy laid flat, πd²/4 for a round one. */
    FLAT_CANOPY,
    /** One side of the streamer, width times length. */
    STREAMER_ONE_SIDE
  }

  /** Refuses what is not above zero. */
  public CanopyDrag {
    RefusedInput.unless(
        dragCoefficient > 0 && dragCoefficient < 100,
        () ->
            String.format(
                Locale.ROOT,
                "Recovery drag coefficient %.3f must be above zero; 0.75 is usual for a flat chute.",
                dragCoefficient));
    RefusedInput.unless(
        areaM2 > 0 && Double.isFinite(areaM2),
        "The recovery device has no area; give its size or leave it out.");
  }

  /** A round parachute by the diameter of its canopy laid flat, coefficient on that flat area. */
  public static CanopyDrag parachute(Length flatDiameter, double dragCoefficient) {
    double diameter = positive(flatDiameter, "Parachute diameter");
    return new CanopyDrag(
        dragCoefficient, Math.PI * diameter * diameter / 4, ReferenceArea.FLAT_CANOPY);
  }

  /** A streamer, coefficient on the area of one side. */
  public static CanopyDrag streamer(Length width, Length length, double dragCoefficient) {
    double area = positive(width, "Streamer width") * positive(length, "Streamer length");
    return new CanopyDrag(dragCoefficient, area, ReferenceArea.STREAMER_ONE_SIDE);
  }

  /** Drag coefficient times its own reference area. */
  double dragAreaM2() {
    return dragCoefficient * areaM2;
  }

  private static double positive(Length length, String name) {
    RefusedInput.unless(
        length.metres() > 0,
        () -> String.format(Locale.ROOT, "%s %.3f m must be above zero.", name, length.metres()));
    return length.metres();
  }
}
