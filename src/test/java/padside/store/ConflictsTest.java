package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Operation;
import padside.flight.Rocket;

/** What two machines said differently without having heard of each other. */
class ConflictsTest {
  private static final int MOST = 50;

  @TempDir Path pad;
  @TempDir Path desktop;

  private RecordId rocket;
  private long runs = 1000;

  private void begin() throws Exception {
    try (LogFolder log = open(pad)) {
      Facts facts = Facts.none().with(Rocket.NAME, "Heron").with(Rocket.NOTE, "new", "new");
      rocket = log.save(Action.create("add rocket", Kind.ROCKET, facts)).get(0);
    }
    save(desktop, Action.create("add lot", Kind.LOT, Facts.none())); // a machine of its own
    carry(pad, desktop);
  }

  private LogFolder open(Path folder) throws Fault {
    String label = folder.equals(pad) ? "pad laptop" : "desktop";
    return LogFolder.open(folder, new PretendMachine(runs++, label));
  }

  private void save(Path folder, Action action) throws Fault {
    try (LogFolder log = open(folder)) {
      log.save(action);
    }
  }

  private void exchange() throws Exception {
    carry(pad, desktop);
    carry(desktop, pad);
  }

  private List<FlightLog.Conflict> conflicts(Path folder) throws Fault {
    try (LogFolder log = open(folder)) {
      return log.conflicts(MOST);
    }
  }

  private static void carry(Path from, Path to) throws Exception {
    Path journals = Files.createDirectories(to.resolve("journal"));
    for (Path journal : JournalFiles.in(from.resolve("journal"))) {
      if (!Files.exists(journals.resolve(journal.getFileName()))) {
        Files.copy(journal, journals.resolve(journal.getFileName()));
      }
    }
  }

  private Action note(String text) {
    return Action.change(
        "change rocket", Kind.ROCKET, rocket, Facts.none().with(Rocket.NOTE, text, text));
  }

  @Test
  void both_sides_are_told_with_machine_and_time_on_both_machines() throws Exception {
    begin();
    save(pad, note("fin loose"));
    save(desktop, note("fin glued"));
    assertThat(conflicts(pad)).isEmpty();
    exchange();

    for (Path folder : List.of(pad, desktop)) {
      List<FlightLog.Conflict> conflicts = conflicts(folder);
      assertThat(conflicts).hasSize(1);
      FlightLog.Conflict conflict = conflicts.get(0);
      assertThat(conflict.kind()).isEqualTo(Kind.ROCKET);
      assertThat(conflict.record()).isEqualTo(rocket);
      assertThat(conflict.field()).isEqualTo(Rocket.NOTE.name());
      assertThat(conflict.isRemoval()).isFalse();
      assertThat(conflict.facts().get(Rocket.NAME)).contains("Heron");
      assertThat(conflict.heads())
          .extracting(head -> head.done().machine() + ": " + head.cell().typed().orElseThrow())
          .containsExactlyInAnyOrder("pad laptop: fin loose", "desktop: fin glued");
      assertThat(conflict.heads()).extracting(FlightLog.Head::device).doesNotHaveDuplicates();
      assertThat(conflict.heads())
          .extracting(head -> head.done().when().toEpochMilli())
          .allMatch(wall -> wall > 1_795_601_335_000L);
      assertThat(conflict.heads().get(1).cell())
          .as("the one that shows is told last")
          .isEqualTo(conflict.facts().cells().get(Rocket.NOTE.name()));
    }
  }

  @Test
  void choosing_names_all_heads_ends_it_everywhere_and_is_undone_like_any_action()
      throws Exception {
    begin();
    save(pad, note("fin loose"));
    save(desktop, note("fin glued"));
    exchange();
    try (LogFolder log = open(pad)) {
      FlightLog.Conflict conflict = log.conflicts(MOST).get(0);
      FlightLog.Head other = conflict.heads().get(0);
      Facts chosen = Facts.none().with(conflict.field(), other.cell());
      log.save(Action.change("choose note", Kind.ROCKET, rocket, chosen));
      assertThat(log.conflicts(MOST)).isEmpty();
      assertThat(log.find(Kind.ROCKET, rocket).orElseThrow().facts().cells())
          .containsEntry(Rocket.NOTE.name(), other.cell());

      List<Operation> history = log.history(Kind.ROCKET, rocket);
      log.save(history.get(history.size() - 1).undoing().action());
      assertThat(log.find(Kind.ROCKET, rocket).orElseThrow().facts().cells())
          .as("what showed before the choice")
          .containsEntry(Rocket.NOTE.name(), conflict.heads().get(1).cell());
      log.save(Action.change("choose note", Kind.ROCKET, rocket, chosen));
    }
    exchange();
    assertThat(conflicts(desktop)).isEmpty();
    assertThat(LogState.of(desktop)).isEqualTo(LogState.of(pad));
    assertThat(LogState.rows(pad, "SELECT count(*) FROM head WHERE field = 'note'"))
        .containsExactly("1");
  }

  @Test
  void the_same_said_twice_is_no_conflict() throws Exception {
    begin();
    save(pad, note("fin loose"));
    save(desktop, note("fin loose"));
    exchange();

    assertThat(conflicts(pad)).isEmpty();
  }

  @Test
  void a_removal_beside_a_change_it_had_not_seen_asks_for_keep_or_remove() throws Exception {
    begin();
    save(pad, Action.remove("remove rocket", Kind.ROCKET, rocket));
    save(desktop, note("fin glued"));
    exchange();

    FlightLog.Conflict conflict = conflicts(desktop).get(0);
    assertThat(conflicts(desktop)).hasSize(1);
    assertThat(conflict.isRemoval()).isTrue();
    assertThat(conflict.heads())
        .extracting(head -> head.done().machine() + " " + head.field())
        .containsExactly("pad laptop removed", "desktop note");

    Facts keep = Facts.none().with(Kind.REMOVED.name(), Facts.Cell.emptied());
    save(desktop, Action.change("keep rocket", Kind.ROCKET, rocket, keep));
    exchange();
    assertThat(conflicts(pad)).isEmpty();
    assertThat(LogState.rows(pad, "SELECT note FROM rocket")).containsExactly("fin glued");

    save(pad, Action.remove("remove rocket", Kind.ROCKET, rocket));
    exchange();
    assertThat(conflicts(desktop)).isEmpty();
    assertThat(LogState.rows(desktop, "SELECT note FROM rocket")).isEmpty();
  }

  @Test
  void removing_in_the_end_hides_it_for_good() throws Exception {
    begin();
    save(pad, Action.remove("remove rocket", Kind.ROCKET, rocket));
    save(desktop, note("fin glued"));
    exchange();
    save(pad, Action.remove("remove rocket", Kind.ROCKET, rocket));
    exchange();

    for (Path folder : List.of(pad, desktop)) {
      assertThat(conflicts(folder)).isEmpty();
      assertThat(LogState.rows(folder, "SELECT id FROM rocket")).isEmpty();
    }
  }

  @Test
  void removed_there_and_brought_back_here_is_asked_about_whichever_shows() throws Exception {
    begin();
    save(pad, Action.remove("remove rocket", Kind.ROCKET, rocket));
    exchange();
    Facts back = Facts.none().with(Kind.REMOVED.name(), Facts.Cell.emptied());
    save(desktop, Action.change("bring back rocket", Kind.ROCKET, rocket, back));
    save(pad, Action.remove("remove rocket", Kind.ROCKET, rocket));
    exchange();

    assertThat(conflicts(pad)).extracting(FlightLog.Conflict::isRemoval).containsExactly(true);
  }

  @Test
  void no_more_are_told_than_asked_for_the_newest_records_first() throws Exception {
    begin();
    List<RecordId> flights = new ArrayList<>();
    try (LogFolder log = open(pad)) {
      for (int i = 0; i < 5; i++) {
        flights.addAll(log.save(Action.create("draft card", Kind.FLIGHT, flight("x" + i))));
      }
    }
    carry(pad, desktop);
    for (RecordId flight : flights) {
      save(pad, Action.change("change", Kind.FLIGHT, flight, flight("pad")));
      save(desktop, Action.change("change", Kind.FLIGHT, flight, flight("desktop")));
    }
    exchange();
    try (LogFolder log = open(pad)) {
      assertThat(log.conflicts(2))
          .extracting(FlightLog.Conflict::record)
          .containsExactly(flights.get(4), flights.get(3));
      assertThat(log.conflicts(MOST)).hasSize(5);
    }
  }

  private static Facts flight(String note) {
    return Facts.none().with(Flight.NOTE, note, note);
  }

  /**
   * Random edits of two machines that now and then hear of each other. What is told must be what a
   * plain reading of the journals' lines gives: the cells that no line names in its {@code b}.
   */
  @Test
  void what_is_told_is_what_a_plain_reading_of_the_lines_finds() throws Exception {
    int found = 0;
    for (long seed = 1; seed <= 20; seed++) {
      Random random = new Random(seed);
      Path a = Files.createDirectory(pad.resolve("a" + seed));
      Path b = Files.createDirectory(desktop.resolve("b" + seed));
      List<RecordId> rockets = new ArrayList<>();
      for (int i = 0; i < 10; i++) {
        Path folder = random.nextBoolean() ? a : b;
        try (LogFolder log = open(folder)) {
          for (int j = 0; j < 4; j++) {
            rockets.addAll(log.save(edit(rockets, random)));
          }
        }
        if (random.nextInt(4) == 0) {
          carry(a, b);
          carry(b, a);
        }
      }
      carry(a, b);
      Set<String> told = new TreeSet<>();
      for (FlightLog.Conflict each : conflicts(b)) {
        told.add(each.record() + " " + each.field());
      }
      Set<String> expected = plainly(b.resolve("journal"));
      assertThat(told).as("seed %d", seed).isEqualTo(expected);
      found += expected.size();
    }
    assertThat(found).as("the histories had conflicts").isGreaterThan(20);
  }

  private static Action edit(List<RecordId> rockets, Random random) {
    if (rockets.isEmpty() || random.nextInt(6) == 0) {
      return Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, "new"));
    }
    RecordId rocket = rockets.get(random.nextInt(rockets.size()));
    Facts facts =
        switch (random.nextInt(5)) {
          case 0 -> Facts.none().with(Kind.REMOVED, true);
          case 1 -> Facts.none().with(Kind.REMOVED.name(), Facts.Cell.emptied());
          case 2 -> Facts.none().with(Rocket.NOTE, "note " + random.nextInt(3));
          default -> Facts.none().with(Rocket.NAME, "name " + random.nextInt(3));
        };
    return Action.change("edit", Kind.ROCKET, rocket, facts);
  }

  /** A cell of a line. */
  private record Written(String op, long t, String value, Set<String> replaces) {}

  private static Set<String> plainly(Path journals) throws Exception {
    Map<String, Map<String, List<Written>>> records = new TreeMap<>();
    for (Path journal : JournalFiles.in(journals)) {
      for (String raw : Files.readAllLines(journal)) {
        Map<?, ?> line = Json.readMap(raw);
        for (Object each : (List<?>) Optional.ofNullable(line.get("ch")).orElse(List.of())) {
          Map<?, ?> cell = (Map<?, ?>) each;
          Set<String> replaces = new HashSet<>();
          ((List<?>) Optional.ofNullable(cell.get("b")).orElse(List.of()))
              .forEach(op -> replaces.add((String) op));
          records
              .computeIfAbsent((String) cell.get("e"), any -> new TreeMap<>())
              .computeIfAbsent(String.valueOf(cell.get("f")), any -> new ArrayList<>())
              .add(
                  new Written(
                      line.get("run") + "." + line.get("n"),
                      ((Number) line.get("t")).longValue(),
                      String.valueOf(cell.get("v")),
                      replaces));
        }
      }
    }
    Set<String> conflicts = new TreeSet<>();
    records.forEach((record, fields) -> conflicts.addAll(of(record, fields)));
    return conflicts;
  }

  private static Set<String> of(String record, Map<String, List<Written>> fields) {
    Set<String> conflicts = new TreeSet<>();
    List<Written> marks = heads(fields.getOrDefault("removed", List.of()));
    Set<String> seen = new HashSet<>();
    marks.stream()
        .filter(mark -> mark.value().equals("true"))
        .forEach(mark -> seen.addAll(mark.replaces()));
    boolean removal = marks.stream().anyMatch(mark -> mark.value().equals("true"));
    boolean back = marks.stream().anyMatch(mark -> !mark.value().equals("true"));
    boolean unseen =
        fields.entrySet().stream()
            .filter(field -> !field.getKey().equals("removed"))
            .flatMap(field -> heads(field.getValue()).stream())
            .anyMatch(head -> !seen.contains(head.op()));
    if (removal && (back || unseen)) {
      conflicts.add(record + " removed");
    }
    boolean shown =
        marks.stream()
            .max(java.util.Comparator.comparingLong(Written::t).thenComparing(Written::op))
            .filter(mark -> mark.value().equals("true"))
            .isPresent();
    if (!shown || unseen) {
      fields.forEach(
          (field, cells) -> {
            boolean several = heads(cells).stream().map(Written::value).distinct().count() > 1;
            if (several && !field.equals("removed")) {
              conflicts.add(record + " " + field);
            }
          });
    }
    return conflicts;
  }

  private static List<Written> heads(List<Written> cells) {
    Set<String> replaced = new HashSet<>();
    cells.forEach(cell -> replaced.addAll(cell.replaces()));
    return cells.stream().filter(cell -> !replaced.contains(cell.op())).toList();
  }
}
