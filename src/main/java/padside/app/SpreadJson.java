package padside.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.insight.Confidence;
import padside.preflight.Spread;

/** Where flights like one come to, as JSON: SI, units in the names, east and north from the pad. */
final class SpreadJson {
  private SpreadJson() {}

  static Map<String, Object> of(Spread spread, Confidence confidence) {
    String most = "_" + confidence.percent();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("flights", spread.flights());
    json.put("landing_50", area(spread.landingHalf()));
    json.put("landing" + most, area(spread.landingMost()));
    json.put("apogee_50", area(spread.apogeeHalf()));
    json.put("apogee" + most, area(spread.apogeeMost()));
    json.put("inside_share", spread.inside().orElse(null));
    json.put("past", past(spread.past()));
    return json;
  }

  private static Map<String, Object> area(Spread.Area area) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("east_m", area.east().metres());
    json.put("north_m", area.north().metres());
    json.put("long_half_m", area.longHalf().metres());
    json.put("short_half_m", area.shortHalf().metres());
    json.put("along_deg", area.along().degrees());
    return json;
  }

  private static List<Map<String, Object>> past(List<Spread.Past> lost) {
    return lost.stream()
        .map(
            past -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("words", past.words());
              row.put("share", past.share());
              return row;
            })
        .toList();
  }
}
