package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.store.LogFolder;

/** Every text typed into one log, and which of them the screen said were kept. */
final class TypedTexts {
  /** By field, whatever the kind: a card takes its wind over from the last reading. */
  private final Map<String, Set<String>> tried = new HashMap<>();

  private final List<Promise> promises = new ArrayList<>();

  /** Of the records that are filled again and again, by their forms. */
  private final Map<String, Promise> again = new HashMap<>();

  private int acknowledged;

  /**
   * The fields of one record that were said to be kept: for each the text, and those typed into it
   * since, any of which may have taken its place.
   */
  private record Promise(Kind kind, Map<String, List<String>> fields) {
    boolean isHeldBy(Stored record) {
      return fields.entrySet().stream()
          .allMatch(
              field ->
                  typed(record.facts(), field.getKey())
                      .filter(text -> isOneOf(field.getValue(), text))
                      .isPresent());
    }

    private static boolean isOneOf(List<String> texts, String found) {
      return texts.get(0).equals(found)
          || texts.stream().skip(1).anyMatch(later -> later.startsWith(found));
    }
  }

  /** One form that is being filled. */
  final class Filling {
    private final Promise promise;

    private Filling(Promise promise) {
      this.promise = promise;
    }

    /** A text is about to be typed. */
    void trying(String field, String text) {
      tried.computeIfAbsent(field, any -> new HashSet<>()).add(text);
      promise.fields().computeIfPresent(field, (any, texts) -> with(texts, text));
    }

    /** The screen said that these were kept. */
    void kept(Map<String, String> fields) {
      fields.forEach(
          (field, text) -> {
            List<String> before = promise.fields().put(field, List.of(text));
            acknowledged += before == null || !before.get(0).equals(text) ? 1 : 0;
          });
    }
  }

  private static List<String> with(List<String> texts, String text) {
    List<String> more = new ArrayList<>(texts);
    more.add(text);
    return more;
  }

  /** A form over a record of its own. */
  Filling ofNew(Kind kind) {
    promises.add(new Promise(kind, new LinkedHashMap<>()));
    return new Filling(promises.get(promises.size() - 1));
  }

  /** A form over the one record of that kind that is filled again and again. */
  Filling again(Kind kind, String mark) {
    Promise one =
        again.computeIfAbsent(
            kind + " " + mark,
            any -> {
              Promise first = new Promise(kind, new LinkedHashMap<>());
              promises.add(first);
              return first;
            });
    return new Filling(one);
  }

  /** How often a field was said to be kept. */
  int acknowledged() {
    return acknowledged;
  }

  /** Whatever was said to be kept is in the log, and nothing that was not typed. */
  void areIn(LogFolder log, String when) throws Fault {
    for (Kind kind : List.of(Kind.FLIGHT, Kind.WEATHER, Kind.DAY)) {
      List<Stored> records = log.list(kind);
      for (Promise promise : promises) {
        if (promise.kind() == kind && !promise.fields().isEmpty()) {
          assertThat(records).as("%s: lost %s", when, promise).anyMatch(promise::isHeldBy);
        }
      }
      records.forEach(record -> wereTyped(record, when));
    }
  }

  private void wereTyped(Stored record, String when) {
    record
        .facts()
        .cells()
        .forEach(
            (field, cell) -> {
              Set<String> texts = tried.getOrDefault(field, Set.of());
              if (!texts.isEmpty() && cell.typed().isPresent()) {
                String found = cell.typed().get();
                assertThat(texts)
                    .as("%s: %s of %s is %s", when, field, record.id(), found)
                    .anyMatch(text -> text.startsWith(found));
              }
            });
  }

  private static Optional<String> typed(Facts facts, String field) {
    return Optional.ofNullable(facts.cells().get(field)).flatMap(Facts.Cell::typed);
  }
}
