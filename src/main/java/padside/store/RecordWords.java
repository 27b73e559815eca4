package padside.store;

import java.sql.SQLException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Rocket;

/** What a record is called in a sentence: {@code flight card of Lamplighter, 17 Oct 2026}. */
final class RecordWords {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  private static final Pattern CHANGED =
      Pattern.compile("\"k\":\"([a-z]{1,20})\",\"e\":\"([0-9a-f]{20}[0-9.]{2,26})\"");

  /** Records named in one sentence. */
  private static final int SEVERAL = 3;

  private final Database database;
  private final Records records;

  RecordWords(Database database) {
    this.database = database;
    this.records = new Records(database);
  }

  /** A line that cannot be read: what it is about, where that can be told, and where it stands. */
  String of(BadLine line) throws SQLException {
    String records = changedBy(line.text());
    return (records.isEmpty() ? "a line" : "a line about " + records) + " in " + line.place();
  }

  /** The records a line changes, as far as its text can still be read; empty when none can. */
  private String changedBy(String text) throws SQLException {
    Set<String> names = new LinkedHashSet<>();
    for (Matcher change = CHANGED.matcher(text); change.find(); ) {
      names.add(of(change.group(2), change.group(1)));
    }
    return joined(names);
  }

  /** Records by id. */
  String of(List<String> ids) throws SQLException {
    Set<String> names = new LinkedHashSet<>();
    for (String id : ids) {
      names.add(
          of(
              id,
              database
                  .first(row -> row.getString(1), "SELECT kind FROM record WHERE name = ?1", id)
                  .orElse("record")));
    }
    return joined(names);
  }

  private static String joined(Set<String> names) {
    List<String> some = names.stream().limit(SEVERAL).toList();
    String words = String.join("; ", some);
    return names.size() > SEVERAL ? words + " and " + (names.size() - SEVERAL) + " more" : words;
  }

  private String of(String id, String code) throws SQLException {
    Optional<Kind> kind = Kind.find(code);
    if (kind.isEmpty()) {
      return code + " " + id;
    }
    Optional<Facts> facts = records.find(kind.get(), new RecordId(id)).map(FlightLog.Stored::facts);
    if (kind.get() == Kind.FLIGHT) {
      return facts.isEmpty() ? "a flight card" : flight(new Flight(new RecordId(id), facts.get()));
    }
    return kind.get().code() + " " + facts.flatMap(known -> name(kind.get(), known)).orElse(id);
  }

  private String flight(Flight flight) throws SQLException {
    String rocket = named(Kind.ROCKET, flight.rocket()).orElse("a rocket without a name");
    Optional<LocalDate> date = Optional.empty();
    if (flight.day().isPresent()) {
      date =
          records
              .find(Kind.DAY, flight.day().get())
              .flatMap(day -> new Day(day.id(), day.facts()).date());
    }
    return "flight card of " + rocket + date.map(day -> ", " + DATE.format(day)).orElse("");
  }

  private Optional<String> named(Kind kind, Optional<RecordId> id) throws SQLException {
    return id.isEmpty()
        ? Optional.empty()
        : records.find(kind, id.get()).flatMap(found -> found.facts().get(Rocket.NAME));
  }

  /** What stands in the first of its fields that holds anything to read. */
  private static Optional<String> name(Kind kind, Facts facts) {
    return kind.columns().stream()
        .filter(column -> column.storage() != Column.Storage.REFERENCE)
        .flatMap(column -> Stream.ofNullable(facts.cells().get(column.name())))
        .flatMap(cell -> cell.typed().or(() -> cell.value().map(String::valueOf)).stream())
        .filter(text -> !text.isBlank())
        .findFirst();
  }
}
