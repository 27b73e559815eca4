package padside.sync;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.store.FolderCopy;
import padside.store.LogState;

/**
 * Machines that edit and remove the same records and hear of each other by sticks, bundles and
 * connections that get lost, cut and damaged: in the end all have the same, nothing is lost, a
 * field has two heads exactly where two edits had not seen each other, and a record is gone exactly
 * where a removal had seen all that stands. What is to be expected is kept beside the logs, as
 * plain sets.
 */
class ConvergenceTest {
  private static final int HISTORIES = Trials.of("syncs", 60, 900);
  private static final int ROUNDS = 34;
  private static final int MOST_CARDS = 5;
  private static final List<Column<String>> FIELDS = List.of(Rocket.NAME, Rocket.NOTE);

  private final AtomicLong edits = new AtomicLong();
  private final AtomicLong exchanges = new AtomicLong();
  private final AtomicLong mishaps = new AtomicLong();
  private final AtomicLong conflicts = new AtomicLong();
  private final AtomicLong removed = new AtomicLong();

  @Test
  void whatever_happens_on_the_way_all_machines_end_with_everything(@TempDir Path folder)
      throws Exception {
    Trials.run(
        HISTORIES,
        (number, random) -> {
          Path place = Files.createDirectory(folder.resolve("history" + number));
          try (History history = new History(place, random)) {
            history.run();
          }
          FolderCopy.delete(place);
        });
    Trials.say(
        HISTORIES * ROUNDS
            + " rounds of "
            + HISTORIES
            + " histories: "
            + edits
            + " edits, "
            + exchanges
            + " exchanges, "
            + mishaps
            + " mishaps, "
            + conflicts
            + " conflicts, all told alike, "
            + removed
            + " records removed");
    assertThat(conflicts).hasValueGreaterThan(HISTORIES / 10L);
    assertThat(removed).hasValueGreaterThan(HISTORIES / 10L);
  }

  /** One edit of one field, and which others its machine had seen. */
  private record Edit(String op, RecordId record, String field, String value, Set<String> seen) {
    boolean isRemoval() {
      return field.equals(Kind.REMOVED.name());
    }
  }

  private final class History implements AutoCloseable {
    private final Path place;
    private final Random random;
    private final List<Card> cards = new ArrayList<>();
    private final List<Path> sticks = new ArrayList<>();
    private final List<Path> bundles = new ArrayList<>();
    private final List<RecordId> rockets = new ArrayList<>();
    private final List<Edit> made = new ArrayList<>();
    private int count;

    History(Path place, Random random) throws IOException {
      this.place = place;
      this.random = random;
      for (int i = 2 + random.nextInt(2); i > 0; i--) {
        count++;
        cards.add(new Card(place.resolve("card" + count), "card" + count, random));
      }
      for (int i = 0; i < 2; i++) {
        sticks.add(Files.createDirectory(place.resolve("stick" + i)));
      }
    }

    void run() throws Exception {
      for (int round = 0; round < ROUNDS; round++) {
        switch (random.nextInt(14)) {
          case 0, 1, 2, 3 -> edit(any(cards));
          case 4, 5, 6 -> exchange(any(cards), any(sticks));
          case 7 -> bundle();
          case 8, 9 -> harm(any(sticks));
          case 10 -> restart(any(cards));
          case 11, 12 -> talk();
          default -> copy();
        }
      }
      Path last = Files.createDirectory(place.resolve("last"));
      for (int i = 0; i < 2; i++) {
        for (Card card : cards) {
          exchange(card, last);
        }
      }
      check();
    }

    private void edit(Card card) throws Exception {
      for (int i = 1 + random.nextInt(3); i > 0; i--) {
        Set<String> seen = card.lines();
        boolean fresh = rockets.isEmpty() || random.nextInt(4) == 0;
        boolean removal = !fresh && random.nextInt(6) == 0;
        String field = removal ? Kind.REMOVED.name() : any(FIELDS).name();
        String value = removal ? "true" : "value " + random.nextInt(1000);
        Facts facts = Facts.none().with(field, Facts.Cell.of(removal ? (Object) true : value));
        Action action =
            fresh
                ? Action.create("add", Kind.ROCKET, facts)
                : Action.change("change", Kind.ROCKET, any(rockets), facts);
        RecordId record = card.log().save(action).get(0);
        Set<String> after = card.lines();
        after.removeAll(seen);
        after.removeIf(op -> op.endsWith(".0"));
        made.add(new Edit(after.iterator().next(), record, field, value, Set.copyOf(seen)));
        if (fresh) {
          rockets.add(record);
        }
        edits.incrementAndGet();
      }
    }

    private void exchange(Card card, Path stick) throws Exception {
      card.with(stick);
      exchanges.incrementAndGet();
    }

    private void bundle() throws Exception {
      if (bundles.isEmpty() || random.nextBoolean()) {
        Path bundle = place.resolve("bundle" + bundles.size());
        new Bundle(bundle).write(any(cards).exchange(), new Willing());
        bundles.add(bundle);
      } else {
        new Bundle(any(bundles)).take(any(cards).exchange(), new Willing());
      }
      exchanges.incrementAndGet();
    }

    /** Two machines over a connection, which now and then breaks or bears false bits. */
    private void talk() throws Exception {
      Card near = any(cards);
      Card far = any(cards);
      if (near == far) {
        return;
      }
      near.close();
      far.close();
      TalkTable table = new TalkTable(near.folder, far.folder, random.nextInt());
      switch (random.nextInt(3)) {
        case 0 -> {
          table.exchange(
              TalkTable.cut(random.nextInt(3000)),
              out -> out,
              new TalkTable.Answering(true, false));
          mishaps.incrementAndGet();
        }
        case 1 -> {
          table.exchange(
              out -> out,
              TalkTable.flipped(20 + random.nextInt(2000), random.nextInt(8)),
              new TalkTable.Answering(true, false));
          mishaps.incrementAndGet();
        }
        default -> table.sound();
      }
      exchanges.incrementAndGet();
    }

    private void harm(Path stick) throws IOException {
      Optional<Path> harmed = Harm.somewhere(stick, random);
      mishaps.addAndGet(harmed.isPresent() ? 1 : 0);
    }

    private void restart(Card card) throws Exception {
      if (random.nextBoolean() && Files.exists(card.folder)) {
        card.deleteDatabase();
      } else {
        card.close();
      }
    }

    private void copy() throws Exception {
      Card card = any(cards);
      if (cards.size() < MOST_CARDS && Files.exists(card.folder)) {
        count++;
        cards.add(card.copied(place.resolve("card" + count), "card" + count));
      } else {
        restart(card);
      }
    }

    private void check() throws Exception {
      Set<String> ops = new HashSet<>();
      made.forEach(edit -> ops.add(edit.op()));
      for (Card card : cards) {
        assertThat(card.lines()).as("nothing is lost on %s", card.label).containsAll(ops);
        assertThat(told(card)).as("conflicts on %s", card.label).isEqualTo(expectedConflicts());
        card.close();
      }
      conflicts.addAndGet(expectedConflicts().size());
      removed.addAndGet(expectedRemoved().size());
      List<String> state = LogState.of(cards.get(0).folder);
      for (Card card : cards) {
        assertThat(LogState.of(card.folder)).as(card.label).isEqualTo(state);
        assertThat(new TreeSet<>(LogState.rows(card.folder, "SELECT id, field, op FROM head")))
            .isEqualTo(expectedHeads());
        assertThat(
                new TreeSet<>(
                    LogState.rows(card.folder, "SELECT name FROM record WHERE removed = 1")))
            .isEqualTo(expectedRemoved());
        card.deleteDatabase();
        card.log();
        card.close();
        assertThat(LogState.of(card.folder)).as("%s built anew", card.label).isEqualTo(state);
      }
    }

    private List<Edit> heads() {
      return made.stream()
          .filter(
              edit ->
                  made.stream()
                      .filter(other -> sameField(edit, other))
                      .noneMatch(other -> other.seen().contains(edit.op())))
          .toList();
    }

    private boolean sameField(Edit one, Edit other) {
      return one.record().equals(other.record()) && one.field().equals(other.field());
    }

    private Set<String> expectedHeads() {
      Set<String> heads = new TreeSet<>();
      heads().forEach(edit -> heads.add(edit.record() + "|" + edit.field() + "|" + edit.op()));
      return heads;
    }

    /** What stands of a removed record although no removal had seen it. */
    private boolean isUnseen(Edit head, List<Edit> heads) {
      return !head.isRemoval()
          && heads.stream()
              .filter(other -> other.isRemoval() && other.record().equals(head.record()))
              .noneMatch(removal -> removal.seen().contains(head.op()));
    }

    private Set<String> expectedRemoved() {
      Set<String> records = new TreeSet<>();
      List<Edit> heads = heads();
      heads.stream().filter(Edit::isRemoval).forEach(each -> records.add(each.record().text()));
      heads.stream()
          .filter(each -> isUnseen(each, heads))
          .forEach(each -> records.remove(each.record().text()));
      return records;
    }

    private Set<String> expectedConflicts() {
      Set<String> fields = new TreeSet<>();
      List<Edit> heads = heads();
      Set<String> gone = expectedRemoved();
      for (Edit edit : heads) {
        boolean shows = !gone.contains(edit.record().text());
        if (shows
            && (edit.isRemoval()
                || heads.stream()
                    .anyMatch(o -> sameField(edit, o) && !edit.value().equals(o.value())))) {
          fields.add(edit.record() + " " + edit.field());
        }
      }
      return fields;
    }

    private Set<String> told(Card card) throws Exception {
      Set<String> fields = new TreeSet<>();
      card.log()
          .conflicts(Integer.MAX_VALUE)
          .forEach(each -> fields.add(each.record() + " " + each.field()));
      return fields;
    }

    private <T> T any(List<T> list) {
      return list.get(random.nextInt(list.size()));
    }

    @Override
    public void close() throws Exception {
      for (Card card : cards) {
        card.close();
      }
    }
  }
}
