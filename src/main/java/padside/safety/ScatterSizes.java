package padside.safety;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.DoubleFunction;
import padside.units.Angle;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/**
 * How far one flight differs from the next, from {@code data/rules/scatter.json}: one standard
 * deviation each, all of them needed.
 *
 * @param impulseShare of the motor's total impulse
 * @param dragShare of the rocket's drag coefficient
 * @param dragCoefficientShare how far the drag of a rocket is unknown that no altitude was measured
 *     of, of its logarithm
 * @param altimeter how far the reading of an altimeter is off
 * @param sightedShare how far an altitude is off that no altimeter read
 * @param oddShare of how many altitudes of one something is wrong
 * @param canopyDragShare of the recovery device's drag coefficient
 * @param delayShare of the delay on the label
 * @param leastDelay for delays whose share is less than this
 * @param windShare of the wind as it was read, over the whole flight
 * @param windDirection over the whole flight
 * @param gustDeviations how many standard deviations the gust stands above the mean wind
 * @param rodTilt in each of two axes across the rod
 */
public record ScatterSizes(
    String title,
    Sourced<Double> impulseShare,
    Sourced<Double> dragShare,
    Sourced<Double> dragCoefficientShare,
    AltimeterError altimeter,
    Sourced<Double> sightedShare,
    Sourced<Double> oddShare,
    Sourced<Double> canopyDragShare,
    Sourced<Double> delayShare,
    Sourced<TimeSpan> leastDelay,
    Sourced<Double> windShare,
    Sourced<Angle> windDirection,
    Sourced<Double> gustDeviations,
    Sourced<Angle> rodTilt) {

  /** A share of the reading, and the least it is. */
  public record AltimeterError(Sourced<Double> share, Sourced<Length> least) {}

  static ScatterSizes of(RuleSet rules) {
    return new ScatterSizes(
        rules.title(),
        rules.needed(Figure.IMPULSE_SCATTER_SHARE),
        rules.needed(Figure.DRAG_SCATTER_SHARE),
        rules.needed(Figure.DRAG_COEFFICIENT_SHARE),
        new AltimeterError(
            rules.needed(Figure.ALTIMETER_ERROR_SHARE),
            rules.needed(Figure.LEAST_ALTIMETER_ERROR_M).map(Length::new)),
        rules.needed(Figure.SIGHTED_ALTITUDE_ERROR_SHARE),
        rules.needed(Figure.ODD_ALTITUDE_SHARE),
        rules.needed(Figure.CANOPY_DRAG_SCATTER_SHARE),
        rules.needed(Figure.DELAY_SCATTER_SHARE),
        rules.needed(Figure.LEAST_DELAY_SCATTER_S).map(TimeSpan::new),
        rules.needed(Figure.WIND_SCATTER_SHARE),
        rules.needed(Figure.WIND_DIRECTION_SCATTER_DEG).map(Angle::ofDegrees),
        rules.needed(Figure.GUST_DEVIATIONS),
        rules.needed(Figure.ROD_TILT_SCATTER_DEG).map(Angle::ofDegrees));
  }

  /** Each size in words, such as {@code total impulse 5 %}, with where it comes from. */
  public List<Sourced<String>> told() {
    DoubleFunction<String> plain =
        value -> BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return List.of(
        impulseShare.map(share -> "total impulse " + Shown.percent(share)),
        dragShare.map(share -> "drag of the rocket " + Shown.percent(share)),
        dragCoefficientShare.map(share -> "drag before an altitude " + Shown.percent(share)),
        altimeter.share.map(
            share ->
                "altimeter %s, at least %s"
                    .formatted(
                        Shown.percent(share),
                        Notations.altitude(UnitSystem.METRIC).show(altimeter.least.value()))),
        sightedShare.map(share -> "altitude without altimeter " + Shown.percent(share)),
        oddShare.map(share -> "altitudes noted wrong " + Shown.percent(share)),
        canopyDragShare.map(share -> "drag of the recovery " + Shown.percent(share)),
        delayShare.map(
            share ->
                "delay %s, at least %s"
                    .formatted(
                        Shown.percent(share), Notations.timeSpan().show(leastDelay.value()))),
        windShare.map(share -> "wind " + Shown.percent(share)),
        windDirection.map(angle -> "wind direction " + Notations.angle().show(angle)),
        gustDeviations.map(
            times -> "gust " + plain.apply(times) + " standard deviations above the mean wind"),
        rodTilt.map(angle -> "rod " + Notations.angle().show(angle)));
  }
}
