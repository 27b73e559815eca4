package padside.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;

/** What records are called where another one refers to them. */
final class Names {
  private final Map<String, String> names = new HashMap<>();
  private final Map<RecordId, List<String>> days = new HashMap<>();

  private Names() {}

  static Names of(FlightLog log) throws Fault {
    Names names = new Names();
    for (Stored each : log.list(Kind.ROCKET)) {
      names.put(each, each.facts().get(Rocket.NAME));
    }
    for (Stored each : log.list(Kind.LOT)) {
      names.put(each, each.facts().get(Lot.CODE));
    }
    for (Stored each : log.list(Kind.DEVICE)) {
      names.put(each, each.facts().get(RecoveryDevice.NAME));
    }
    for (Stored each : log.list(Kind.ALTIMETER)) {
      names.put(each, each.facts().get(Altimeter.NAME));
    }
    for (Stored each : log.list(Kind.FIELD)) {
      names.put(each, each.facts().get(Field.NAME));
    }
    for (Stored each : log.list(Kind.DAY)) {
      names.days.put(each.id(), names.dateAndField(each.facts()));
    }
    return names;
  }

  private void put(Stored record, Optional<String> name) {
    name.ifPresent(text -> names.put(record.id().text(), text));
  }

  private List<String> dateAndField(Facts day) {
    return List.of(
        day.get(Day.DATE).map(Object::toString).orElse(""),
        day.get(Day.FIELD).map(field -> of(field.text())).orElse(""));
  }

  /** What a record is called; its id where it has no name of its own. */
  String of(String id) {
    return names.getOrDefault(id, id);
  }

  /** Date and field of a day, blank where they are not known. */
  List<String> day(Optional<RecordId> day) {
    return day.map(id -> days.getOrDefault(id, List.of("", ""))).orElse(List.of("", ""));
  }
}
