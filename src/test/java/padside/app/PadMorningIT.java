package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A morning at the pad, five cards: a nominal flight while another waits after its misfire, that
 * one with a late ejection, a CATO, a lost rocket, a scrub. The program is killed during a count,
 * between two marks and in a debrief.
 */
class PadMorningIT {
  private static final Pattern CURSOR_ROW = Pattern.compile(" *> (.+?)(?: {2,}.*)?");
  private static final int BY_FORCE = 128 + 9;
  private static final int LOOKS_BETWEEN_KEYS = 10;
  private static final int ARMED_KEYS = 12;
  private static final int DEBRIEF_KEYS = 8;

  @TempDir Path folder;
  private PadTable pad;

  /** Three rockets that flew yesterday, and a day of today on a large field. */
  @BeforeEach
  void sitDown() throws IOException {
    pad = new PadTable(folder, 80, 24);
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    String field =
        one("field", "'name': 'Long Meadow', 'smallest_side_m': 900, 'edges': " + edges());
    String before = one("day", date(today.minusDays(1), field));
    rocket("Sparrow", 0.036, "A8-3", before);
    rocket("Kestrel", 0.055, "C6-5", before);
    rocket("Heron", 0.055, "C6-5", before);
    one("day", date(today, field));
  }

  @AfterEach
  void packUp() {
    pad.close();
  }

  private String one(String kind, String members) {
    return pad.add(kind, "{" + members.replace('\'', '"') + "}").get(0);
  }

  private static String date(LocalDate date, String field) {
    return "'date': '"
        + date
        + "', 'field': '"
        + field
        + "', 'permission': true, 'fire_ban': false";
  }

  private static String edges() {
    List<String> edges = new ArrayList<>();
    for (int bearing = 0; bearing < 360; bearing += 45) {
      edges.add("{'bearing_deg': " + bearing + ", 'distance_m': 450, 'name': 'hedge'}");
    }
    return edges.toString();
  }

  private void rocket(String name, double mass, String motor, String day) {
    String chute =
        one("device", "'name': '12 in of " + name + "', 'shape': 'parachute', 'diameter_m': 0.3");
    String rocket =
        one(
            "rocket",
            "'name': '" + name + "', 'mass_kg': " + mass + ", 'diameter_m': 0.0248, 'rod_m': 0.9");
    String lot = one("lot", "'motor': '" + motor + "', 'code': 'L-" + name + "', 'bought': 9");
    one(
        "flight",
        "'day': '"
            + day
            + "', 'rocket': '"
            + rocket
            + "', 'motor': '"
            + motor
            + "', 'lot': '"
            + lot
            + "', 'device': '"
            + chute
            + "', 'status': 'flown', 'burn': 'nominal'");
  }

  /** A card of that rocket, kept and taken to the pad; the wind was read a short while ago. */
  private void toPad(String letters, String rocket) {
    pad.press("n");
    pad.sees("> Rocket");
    pad.type(letters);
    pad.seesLine("> " + rocket);
    pad.press("Enter");
    pad.seesLine("> Note");
    pad.press("F5");
    pad.sees("Pad · " + rocket);
  }

  private void armAndCount() {
    pad.press("Enter", "Enter", "Enter", "Enter");
    pad.sees("All ticked");
    pad.press("a");
    pad.sees("ARMED");
    count();
  }

  private void count() {
    pad.press("Space");
    pad.sees("LAUNCH");
  }

  private void mark(String next) {
    pad.press("Space");
    pad.sees(next);
  }

  /** What is not kept yet may be lost, and the screen says so. */
  private void killAndStartAgain(String thenSeen) {
    pad.sees("all kept");
    pad.program().destroyForcibly();
    pad.ended(BY_FORCE);
    pad.launch("");
    pad.sees(thenSeen);
  }

  @Test
  void five_cards_with_a_misfire_a_late_charge_a_cato_a_loss_and_a_scrub() {
    pad.launch("");
    pad.sees("No card yet.");
    misfire();
    flyWhileItWaits();
    flyAfterAll();
    cato();
    lose();
    scrub();
    pad.quit();
    readBack();
  }

  private void misfire() {
    pad.press("w");
    pad.sees("Height of reading");
    pad.type("3g4 SW");
    pad.press("F2");
    pad.sees("Wind 3 gusting 4 mph from SW");
    toPad("kes", "Kestrel");
    armAndCount();
    pad.press("m");
    pad.sees("KEY OUT. Nobody goes near the pad for 60 s");
    pad.type("did not burn");
    pad.press("Enter");
    pad.type("own copper");
    pad.press("F2");
    pad.seesLine("Pad · Kestrel", "2nd attempt");
    pad.seesLine("MISFIRE: key out, nobody near Kestrel on C6-5");
    pad.escape("Flown 0");
    pad.seesLine("MISFIRE: key out");
  }

  private void flyWhileItWaits() {
    int before = pad.keys();
    toPad("sp", "Sparrow");
    pad.press("Enter", "Enter", "Enter", "Enter");
    pad.sees("All ticked");
    pad.press("a");
    pad.sees("ARMED");
    int armed = pad.keys() - before;
    System.out.println("A repeat flight took " + armed + " keys from Day to armed.");
    assertThat(armed).isLessThanOrEqualTo(ARMED_KEYS);

    count();
    mark("next: EJECTION");
    pad.seesLine("Ejection", "predicted");
    markOnceItCounts("next: TOUCHDOWN", "Ejection");
    markOnceItCounts("Enter goes on to the debrief.", "Touchdown");
    before = pad.keys();
    pad.press("Enter");
    pad.sees("Debrief: Sparrow");
    pad.type("232");
    pad.press("F2");
    pad.seesLine("Sparrow", "flown", "232 ft", "nominal");
    int debriefed = pad.keys() - before - "232".length();
    System.out.println("A nominal debrief took " + debriefed + " keys and the digits.");
    assertThat(debriefed).isLessThanOrEqualTo(DEBRIEF_KEYS);
  }

  /** Pressed now and then until it counts: what comes too soon is taken for a key held down. */
  private void markOnceItCounts(String next, String label) {
    AtomicInteger looks = new AtomicInteger();
    pad.tmux()
        .await(
            label + " marked",
            lines -> {
              boolean marked = lines.stream().anyMatch(line -> line.contains(next));
              if (!marked && looks.incrementAndGet() % LOOKS_BETWEEN_KEYS == 0) {
                pad.press("Space");
              }
              return marked;
            });
  }

  private void flyAfterAll() {
    pad.press("Home", "Enter");
    pad.sees("Pad · Kestrel");
    pad.tmux()
        .await(
            "the end of the wait",
            lines -> lines.stream().noneMatch(line -> line.contains("MISFIRE: key out")));
    pad.press("Enter", "Enter", "Enter");
    pad.sees("All ticked");
    pad.press("a");
    pad.sees("ARMED");
    pad.press("Space");
    pad.sees("COUNT");
    killAndStartAgain("HOLD");
    count();
    mark("next: EJECTION");
    markOnceItCounts("next: TOUCHDOWN", "Ejection");
    killAndStartAgain("next: TOUCHDOWN");
    markOnceItCounts("Enter goes on to the debrief.", "Touchdown");
    pad.press("Enter");
    pad.sees("Debrief: Kestrel");
    pad.type("640");
    toField("Ejection");
    pad.type("late");
    pad.seesLine("> Ejection", "late");
    pad.press("F2");
    pad.seesLine("Kestrel", "flown", "640 ft", "ejection late");
  }

  private void cato() {
    toPad("her", "Heron");
    armAndCount();
    mark("next: EJECTION");
    pad.press("Enter");
    pad.sees("Debrief: Heron");
    toField("To mend");
    pad.type("new body tube!");
    pad.press("Tab");
    killAndStartAgain("Debrief: Heron");
    pad.seesLine("To mend", "new body tube!");
    toField("Burn");
    pad.type("case burst");
    pad.press("F2");
    pad.seesLine("Heron", "flown", "CATO: case burst");
  }

  /**
   * Tab by Tab, each once the one before has moved the cursor: a value alone may change in its row.
   */
  private void toField(String label) {
    String at = atField(pad.tmux().lines());
    while (!at.equals(label)) {
      String before = at;
      pad.press("Tab");
      at =
          atField(
              pad.tmux()
                  .await("another field", lines -> !Set.of("", before).contains(atField(lines))));
    }
  }

  /** The label of the field the cursor is in; empty where a frame shows none. */
  private static String atField(List<String> lines) {
    return lines.stream()
        .map(CURSOR_ROW::matcher)
        .filter(Matcher::matches)
        .map(row -> row.group(1))
        .findFirst()
        .orElse("");
  }

  private void lose() {
    toPad("sp", "Sparrow");
    armAndCount();
    mark("next: EJECTION");
    pad.press("n");
    pad.sees("next: TOUCHDOWN");
    pad.press("Enter");
    pad.sees("Debrief: Sparrow");
    pad.press("Tab");
    pad.seesLine("> Lies toward");
    pad.type("NE");
    toField("Landed on");
    pad.type("lost");
    pad.press("F2");
    pad.seesLine("Sparrow", "flown", "lost");
    lookForIt();
  }

  /** Two lines of sight that cross at a right angle. */
  private void lookForIt() {
    pad.press("i");
    pad.sees("n adds");
    pad.press("n");
    pad.seesLine("> Toward");
    pad.type("45");
    pad.press("F2");
    pad.sees("45° NE");
    pad.press("n");
    pad.seesLine("> Toward");
    pad.fields("315", "200m", "90");
    pad.press("F2");
    // A base of 200 m under 45° at both ends: 200 m × sin 45° = 141.4 m, 464 ft.
    pad.sees("Look 464 ft from the pad toward 45° NE");
    pad.escape("Flown 4");
  }

  private void scrub() {
    toPad("kes", "Kestrel");
    pad.press("w");
    pad.sees("Like 6g9 SW, calm or B3 W");
    pad.type("24 SW");
    pad.press("Enter");
    pad.seesLine(" NO-GO");
    pad.press("a");
    pad.sees("The check says NO-GO: limit");
    pad.type("they ask for it");
    pad.press("Enter");
    pad.sees("ARMED");
    count();
    pad.press("h");
    pad.sees("HOLD");
    pad.escape("Pad · Kestrel");
    pad.escape("Flown 4");
    pad.press("s");
    pad.seesLine("Kestrel", "scrubbed");
  }

  private void readBack() {
    assertThat(
            pad.sqlite(
                "SELECT rocket.name, status, verdict, liftoff_at IS NOT NULL,"
                    + " ejection_mark_s IS NOT NULL, touchdown_mark_s IS NOT NULL, ejection, burn,"
                    + " landed_on, against FROM flight JOIN rocket ON rocket.id = flight.rocket"
                    + " JOIN day ON day.id = flight.day WHERE day.date = '"
                    + LocalDate.now(ZoneId.systemDefault())
                    + "' ORDER BY place"))
        .containsExactly(
            "Kestrel|flown|GO|1|1|1|late|nominal|grass|",
            "Sparrow|flown|GO|1|1|1|at_apogee|nominal|grass|",
            "Heron|flown|GO|1|0|0|at_apogee|cato_case|grass|",
            "Sparrow|flown|GO|1|0|0|at_apogee|nominal|lost|",
            "Kestrel|scrubbed|NO-GO|0|0|0||||they ask for it");
    assertThat(pad.sqlite("SELECT cause, igniter, up_s > 0 FROM attempt"))
        .containsExactly("igniter_dead|own copper|1");
    assertThat(pad.sqlite("SELECT text, severity FROM fix"))
        .containsExactly("new body tube|grounds_it");
    assertThat(
            pad.sqlite(
                "SELECT bearing_deg, station_distance_m FROM sighting JOIN flight"
                    + " ON flight.id = sighting.flight WHERE landed_on = 'lost'"
                    + " ORDER BY bearing_deg"))
        .containsExactly("45.0|", "315.0|200.0");
    assertThat(pad.sqlite("SELECT count(*) FROM weather WHERE wind_mean_mps > 10"))
        .containsExactly("1");
  }
}
