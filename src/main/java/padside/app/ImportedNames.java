package padside.app;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;

/** What rows refer to by name: records of the log, whatever their case, or new ones to be made. */
final class ImportedNames {
  private final Logbook book;
  private final Map<String, String> known = new HashMap<>();
  private final Map<String, NewRecord> fresh = new LinkedHashMap<>();

  /**
   * One the log lacks.
   *
   * @param name as the first row that speaks of it has it
   */
  record NewRecord(Kind kind, String name, Facts facts) {}

  ImportedNames(Logbook book) {
    this.book = book;
    book.rockets().forEach(each -> know(Kind.ROCKET, each.name(), each.id()));
    book.devices().forEach(each -> know(Kind.DEVICE, each.name(), each.id()));
    book.altimeters()
        .forEach(
            each ->
                each.facts()
                    .get(Altimeter.NAME)
                    .ifPresent(name -> know(Kind.ALTIMETER, name, each.id())));
    book.fields().forEach(each -> know(Kind.FIELD, each.name(), each.id()));
    book.lots().forEach(each -> know(Kind.LOT, each.motor() + " " + each.code(), each.id()));
  }

  private void know(Kind kind, String name, RecordId id) {
    known.putIfAbsent(key(kind, name), id.text());
  }

  private static String key(Kind kind, String name) {
    return kind.code() + ": " + name.strip().toLowerCase(Locale.ROOT);
  }

  String rocket(String name) {
    return of(Kind.ROCKET, name, Facts.none().with(Rocket.NAME, name));
  }

  String device(String name) {
    return of(Kind.DEVICE, name, Facts.none().with(RecoveryDevice.NAME, name));
  }

  String altimeter(String name) {
    return of(Kind.ALTIMETER, name, Facts.none().with(Altimeter.NAME, name));
  }

  String lot(String motor, String code) {
    return of(
        Kind.LOT, motor + " " + code, Facts.none().with(Lot.MOTOR, motor).with(Lot.CODE, code));
  }

  /** The day of that date; where a field is named, at that field. */
  String day(LocalDate date, String field) {
    Optional<String> at =
        field.isBlank()
            ? Optional.empty()
            : Optional.of(of(Kind.FIELD, field, Facts.none().with(Field.NAME, field)));
    Optional<String> there =
        book.days().stream()
            .filter(day -> day.date().equals(Optional.of(date)))
            .filter(day -> at.isEmpty() || day.field().map(RecordId::text).equals(at))
            .map(day -> day.id().text())
            .findFirst();
    Facts facts = Facts.none().with(Day.DATE, date).with(Day.FIELD, at.map(RecordId::new));
    return there.orElseGet(
        () -> of(Kind.DAY, date + (field.isBlank() ? "" : " at " + field), facts));
  }

  private String of(Kind kind, String name, Facts facts) {
    String key = key(kind, name);
    if (known.containsKey(key)) {
      return known.get(key);
    }
    fresh.putIfAbsent(key, new NewRecord(kind, name, facts));
    return key;
  }

  /** Those that rows speak of, by the names that other records refer to them by. */
  Map<String, NewRecord> fresh() {
    return fresh;
  }
}
