package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;

/**
 * A record that shows at once reads to the letter as SQLite's own JSON functions have it, and gives
 * its cells back as they came once more is said of it.
 */
class MadeWholeTest {
  private static final List<String> TEXTS =
      List.of(
          "", "a \"b\" \\ /", "tab\tand\nline", "\u0001\u001f\u007f", "é ü 火 🚀", "{\"v\":1}", "'");

  private static final String CELLS =
      """
      SELECT record.name, field, n, cell.t, value, typed, head FROM every_cell AS cell
      JOIN record ON record.id = cell.record WHERE field <> 'more' ORDER BY record.name, field""";

  private static final List<Kind> KINDS = List.of(Kind.values());

  @TempDir Path folder;

  @Test
  void whatever_is_in_its_cells() throws Exception {
    Random random = new Random(Trials.seed());
    Map<RecordId, Facts> made = new LinkedHashMap<>();
    Map<RecordId, Kind> kinds = new HashMap<>();
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(1))) {
      for (int i = 0; i < 300; i++) {
        Kind kind = KINDS.get(random.nextInt(KINDS.size()));
        Facts facts = facts(random);
        RecordId id = log.save(Action.create("add", kind, facts)).get(0);
        made.put(id, facts);
        kinds.put(id, kind);
      }
    }
    List<String> whole = LogState.rows(folder, "SELECT name FROM record WHERE whole = 1");
    List<String> cells = LogState.rows(folder, CELLS);
    assertThat(whole).as("seed %d", Trials.seed()).hasSizeBetween(30, 270);
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(2))) {
      for (RecordId id : made.keySet()) {
        Facts more = Facts.none().with("more", Facts.Cell.of(1L));
        log.save(Action.change("say more", kinds.get(id), id, more));
      }
      for (Map.Entry<RecordId, Facts> each : made.entrySet()) {
        Facts shown = log.find(kinds.get(each.getKey()), each.getKey()).orElseThrow().facts();
        assertThat(shown.without("more").cells())
            .as("seed %d", Trials.seed())
            .isEqualTo(each.getValue().cells());
      }
    }
    assertThat(LogState.rows(folder, "SELECT name FROM record WHERE whole = 1")).isEmpty();
    assertThat(LogState.rows(folder, CELLS)).as("seed %d", Trials.seed()).isEqualTo(cells);
  }

  private static Facts facts(Random random) {
    Facts facts = Facts.none();
    for (int i = 0; i <= random.nextInt(6); i++) {
      String field =
          random.nextInt(8) == 0 ? "Of a \"newer\" version é" : "field_" + random.nextInt(9);
      facts = facts.with(field, cell(random));
    }
    return facts;
  }

  private static Facts.Cell cell(Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> Facts.Cell.emptied();
      case 1 -> Facts.Cell.of((long) random.nextInt(), text(random));
      case 2 ->
          Facts.Cell.of(random.nextDouble() * Math.pow(10, random.nextInt(40) - 20), text(random));
      case 3 -> Facts.Cell.of(random.nextBoolean());
      case 4 -> Facts.Cell.of(List.of(text(random), 1L, text(random)), text(random));
      default -> Facts.Cell.of(text(random), text(random));
    };
  }

  private static String text(Random random) {
    return TEXTS.get(random.nextInt(TEXTS.size()));
  }
}
