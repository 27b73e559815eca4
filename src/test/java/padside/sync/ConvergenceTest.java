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
 * Machines that edit the same records and hear of each other by sticks and bundles that get lost,
 * cut and damaged: in the end all have the same, nothing is lost, and a field has two heads exactly
 * where two edits had not seen each other. What is to be expected is kept beside the logs, as plain
 * sets.
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
            + " fields with several heads, all told alike");
    assertThat(conflicts).hasValueGreaterThan(HISTORIES / 10L);
  }

  /** One edit of one field, and which others its machine had seen. */
  private record Edit(String op, RecordId record, String field, String value, Set<String> seen) {}

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
        switch (random.nextInt(12)) {
          case 0, 1, 2, 3 -> edit(any(cards));
          case 4, 5, 6 -> exchange(any(cards), any(sticks));
          case 7 -> bundle();
          case 8, 9 -> harm(any(sticks));
          case 10 -> restart(any(cards));
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
        Column<String> field = any(FIELDS);
        String value = "value " + random.nextInt(1000);
        boolean fresh = rockets.isEmpty() || random.nextInt(4) == 0;
        Facts facts = Facts.none().with(field, value);
        Action action =
            fresh
                ? Action.create("add", Kind.ROCKET, facts)
                : Action.change("change", Kind.ROCKET, any(rockets), facts);
        RecordId record = card.log().save(action).get(0);
        Set<String> after = card.lines();
        after.removeAll(seen);
        after.removeIf(op -> op.endsWith(".0"));
        made.add(new Edit(after.iterator().next(), record, field.name(), value, Set.copyOf(seen)));
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
      List<String> state = LogState.of(cards.get(0).folder);
      for (Card card : cards) {
        assertThat(LogState.of(card.folder)).as(card.label).isEqualTo(state);
        assertThat(new TreeSet<>(LogState.rows(card.folder, "SELECT id, field, op FROM head")))
            .isEqualTo(expectedHeads());
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

    private TreeSet<String> expectedHeads() {
      TreeSet<String> heads = new TreeSet<>();
      heads().forEach(edit -> heads.add(edit.record() + "|" + edit.field() + "|" + edit.op()));
      return heads;
    }

    private TreeSet<String> expectedConflicts() {
      TreeSet<String> fields = new TreeSet<>();
      List<Edit> heads = heads();
      for (Edit edit : heads) {
        if (heads.stream().anyMatch(o -> sameField(edit, o) && !edit.value().equals(o.value()))) {
          fields.add(edit.record() + " " + edit.field());
        }
      }
      return fields;
    }

    private TreeSet<String> told(Card card) throws Exception {
      TreeSet<String> fields = new TreeSet<>();
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
