package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two machines with a log each and a folder both can reach: what was typed on either is on both
 * afterwards, and where both said something different one key chooses.
 */
class TwoMachinesIT {
  @TempDir Path folder;

  private PadTable laptop;
  private PadTable desktop;
  private Path stick;

  @BeforeEach
  void two_tables_and_a_stick() throws IOException {
    stick = Files.createDirectories(folder.resolve("stick"));
    laptop = new PadTable(Files.createDirectories(folder.resolve("laptop")), 80, 24);
    desktop = new PadTable(Files.createDirectories(folder.resolve("desktop")), 60, 20);
  }

  @AfterEach
  void clear_tables() {
    laptop.close();
    desktop.close();
  }

  @Test
  void what_either_typed_is_on_both_and_one_key_chooses_between_two_motors() {
    String flight = flightOnBoth();
    motor(laptop, flight, "B6-4");
    motor(desktop, flight, "A8-3");
    visit(laptop, "B6-4", () -> again(laptop, false));
    visit(
        desktop,
        "A8-3",
        () -> {
          again(desktop, false);
          desktop.sees("1 record in conflict: r");
          choosing(desktop, "B6-4");
          again(desktop, false);
        });
    visit(laptop, "Heron", () -> again(laptop, false));

    for (PadTable table : List.of(laptop, desktop)) {
      assertThat(table.sqlite("SELECT id, motor FROM flight")).containsExactly(flight + "|B6-4");
      assertThat(table.sqlite("SELECT count(*) FROM head WHERE field = 'motor'"))
          .containsExactly("1");
      assertThat(table.sqlite("SELECT name FROM rocket ORDER BY name"))
          .containsExactly("Heron", "Wren");
    }
    String lines = "SELECT raw FROM op JOIN run ON run.id = op.run ORDER BY run.name, n";
    assertThat(laptop.sqlite(lines)).isEqualTo(desktop.sqlite(lines));
    assertThat(laptop.padside("flights", "--json").out())
        .contains("\"motor\" : \"B6-4\"")
        .isEqualTo(desktop.padside("flights", "--json").out());
  }

  /** A flight of the laptop and a rocket of the desktop, on both by way of the stick. */
  private String flightOnBoth() {
    String field = laptop.add("field", "{\"name\":\"Mill Meadow\"}").get(0);
    String date = "{\"date\":\"2026-05-02\",\"field\":\"%s\"}";
    String day = laptop.add("day", date.formatted(field)).get(0);
    String rocket = laptop.add("rocket", "{\"name\":\"Heron\"}").get(0);
    String card =
        "{\"rocket\":\"%s\",\"day\":\"%s\",\"motor\":\"C6-5\",\"status\":\"flown\",\"burn\":\"nominal\"}";
    String flight = laptop.add("flight", card.formatted(rocket, day)).get(0);
    desktop.add("rocket", "{\"name\":\"Wren\"}");

    visit(laptop, "Heron", () -> firstTime(laptop, false));
    visit(
        desktop,
        "No day is open yet.",
        () -> {
          firstTime(desktop, true);
          desktop.press("Escape");
          desktop.sees("Heron");
        });
    visit(laptop, "Heron", () -> again(laptop, true));
    return flight;
  }

  /** The program is started, something done there, and left. */
  private static void visit(PadTable table, String first, Runnable what) {
    table.launch("");
    table.sees(first);
    what.run();
    table.quit();
  }

  private static void motor(PadTable table, String flight, String motor) {
    table.add("flight", "{\"id\":\"" + flight + "\",\"motor\":\"" + motor + "\"}");
  }

  /** The place is typed once, and machines nobody knows are let in by a key. */
  private void firstTime(PadTable table, boolean asks) {
    table.press("y");
    table.sees("This log was never synchronised.");
    table.press("Enter");
    table.sees("Where is the other machine");
    table.typeThen(stick.toString(), "Enter");
    exchanged(table, asks);
  }

  /** From the Day screen to synchronised. */
  private static void again(PadTable table, boolean asks) {
    int before = table.keys();
    table.press("y");
    table.sees("Last");
    table.press("Enter");
    assertThat(table.keys() - before).isLessThanOrEqualTo(3);
    exchanged(table, asks);
    table.press("Escape");
    table.sees("Day ·");
  }

  private static void exchanged(PadTable table, boolean asks) {
    if (asks) {
      table.sees("t takes their lines");
      table.press("t");
    }
    table
        .tmux()
        .await(
            "how it ended, in the list and told anew",
            lines -> lines.stream().filter(line -> line.contains("Synchronised with")).count() > 1);
  }

  private static void choosing(PadTable table, String motor) {
    table.press("r");
    List<String> seen = table.sees("Motor: which is right?");
    int left =
        seen.stream()
            .filter(line -> line.contains(motor) && !line.contains(" on "))
            .findFirst()
            .orElseThrow()
            .indexOf(motor);
    table.press(left < 20 ? "1" : "2");
    table.sees("Nothing is open");
    table.press("Escape");
    table.sees("Day ·");
  }
}
