package padside.trace;

import java.util.List;
import java.util.Optional;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * What happened in one flight of a file. Heights are above the ground it left, times from lift-off.
 *
 * @param source of which file
 * @param startS lift-off by the file's own time
 * @param apogee the highest point
 * @param apogeeTime when
 * @param ejection when the charge fired
 * @param spike whether the charge shows as a spike of pressure, not only as a bend
 * @param descents the way down in one piece or two, in order; empty where it is not to be had
 * @param touchdown when it came down
 * @param fastest the fastest climb
 * @param warmed where heights are reckoned in standard air: the apogee in the air of the day; where
 *     they are reckoned in the air of the day: what a standard altimeter would show
 * @param noise of one sample, one standard deviation
 * @param told how the file was read and what is to be known of what was found
 * @param kept the thinned line
 */
public record TraceFinding(
    Source source,
    double startS,
    Found<Length> apogee,
    Found<TimeSpan> apogeeTime,
    Found<TimeSpan> ejection,
    boolean spike,
    List<Rate> descents,
    Found<TimeSpan> touchdown,
    Found<Speed> fastest,
    Optional<Length> warmed,
    Length noise,
    List<String> told,
    KeptTrace kept) {

  /**
   * Where the samples are from.
   *
   * @param pressures whether it holds pressures, else heights
   * @param interval the usual time from one sample to the next
   */
  public record Source(String name, boolean pressures, int samples, TimeSpan interval) {}

  /** One piece of the way down. */
  public record Rate(TimeSpan from, TimeSpan to, Speed rate, Speed within) {}

  public TraceFinding {
    descents = List.copyOf(descents);
    told = List.copyOf(told);
  }

  static TraceFinding of(TraceFile file, Samples samples, TraceAir air) {
    return new TraceSearch(file, samples, air).finding();
  }
}
