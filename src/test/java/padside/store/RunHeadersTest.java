package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;

/** The few headers of a log are found without reading its many lines. */
class RunHeadersTest {
  @TempDir Path folder;

  /** The judge is SQLite's own plan: it searches the lines by their run and count, never all. */
  @Test
  void every_question_about_headers_searches_for_them() throws Exception {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(1))) {
      log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, "Bee")));
    }
    for (String end :
        List.of(
            "",
            "WHERE raw ->> '$.head.dev' = 'x' ORDER BY t DESC, run.name DESC LIMIT 1",
            "ORDER BY t, run.name")) {
      String plan =
          String.join(
              "\n",
              LogState.rows(
                  folder, "EXPLAIN QUERY PLAN SELECT raw, run.name FROM" + RunHeaders.ALL + end));
      assertThat(plan).contains("SEARCH op USING INDEX").doesNotContain("SCAN op");
    }
    assertThat(LogState.rows(folder, "SELECT run.name, n FROM" + RunHeaders.ALL))
        .containsExactly(new PretendMachine(1).freshRun() + "|0");
  }
}
