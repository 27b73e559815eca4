package padside.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.plan.Packing;
import padside.plan.Plan;
import padside.plan.Taken;
import padside.preflight.Answer;
import padside.screen.PlanText;

/** A plan and its packing list as JSON. */
record PlanJson(Plan plan, Packing packing, Map<RecordId, Answer> answers, Logbook book) {
  /** What there is to tell without a day. */
  static Map<String, Object> nothing() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("date", null);
    json.put("field_name", null);
    json.put("flights", List.of());
    json.put("packing", List.of());
    return json;
  }

  Map<String, Object> whole() {
    Map<String, Object> json = nothing();
    Day day = plan.day();
    json.put("date", day.date().map(Object::toString).orElse(null));
    json.put("field_name", day.field().flatMap(book::field).map(Field::name).orElse(null));
    json.put("flights", flights());
    json.put("packing", packing.items().stream().map(this::item).toList());
    return json;
  }

  private List<Map<String, Object>> flights() {
    List<Map<String, Object>> flights = new ArrayList<>();
    plan.lines().forEach(line -> flights.add(flight(line, flights.size() + 1)));
    return flights;
  }

  private Map<String, Object> flight(Plan.Line line, int number) {
    Flight flight = line.flight();
    Optional<Answer> answer = Optional.ofNullable(answers.get(flight.id()));
    Optional<Ruling> ruling = answer.map(Answer::ruling);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", flight.id().text());
    json.put("number", number);
    json.put("rocket_name", line.rocket().map(Rocket::name).orElse(null));
    json.put("motor", flight.motor().orElse(null));
    json.put("recovery_name", PlanText.recovery(flight, book).orElse(null));
    json.put("altimeter_name", PlanText.altimeter(flight, book).orElse(null));
    json.put("still_air_verdict", ruling.map(each -> each.verdict().word()).orElse(null));
    json.put(
        "limit_mps",
        ruling.flatMap(Ruling::limit).map(limit -> limit.metresPerSecond()).orElse(null));
    json.put("to_see_to", PlanText.amiss(line, answer));
    json.put("motors", line.motors().stream().map(PlanJson::motors).toList());
    return json;
  }

  private static Map<String, Object> motors(Taken taken) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("motor", taken.motor());
    json.put("count", taken.count());
    json.put("short", taken.lacking());
    json.put("lots", taken.draws().stream().map(draw -> draw.lot().code()).toList());
    return json;
  }

  private Map<String, Object> item(Packing.Item item) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("key", item.key());
    json.put("group", item.group().name().toLowerCase(java.util.Locale.ROOT));
    json.put("what", item.what());
    json.put("count", item.count() == 0 ? 1 : item.count());
    json.put("place", item.where());
    json.put("note", item.note());
    json.put("short", item.lacking());
    json.put("packed", packing.isPacked(item));
    return json;
  }
}
