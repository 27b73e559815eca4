package padside.store;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Altimeter;
import padside.flight.Attempt;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;

/** Any number of flights as a club might have them, with words to look for; all from a seed. */
public final class ClubOfFlights {
  private static final OutcomeTable OUTCOMES = outcomes();
  private static final List<String> NAMES =
      List.of(
          "Skylark",
          "Larkspur",
          "Großer Äther",
          "Éclair",
          "Blue Heron",
          "Heron II",
          "Çelik",
          "Old Faithful",
          "Kestrel",
          "Tern",
          "Red Tern",
          "Ångström",
          "Needle",
          "Nadel",
          "Moth");
  private static final List<String> WORDS =
      List.of(
          "tree",
          "drifted",
          "over",
          "the",
          "hedge",
          "late",
          "fin",
          "loose",
          "Straße",
          "windy",
          "perfect",
          "crowd",
          "cheered",
          "lost",
          "for",
          "an",
          "hour",
          "found",
          "by",
          "Zoë",
          "wet",
          "grass",
          "rod",
          "whip",
          "open",
          "water",
          "crosswind",
          "tied",
          "down",
          "retightened",
          "42");
  private static final List<String> RARE = List.of("hailstorm", "swan's nest", "Übergröße");
  private static final List<String> MOTORS =
      List.of("A8-3", "B6-4", "C6-5", "C6-7", "D12-5", "3xC6-5", "C6-0 then C6-7", "1/2A6-2");

  private final FlightLog log;
  private final Random random;
  private final Map<Kind, List<RecordId>> made = new EnumMap<>(Kind.class);

  public ClubOfFlights(FlightLog log, Random random) {
    this.log = log;
    this.random = random;
  }

  /** The outcome table the program ships. */
  public static OutcomeTable outcomes() {
    try (Reader csv = Files.newBufferedReader(Path.of("data/outcomes.csv"))) {
      return OutcomeTable.read(csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Adds flights, and with them rockets, lots, fields and days; one field for six days. */
  public void fly(int flights) throws Fault {
    for (int i = 0; i < flights; i++) {
      if (i % 400 == 0) {
        create(Kind.ROCKET, Facts.none().with(Rocket.NAME, pick(NAMES) + " " + random.nextInt(40)));
        create(Kind.DEVICE, Facts.none().with(RecoveryDevice.NAME, "chute " + pick(NAMES)));
        create(Kind.ALTIMETER, Facts.none().with(Altimeter.NAME, "alti " + random.nextInt(9)));
      }
      if (i % 300 == 0) {
        create(Kind.FIELD, Facts.none().with(Field.NAME, pick(NAMES) + " meadow"));
      }
      if (i % 50 == 0) {
        create(
            Kind.LOT,
            Facts.none()
                .with(Lot.CODE, "L" + random.nextInt(900))
                .with(Lot.DATE_CODE, "A" + random.nextInt(9) + "Q" + random.nextInt(9)));
        create(
            Kind.DAY,
            Facts.none()
                .with(Day.DATE, LocalDate.of(2019, 1, 1).plusDays(random.nextInt(3000)))
                .with(Day.FIELD, any(Kind.FIELD)));
      }
      flight();
    }
  }

  private void flight() throws Fault {
    Facts facts =
        Facts.none()
            .with(
                Flight.STATUS,
                random.nextInt(12) == 0
                    ? pick(List.of(Flight.Status.values()))
                    : Flight.Status.FLOWN)
            .with(Flight.DAY, any(Kind.DAY))
            .with(Flight.ROCKET, any(Kind.ROCKET))
            .with(Flight.MOTOR, pick(MOTORS))
            .with(Flight.LOT, any(Kind.LOT))
            .with(Flight.DEVICE, any(Kind.DEVICE));
    for (String aspect : List.of("boost", "burn", "ejection", "recovery", "landing", "landed_on")) {
      boolean asHoped = random.nextInt(3) > 0;
      List<OutcomeTable.Outcome> words = OUTCOMES.of(aspect);
      if (random.nextInt(9) > 0) {
        facts =
            facts.with(aspect, Facts.Cell.of(asHoped ? words.get(0).code() : pick(words).code()));
      }
    }
    facts = said(facts);
    RecordId flight = create(Kind.FLIGHT, facts);
    if (random.nextInt(8) == 0) {
      create(
          Kind.FIX,
          Facts.none()
              .with(Fix.FLIGHT, flight)
              .with(Fix.TEXT, sentence(3))
              .with(Fix.DONE, random.nextInt(4) > 0));
    }
    if (random.nextInt(15) == 0) {
      create(
          Kind.ATTEMPT,
          Facts.none()
              .with(Attempt.FLIGHT, flight)
              .with(Attempt.CAUSE, pick(OUTCOMES.of("cause")).code())
              .with(Attempt.NOTE, sentence(2)));
    }
  }

  private Facts said(Facts flight) {
    Facts facts = flight;
    if (random.nextInt(2) == 0) {
      facts = facts.with(Flight.NOTE, sentence(8));
    }
    if (random.nextInt(20) == 0) {
      facts =
          facts
              .with(Flight.BOOSTER_LOT, any(Kind.LOT))
              .with(Flight.ALTIMETER, any(Kind.ALTIMETER))
              .with(Flight.UNTICKED, List.of(sentence(2), sentence(2)))
              .with(Flight.MOTOR.name(), Facts.Cell.unread("Z" + random.nextInt(9)));
    }
    if (random.nextInt(20) == 0) {
      facts =
          facts
              .with(Flight.CONDITION, List.of(new Flight.PartState("fins", "cracked")))
              .with(Flight.FLIER, pick(NAMES))
              .with(Flight.AGAINST, sentence(4));
    }
    return facts;
  }

  /** Changes something that searches see: a name, an outcome, a removal, a fix that is done. */
  public void edit() throws Fault {
    switch (random.nextInt(7)) {
      case 0 -> change(Kind.ROCKET, Facts.none().with(Rocket.NAME, "New " + pick(NAMES)));
      case 1 -> change(Kind.LOT, Facts.none().with(Lot.CODE, "M" + random.nextInt(99)));
      case 2 -> change(Kind.FIELD, Facts.none().with(Field.NAME, pick(NAMES) + " strip"));
      case 3 -> change(Kind.FLIGHT, Facts.none().with(Flight.NOTE, sentence(5)));
      case 4 -> change(Kind.FLIGHT, Facts.none().with(Kind.REMOVED, random.nextInt(3) > 0));
      case 5 -> change(Kind.FIX, Facts.none().with(Fix.DONE, random.nextBoolean()));
      default -> change(Kind.FLIGHT, Facts.none().with(Flight.ROCKET, any(Kind.ROCKET)));
    }
  }

  private void change(Kind kind, Facts facts) throws Fault {
    if (!made.getOrDefault(kind, List.of()).isEmpty()) {
      log.save(Action.change("change", kind, any(kind), facts));
    }
  }

  /** Something somebody may type to find some of these flights. */
  public String line() {
    return Stream.generate(this::term)
        .limit(1 + random.nextInt(3))
        .collect(Collectors.joining(" "));
  }

  private String term() {
    return switch (random.nextInt(14)) {
      case 0 -> "rocket:" + beginning(pick(NAMES));
      case 1 -> "motor:" + beginning(pick(MOTORS));
      case 2 -> "lot:" + pick(List.of("l1", "L4", "a3q", "M2"));
      case 3 -> "field:" + beginning(pick(NAMES));
      case 4 -> pick(List.of("on:2022", "on:2021-0", "from:2023", "to:2021-06", "on:2020-05-"));
      case 5 ->
          "outcome:"
              + pick(List.of("nominal", "malfunction", "late", "\"landed on tree\"", "scrub"));
      case 6 -> "open";
      case 7 -> beginning(pick(NAMES));
      case 8 -> pick(List.of("nominal", "cato", "cracked", "clips", "2022-0", "strip", "\"open\""));
      case 9 -> "\"" + pick(WORDS) + " " + pick(WORDS) + "\"";
      default -> beginning(pick(WORDS));
    };
  }

  /** Of its first word. */
  private String beginning(String words) {
    int end = words.indexOf(' ');
    String word = end < 0 ? words : words.substring(0, end);
    String typed = word.substring(0, 1 + random.nextInt(word.length()));
    return random.nextBoolean() ? typed : typed.toUpperCase(java.util.Locale.ROOT);
  }

  private String sentence(int words) {
    String plain =
        Stream.generate(() -> pick(WORDS))
            .limit(1 + random.nextInt(words))
            .collect(Collectors.joining(" "));
    return random.nextInt(2000) == 0 ? plain + " " + pick(RARE) : plain;
  }

  private RecordId create(Kind kind, Facts facts) throws Fault {
    RecordId id = log.save(Action.create("keep", kind, facts)).get(0);
    made.computeIfAbsent(kind, any -> new ArrayList<>()).add(id);
    return id;
  }

  private RecordId any(Kind kind) {
    return pick(made.get(kind));
  }

  private <T> T pick(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }
}
