package padside.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import padside.insight.Traced;
import padside.trace.Found;
import padside.trace.TraceFinding;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/** What was found in a trace as the JSON object of {@code trace --json}. */
final class TraceJson {
  private TraceJson() {}

  static Map<String, Object> of(TraceFinding trace, Traced traced) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", trace.source().name());
    json.put("crc32", String.format("%08x", trace.kept().crc32()));
    json.put("samples", trace.source().samples());
    json.put("interval_s", trace.source().interval().seconds());
    json.put("noise_m", trace.noise().metres());
    json.put("liftoff_in_file_s", trace.startS());
    json.put("apogee_m", found(trace.apogee(), Length::metres));
    json.put("apogee_time_s", found(trace.apogeeTime(), TimeSpan::seconds));
    json.put("ejection_time_s", found(trace.ejection(), TimeSpan::seconds));
    json.put("ejection_spike", trace.spike());
    json.put("measured_delay_s", found(traced.delay().found(), TimeSpan::seconds));
    json.put("touchdown_time_s", found(trace.touchdown(), TimeSpan::seconds));
    json.put("fastest_climb_mps", found(trace.fastest(), Speed::metresPerSecond));
    json.put("descents", trace.descents().stream().map(TraceJson::descent).toList());
    json.put("apogee_other_air_m", trace.warmed().map(Length::metres).orElse(null));
    json.put("told", trace.told());
    json.put("flight_says", said(traced));
    json.put("typed_by_hand", traced.standing().stream().map(column -> column.name()).toList());
    json.put("points", points(trace));
    return json;
  }

  private static <T> Map<String, Object> found(Found<T> found, Function<T, Double> si) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("value", found.value().map(si).orElse(null));
    json.put("within", found.within().map(si).orElse(null));
    json.put("why_not", found.value().isPresent() ? null : found.why());
    return json;
  }

  private static Map<String, Object> descent(TraceFinding.Rate rate) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("from_s", rate.from().seconds());
    json.put("to_s", rate.to().seconds());
    json.put("rate_mps", rate.rate().metresPerSecond());
    json.put("within_mps", rate.within().metresPerSecond());
    return json;
  }

  private static Map<String, Object> said(Traced traced) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("altitude_m", traced.altitude().said().map(Length::metres).orElse(null));
    json.put("ejection_mark_s", traced.ejection().said().map(TimeSpan::seconds).orElse(null));
    json.put("measured_delay_s", traced.delay().said().map(TimeSpan::seconds).orElse(null));
    json.put("touchdown_mark_s", traced.touchdown().said().map(TimeSpan::seconds).orElse(null));
    return json;
  }

  /** Time in seconds and height in metres of each point of the thinned line. */
  private static List<List<Double>> points(TraceFinding trace) {
    return trace.kept().points().stream()
        .map(point -> List.of(point.time().seconds(), point.height().metres()))
        .toList();
  }
}
