package padside.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Rocket;

/** Days, fields and rockets by their ids: what a page of very many flights refers to. */
final class Register {
  private final Map<RecordId, Day> days = new LinkedHashMap<>();
  private final Map<RecordId, LocalDate> dates = new HashMap<>();
  private final Map<RecordId, Field> fields = new LinkedHashMap<>();
  private final Map<RecordId, Rocket> rockets = new LinkedHashMap<>();

  private Register() {}

  static Register of(FlightLog log) throws Fault {
    Register register = new Register();
    for (Stored each : log.list(Kind.DAY)) {
      Day day = new Day(each.id(), each.facts());
      register.days.put(each.id(), day);
      day.date().ifPresent(date -> register.dates.put(each.id(), date));
    }
    for (Stored each : log.list(Kind.FIELD)) {
      register.fields.put(each.id(), new Field(each.id(), each.facts()));
    }
    for (Stored each : log.list(Kind.ROCKET)) {
      register.rockets.put(each.id(), new Rocket(each.id(), each.facts()));
    }
    return register;
  }

  List<Day> days() {
    return new ArrayList<>(days.values());
  }

  List<LocalDate> dates() {
    return List.copyOf(dates.values());
  }

  Optional<LocalDate> date(Optional<RecordId> day) {
    return day.map(dates::get);
  }

  Optional<Day> day(Optional<RecordId> id) {
    return id.map(days::get);
  }

  Optional<Field> field(Optional<RecordId> day) {
    return day(day).flatMap(Day::field).map(fields::get);
  }

  List<Rocket> rockets() {
    return new ArrayList<>(rockets.values());
  }

  String rocket(Optional<RecordId> id) {
    return id.map(rockets::get).map(Rocket::name).orElse("no rocket named");
  }
}
