package padside.insight;

import java.util.List;
import java.util.function.Supplier;
import padside.fact.RecordId;
import padside.physics.Launch;
import padside.units.Length;

/**
 * How high one flight of a rocket went.
 *
 * @param motors their designation as noted, without delay
 * @param launch as it was flown: mass, motors, wind and the charge's moment of that flight; its
 *     drag coefficient is not looked at
 * @param altitude the highest point above the pad as measured
 * @param deviation one standard deviation of that measurement
 * @param others the same launch on motors that may have been meant in place of those noted; asked
 *     for only where the altitude does not fit
 */
public record Reached(
    RecordId flight,
    String motors,
    Launch launch,
    Length altitude,
    Length deviation,
    Supplier<List<OtherMotors>> others) {
  /** The launch on other motors. */
  public record OtherMotors(String designation, Launch launch) {}
}
