package padside.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog;
import padside.flight.Kind;

/**
 * Records from outside that refer to each other, kept all or none. What does not go into one line
 * of the journal is kept in several, each record marked as removed; the last line takes all marks
 * away at once. Whatever breaks off before it leaves the log showing what it showed.
 */
final class Incoming {
  /** Of the 256 kB a line may have; what is counted here is never less than what is written. */
  private static final int LARGEST_LINE = 240_000;

  /** A cell's frame in a line: kind, record, field and what it replaces. */
  private static final int FRAME = 150;

  /** A control character as JSON escapes it. */
  private static final int WIDEST = 6;

  private static final int UTF8 = 3;

  /**
   * One of them.
   *
   * @param name what others refer to it by; unlike that of any other
   */
  private record Item(String name, Kind kind, Facts facts) {}

  private final Map<String, Item> items = new LinkedHashMap<>();
  private final Map<String, RecordId> ids = new HashMap<>();

  /** Whether one of that name is among them. */
  boolean has(String name) {
    return items.containsKey(name);
  }

  /** One more; a cell that refers to another of them has that one's name. */
  void add(String name, Kind kind, Facts facts) {
    items.put(name, new Item(name, kind, facts));
  }

  int count() {
    return items.size();
  }

  /** Keeps them; by name the records they became. */
  Map<String, RecordId> save(FlightLog log, String label) throws Fault {
    checkSizes();
    List<List<Item>> lines = lines();
    boolean several = lines.size() > 1;
    for (List<Item> line : lines) {
      List<RecordId> kept =
          log.save(new Action(label, line.stream().map(item -> change(item, several)).toList()));
      for (int i = 0; i < kept.size(); i++) {
        ids.put(line.get(i).name, kept.get(i));
      }
    }
    if (several) {
      log.save(new Action(label, items.values().stream().map(this::shown).toList()));
    }
    return Map.copyOf(ids);
  }

  /** So that each refers only to earlier lines, and none is too long. */
  private List<List<Item>> lines() throws Fault {
    Map<String, Item> waiting = new LinkedHashMap<>(items);
    List<List<Item>> lines = new ArrayList<>();
    while (!waiting.isEmpty()) {
      List<Item> line = line(waiting);
      if (line.isEmpty()) {
        Kind kind = waiting.values().iterator().next().kind;
        throw new Fault(
            "incoming-circle",
            "Some records refer to each other in a circle, a " + kind.code() + " among them.",
            "Nothing was added; take one of the references out.");
      }
      line.forEach(item -> waiting.remove(item.name));
      lines.add(line);
    }
    return lines;
  }

  private static List<Item> line(Map<String, Item> waiting) {
    List<Item> line = new ArrayList<>();
    int size = 0;
    for (Item item : waiting.values()) {
      if (references(item.facts, item.kind).stream().noneMatch(waiting::containsKey)) {
        size += size(item.facts);
        if (size > LARGEST_LINE) {
          return line;
        }
        line.add(item);
      }
    }
    return line;
  }

  private Action.Change change(Item item, boolean marked) {
    Facts facts = referring(item);
    return new Action.Change(
        item.kind, Optional.empty(), marked ? facts.with(Kind.REMOVED, true) : facts);
  }

  /** Without its mark, and with lists that name others by the records these became. */
  private Action.Change shown(Item item) {
    Facts facts = Facts.none().with(Kind.REMOVED.name(), Facts.Cell.emptied());
    for (Map.Entry<String, Facts.Cell> cell : item.facts.cells().entrySet()) {
      if (cell.getValue().value().orElse("") instanceof List<?> list) {
        List<?> renamed = list.stream().map(this::renamed).toList();
        facts = renamed.equals(list) ? facts : facts.with(cell.getKey(), Facts.Cell.of(renamed));
      }
    }
    return new Action.Change(item.kind, Optional.of(ids.get(item.name)), facts);
  }

  /** The key of a packing or checklist line: a record alone, behind a word, or before a count. */
  private Object renamed(Object value) {
    if (!(value instanceof String key)) {
      return value;
    }
    int word = key.indexOf('.') + 1;
    int count = key.lastIndexOf('.');
    if (key.startsWith(Kind.LOT.code() + ".") && count > word) {
      return key.substring(0, word) + id(key.substring(word, count)) + key.substring(count);
    }
    return ids.containsKey(key) ? id(key) : key.substring(0, word) + id(key.substring(word));
  }

  private String id(String name) {
    return ids.containsKey(name) ? ids.get(name).text() : name;
  }

  private Facts referring(Item item) {
    Facts facts = item.facts;
    for (String field : referenceFields(item.facts, item.kind)) {
      Facts.Cell cell = item.facts.cells().get(field);
      Optional<Object> id = cell.value().map(name -> id(name.toString()));
      facts = facts.with(field, new Facts.Cell(id, cell.typed()));
    }
    return facts;
  }

  private static Set<String> references(Facts facts, Kind kind) {
    Set<String> names = new HashSet<>();
    for (String field : referenceFields(facts, kind)) {
      facts.cells().get(field).value().ifPresent(name -> names.add(name.toString()));
    }
    return names;
  }

  private static List<String> referenceFields(Facts facts, Kind kind) {
    return kind.columns().stream()
        .filter(column -> column.storage() == Column.Storage.REFERENCE)
        .<String>map(Column::name)
        .filter(facts.cells()::containsKey)
        .toList();
  }

  /** Told before anything is kept. */
  private void checkSizes() throws Fault {
    int unmarking = 0;
    for (Item item : items.values()) {
      if (size(item.facts) > LARGEST_LINE) {
        throw new Fault(
            "incoming-size",
            "A " + item.kind.code() + " is larger than the log can keep.",
            "Nothing was added; shorten its texts.");
      }
      unmarking += FRAME + lists(item.facts);
    }
    if (unmarking > LARGEST_LINE) {
      throw new Fault(
          "incoming-size",
          items.size() + " records are more than the log can keep all at once.",
          "Nothing was added; add them in parts, some hundreds at a time.");
    }
  }

  private static int lists(Facts facts) {
    return facts.cells().entrySet().stream()
        .filter(cell -> cell.getValue().value().orElse("") instanceof List<?>)
        .filter(cell -> cell.getValue().value().toString().matches("(?s).*[0-9a-f]{20}\\..*"))
        .mapToInt(cell -> FRAME + size(cell.getValue()))
        .sum();
  }

  private static int size(Facts facts) {
    return FRAME
        + facts.cells().entrySet().stream()
            .mapToInt(cell -> FRAME + cell.getKey().length() + size(cell.getValue()))
            .sum();
  }

  private static int size(Facts.Cell cell) {
    return length(cell.value().map(Object::toString).orElse("")) + length(cell.typed().orElse(""));
  }

  private static int length(String text) {
    return text.chars().map(c -> c < ' ' || c == '"' || c == '\\' ? WIDEST : UTF8).sum();
  }
}
