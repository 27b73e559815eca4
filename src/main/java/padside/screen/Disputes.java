package padside.screen;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.FlightLog.Conflict;
import padside.flight.FlightLog.Head;
import padside.flight.Kind;
import padside.form.FormField;

/** What machines said differently, put as questions in the words of the forms. */
final class Disputes {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private static final int LONGEST = 50;
  private static final int ID_SHOWN = 4;

  private static final String CHECK = "Check and prediction";

  private final Kind kind;
  private final RecordId record;
  private final Facts facts;
  private final World world;
  private final Map<String, Conflict> open = new LinkedHashMap<>();
  private final List<Dispute> questions = new ArrayList<>();

  private Disputes(List<Conflict> conflicts, World world) {
    this.kind = conflicts.get(0).kind();
    this.record = conflicts.get(0).record();
    this.facts = conflicts.get(0).facts();
    this.world = world;
    conflicts.forEach(conflict -> open.put(conflict.field(), conflict));
  }

  /**
   * The newest records first, of each whether it is to stay, then its fields as forms have them.
   */
  static List<Dispute> of(World world) {
    return of(world.log().conflicts(), world);
  }

  private static List<Dispute> of(List<Conflict> conflicts, World world) {
    Map<RecordId, List<Conflict>> records = new LinkedHashMap<>();
    conflicts.forEach(
        each -> records.computeIfAbsent(each.record(), any -> new ArrayList<>()).add(each));
    List<Dispute> all = new ArrayList<>();
    records.values().forEach(each -> all.addAll(new Disputes(each, world).asked()));
    return List.copyOf(all);
  }

  /** Those of one record. */
  static List<Dispute> of(RecordId record, World world) {
    return of(
        world.log().conflicts().stream().filter(each -> each.record().equals(record)).toList(),
        world);
  }

  private List<Dispute> asked() {
    Optional.ofNullable(open.remove(Kind.REMOVED.name())).ifPresent(this::removal);
    Set<String> check = kind == Kind.FLIGHT ? KindFields.ofOneCheck(world) : Set.of();
    List<FormField<?>> fields = KindFields.of(kind, facts, world);
    for (FormField<?> field : fields) {
      Set<String> cells = new LinkedHashSet<>(field.place().part(cells()).cells().keySet());
      if (!cells.isEmpty() && !check.contains(field.name())) {
        question(field.label(), cells, List.of(field));
      }
    }
    Set<String> found = new LinkedHashSet<>(open.keySet());
    found.retainAll(check);
    if (!found.isEmpty()) {
      question(
          CHECK, found, fields.stream().filter(field -> found.contains(field.name())).toList());
    }
    for (String bare : List.copyOf(open.keySet())) {
      question(ChangeText.bareLabel(kind, bare), Set.of(bare), List.of());
    }
    return questions;
  }

  /** The cells still to be asked about, whatever they hold. */
  private Facts cells() {
    Facts cells = Facts.none();
    for (String field : open.keySet()) {
      cells = cells.with(field, Facts.Cell.emptied());
    }
    return cells;
  }

  private void question(String label, Set<String> cells, List<FormField<?>> fields) {
    Map<String, List<Head>> said = said(cells);
    List<Head> all = said.values().stream().flatMap(List::stream).toList();
    List<Dispute.Side> sides = new ArrayList<>();
    for (List<Head> heads : said.values()) {
      Facts chosen = Facts.none();
      for (Head head : heads) {
        chosen = chosen.with(head.field(), head.cell());
      }
      List<String> lines = new ArrayList<>();
      for (FormField<?> field : fields) {
        String text = ChangeText.orBlank(ChangeText.text(field, facts.with(chosen)));
        lines.add(fields.size() == 1 ? text : field.label() + " " + text);
      }
      if (fields.isEmpty()) {
        heads.forEach(head -> lines.add(bare(head)));
      }
      boolean shows = facts.with(chosen).equals(facts);
      String what =
          Paragraph.cut(label.toLowerCase(Locale.ROOT) + " " + String.join(", ", lines), LONGEST);
      sides.add(
          new Dispute.Side(
              "choose " + what, by(heads.get(heads.size() - 1), all), lines, shows, chosen));
    }
    add(label, sides);
    cells.forEach(open::remove);
  }

  /** By machine; where one machine said several things, by what was done there. */
  private Map<String, List<Head>> said(Set<String> cells) {
    List<List<Head>> columns = cells.stream().map(open::get).map(Conflict::heads).toList();
    boolean apart =
        columns.stream()
            .allMatch(heads -> heads.stream().map(Head::device).distinct().count() == heads.size());
    Map<String, List<Head>> said = new LinkedHashMap<>();
    for (List<Head> heads : columns) {
      for (Head head : heads) {
        String key = apart ? head.device() : head.done().id().text();
        said.computeIfAbsent(key, any -> new ArrayList<>()).add(head);
      }
    }
    return said;
  }

  private String bare(Head head) {
    return ChangeText.orBlank(new CellText(kind.column(head.field()), world.log()).of(head.cell()));
  }

  /** Removed on one machine, gone on with on another. */
  private void removal(Conflict conflict) {
    List<Head> marks = conflict.heads().stream().filter(Head::removes).toList();
    List<Head> against = conflict.heads().stream().filter(head -> !head.removes()).toList();
    String noun = KindFields.noun(kind, world);
    List<String> changed = new ArrayList<>();
    for (Head head : against) {
      boolean back = head.field().equals(Kind.REMOVED.name());
      changed.add(back ? "brought back" : "changed: " + told(head));
    }
    boolean hidden =
        facts.get(Kind.REMOVED).orElse(false)
            && against.stream().allMatch(head -> head.field().equals(Kind.REMOVED.name()));
    add(
        "There or removed",
        List.of(
            new Dispute.Side(
                "remove " + noun,
                by(marks.get(marks.size() - 1), conflict.heads()),
                List.of("removed"),
                hidden,
                Facts.none().with(Kind.REMOVED, true)),
            new Dispute.Side(
                "keep " + noun,
                by(against.get(against.size() - 1), conflict.heads()),
                changed,
                !hidden,
                Facts.none().with(Kind.REMOVED.name(), Facts.Cell.emptied()))));
  }

  /** What a removal had not seen: {@code Note: fin glued}. */
  private String told(Head head) {
    Facts cell = Facts.none().with(head.field(), head.cell());
    return KindFields.of(kind, facts, world).stream()
        .filter(field -> !field.place().part(cell).isEmpty())
        .findFirst()
        .map(field -> field.label() + ": " + ChangeText.orBlank(ChangeText.text(field, facts)))
        .orElseGet(() -> ChangeText.bareLabel(kind, head.field()) + ": " + bare(head));
  }

  /** Of machines of one name each with the beginning of its id. */
  private List<String> by(Head head, Collection<Head> all) {
    String label = head.done().machine().isEmpty() ? Sync.NAMELESS : head.done().machine();
    boolean alike =
        all.stream()
            .anyMatch(
                each ->
                    each.done().machine().equals(head.done().machine())
                        && !each.device().equals(head.device()));
    String id = head.device().substring(0, Math.min(ID_SHOWN, head.device().length()));
    return List.of(
        alike ? label + " " + id : label,
        WHEN.format(LocalDateTime.ofInstant(head.done().when(), world.zone())));
  }

  private void add(String about, List<Dispute.Side> sides) {
    questions.add(new Dispute(kind, record, name(), about, sides));
  }

  private String name() {
    if (kind != Kind.FLIGHT) {
      return KindFields.noun(kind, world) + " " + KindFields.name(kind, facts, world);
    }
    Flight flight = new Flight(record, facts);
    return FlightText.name(flight, world) + " · " + FlightText.date(flight, world) + number(flight);
  }

  /** As the Day screen numbers it. */
  private String number(Flight flight) {
    return flight
        .day()
        .map(world.log()::flightsOf)
        .map(day -> day.stream().map(Flight::id).toList().indexOf(flight.id()))
        .filter(index -> index >= 0)
        .map(index -> ", flight " + (index + 1))
        .orElse("");
  }
}
