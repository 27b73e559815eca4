/**
 * Wind told by a meter, line by line: what a line says, and what the readings of the last minutes
 * come to.
 *
 * <p>A line is {@code wind} and a wind as a flier types it, with its unit and a bearing of three
 * digits or a compass point, which may be missing: {@code wind 4.2 m/s 270}, {@code wind 9 mph W},
 * {@code wind calm}, {@code wind 8g11 kt SW} from a meter that finds gusts itself. Or it is a
 * sentence MWV of NMEA 0183, {@code $WIMWV,270,R,4.2,M,A*3D}: angle, reference, speed, unit (K
 * km/h, M m/s, N kt), status A, checksum (exclusive or of the characters between {@code $} and
 * {@code *}). Its angle counts from the mark on the meter, so the mark has to point to true north.
 *
 * <p>Promises: any other line is no reading and breaks nothing. Means and gusts as in WMO-No. 8,
 * Guide to Instruments and Methods of Observation, volume I, chapter 5 on surface wind: the gust is
 * the highest mean over 3 s; two minutes to average over, as reports for aerodromes have it (ICAO
 * Annex 3). Times are seconds on any clock that never goes back. Refuses: clocks, files, devices,
 * to put any wind where a flier typed one.
 */
package padside.wire;
