package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Fault;

/** What the made-up season teaches of lots, told on the command line. */
class LotsCommandTest {
  @TempDir static Path folder;

  @BeforeAll
  static void write() throws Fault {
    DemoFolder.write(folder.resolve("season"));
  }

  private static String run(String... options) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    List<String> line = new java.util.ArrayList<>();
    line.addAll(List.of("lots", "--log", folder.resolve("season").toString()));
    line.addAll(List.of(options));
    int status =
        CommandRun.of(new PrintWriter(out), new PrintWriter(err), line.toArray(String[]::new));
    assertThat(err.toString()).isEmpty();
    assertThat(status).isZero();
    return out.toString();
  }

  @Test
  void lots_are_told_suspect_first() {
    String out = run();

    assertThat(out).startsWith("Lots, suspect first\n! ");
    assertThat(out).containsSubsequence("Motor types", "Delays", "label");
    assertThat(out.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(78));
  }

  @Test
  void json_tells_the_same_in_si() throws IOException {
    Map<String, Object> json = JSON.std.mapFrom(run("--json"));

    assertThat(json)
        .containsOnlyKeys(
            "lots", "types", "date_codes", "key_pressed", "igniters", "delays", "suits");
    Map<?, ?> first = (Map<?, ?>) ((List<?>) json.get("lots")).get(0);
    assertThat((Integer) first.get("failed")).isPositive();
    List<?> share = (List<?>) first.get("share_95");
    double seen = 1.0 * (Integer) first.get("failed") / (Integer) first.get("of");
    assertThat((Double) share.get(0)).isLessThan(seen);
    assertThat((Double) share.get(1)).isGreaterThan(seen);
    assertThat((String) first.get("words")).contains(first.get("failed") + " of ");
  }
}
