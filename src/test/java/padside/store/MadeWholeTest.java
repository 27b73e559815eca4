package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;

/** A record that shows at once reads to the letter as SQLite's own JSON functions would have it. */
class MadeWholeTest {
  private static final List<String> TEXTS =
      List.of(
          "", "a \"b\" \\ /", "tab\tand\nline", "\u0001\u001f\u007f", "é ü 火 🚀", "{\"v\":1}", "'");

  @TempDir Path folder;

  @Test
  void whatever_is_in_its_cells() throws Exception {
    Random random = new Random(Trials.seed());
    List<RecordId> made = new ArrayList<>();
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(1))) {
      for (int i = 0; i < 300; i++) {
        Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
        made.addAll(log.save(Action.create("add", kind, facts(random))));
      }
    }
    assertThat(made).hasSize(300);
    assertThat(LogState.rows(folder, "SELECT doc FROM record ORDER BY id"))
        .as("seed %d", Trials.seed())
        .isEqualTo(
            LogState.rows(
                folder,
                """
                SELECT (SELECT json_group_object(field, json_object('v', json(value), 'y', typed))
                  FROM cell WHERE cell.record = record.id AND head = 1)
                FROM record ORDER BY id"""));
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
      case 1 -> Facts.Cell.of(random.nextInt(), text(random));
      case 2 ->
          Facts.Cell.of(random.nextDouble() * Math.pow(10, random.nextInt(40) - 20), text(random));
      case 3 -> Facts.Cell.of(random.nextBoolean());
      case 4 -> Facts.Cell.of(List.of(text(random), 1, text(random)), text(random));
      default -> Facts.Cell.of(text(random), text(random));
    };
  }

  private static String text(Random random) {
    return TEXTS.get(random.nextInt(TEXTS.size()));
  }
}
