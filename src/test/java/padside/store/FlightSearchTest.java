package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.OutcomeTable;
import padside.flight.PlainScan;
import padside.flight.Rocket;
import padside.search.Found;
import padside.search.Search;

class FlightSearchTest {
  private static final OutcomeTable OUTCOMES = ClubOfFlights.outcomes();

  @TempDir Path folder;

  /** Held against a look at every record by the types all else uses. */
  @Test
  void finds_what_a_plain_scan_of_all_flights_finds_whatever_was_changed_since() throws Exception {
    int asked = 0;
    int found = 0;
    for (int round = 0; round < Trials.of("searches", 3, 60); round++) {
      Path place = folder.resolve("log" + round);
      Random random = Trials.random(round);
      for (int start = 0; start < 3; start++) {
        try (LogFolder log = LogFolder.open(place, new PretendMachine(7L * round + start))) {
          ClubOfFlights club = new ClubOfFlights(log, random);
          club.fly(100);
          for (int i = 0; i < 25; i++) {
            if (random.nextInt(2) == 0) {
              club.edit();
            }
            if (random.nextInt(3) == 0) {
              log.lookThrough(OUTCOMES);
            }
            String line = club.line();
            Search search = Search.read(line).value().orElseThrow();
            List<RecordId> expected = new PlainScan(log, OUTCOMES).find(search);
            int most = 1 + random.nextInt(200);
            Found<Stored> answer = log.foundAmongAll(search, OUTCOMES, most);
            assertThat(answer.newest())
                .as("seed %d, round %d: %s", Trials.seed(), round, line)
                .extracting(Stored::id)
                .isEqualTo(expected.subList(0, Math.min(most, expected.size())));
            assertThat(answer.count()).as(line).isEqualTo(expected.size());
            asked++;
            found += expected.isEmpty() ? 0 : 1;
          }
        }
        if (start == 1) {
          Files.delete(place.resolve("padside.sqlite"));
        }
      }
    }
    Trials.say(asked + " searches, " + found + " of them found something");
    assertThat(found).isGreaterThan(asked / 3);
  }

  /** So that who looks for one of the last flights need not wait for those of ten years ago. */
  @Test
  void the_newest_flights_are_found_while_older_ones_are_still_to_be_looked_through() throws Fault {
    try (LogFolder log = open()) {
      RecordId oldest = noted(log, "swan, the oldest");
      for (int i = 0; i < 450; i++) {
        noted(log, "tern " + i);
      }
      RecordId newest = noted(log, "swan, the newest");
      Search swan = Search.read("swan").value().orElseThrow();

      assertThat(log.found(swan, OUTCOMES, 9).whole()).isFalse();
      assertThat(log.lookThrough(OUTCOMES)).isTrue();
      Found<Stored> first = log.found(swan, OUTCOMES, 9);
      assertThat(first.newest()).extracting(Stored::id).containsExactly(newest);
      assertThat(first.whole()).isFalse();

      Found<Stored> all = log.foundAmongAll(swan, OUTCOMES, 9);
      assertThat(all.newest()).extracting(Stored::id).containsExactly(newest, oldest);
      assertThat(all.whole()).isTrue();
      noted(log, "another swan");
      assertThat(log.found(swan, OUTCOMES, 9).whole()).isFalse();
    }
  }

  @Test
  void what_was_typed_with_signs_of_sql_is_looked_for_as_it_is() throws Fault {
    try (LogFolder log = open()) {
      RecordId odd = noted(log, "100% of '; DROP TABLE op; -- [a-z]* ?1");
      noted(log, "plain");

      for (String word : List.of("%", "';", "?1", "[a-z]*", "--")) {
        assertThat(found(log, word)).as(word).containsExactly(odd);
      }
      assertThat(found(log, "_")).isEmpty();
    }
  }

  @Test
  void a_word_is_found_within_one_field_only() throws Fault {
    try (LogFolder log = open()) {
      RecordId one =
          log.save(
                  Action.create(
                      "",
                      Kind.FLIGHT,
                      Facts.none().with(Flight.NOTE, "tied down").with(Flight.FLIER, "Ines")))
              .get(0);

      assertThat(found(log, "\"tied down\"")).containsExactly(one);
      assertThat(found(log, "\"ines tied\"")).isEmpty();
      assertThat(found(log, "ines tied")).containsExactly(one);
    }
  }

  @Test
  void a_rocket_is_found_by_its_new_name_and_no_longer_by_the_old() throws Fault {
    try (LogFolder log = open()) {
      RecordId rocket =
          log.save(Action.create("", Kind.ROCKET, Facts.none().with(Rocket.NAME, "Tern"))).get(0);
      RecordId flight =
          log.save(Action.create("", Kind.FLIGHT, Facts.none().with(Flight.ROCKET, rocket))).get(0);
      assertThat(found(log, "rocket:tern")).containsExactly(flight);

      log.save(Action.change("", Kind.ROCKET, rocket, Facts.none().with(Rocket.NAME, "Gannet")));
      assertThat(found(log, "gannet")).containsExactly(flight);
      assertThat(found(log, "tern")).isEmpty();
    }
  }

  /** What the medium refuses is searched with the rest, and still is once it could be written. */
  @Test
  void what_only_waits_in_memory_is_found_too() throws Exception {
    FailingMedium medium = new FailingMedium();
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(3), medium)) {
      RecordId kept = noted(log, "kept swan");
      medium.fail(FailingMedium.Failure.WRITE, 1000);
      RecordId held = keep(log, "held swan");
      assertThat(found(log, "swan")).containsExactly(held, kept);
      RecordId more = keep(log, "another swan");
      assertThat(found(log, "swan")).containsExactly(more, held, kept);
      medium.fail(FailingMedium.Failure.WRITE, 0);
      log.tryAgain();
      assertThat(log.refusal()).isEmpty();
      assertThat(found(log, "swan")).containsExactly(more, held, kept);
    }
    try (LogFolder log = open()) {
      assertThat(found(log, "swan")).hasSize(3);
    }
  }

  @Test
  void other_words_for_outcomes_are_looked_through_anew() throws Fault {
    try (LogFolder log = open()) {
      RecordId flight =
          log.save(
                  Action.create(
                      "",
                      Kind.FLIGHT,
                      Facts.none()
                          .with(Flight.STATUS, Flight.Status.FLOWN)
                          .with(Flight.BURN, "cato_case")))
              .get(0);
      assertThat(found(log, "burst")).containsExactly(flight);

      OutcomeTable other =
          new OutcomeTable(
              List.of(
                  new OutcomeTable.Outcome(
                      "burn", "cato_case", "blew up", OutcomeTable.Mark.BURST)));
      Search search = Search.read("blew").value().orElseThrow();
      assertThat(log.foundAmongAll(search, other, 9).count()).isEqualTo(1);
      assertThat(found(log, "blew")).isEmpty();
    }
  }

  private LogFolder open() throws Fault {
    return LogFolder.open(folder, new PretendMachine(System.identityHashCode(this)));
  }

  private static RecordId noted(LogFolder log, String note) throws Fault {
    return log.save(note(note)).get(0);
  }

  private static RecordId keep(LogFolder log, String note) throws Fault {
    return log.keep(note(note)).records().get(0);
  }

  private static Action note(String note) {
    return Action.create("keep card", Kind.FLIGHT, Facts.none().with(Flight.NOTE, note));
  }

  private static List<RecordId> found(LogFolder log, String line) throws Fault {
    Search search = Search.read(line).value().orElseThrow();
    return log.foundAmongAll(search, OUTCOMES, 100).newest().stream().map(Stored::id).toList();
  }
}
