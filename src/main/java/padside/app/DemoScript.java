package padside.app;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The script of the made-up season, {@code data/demo-season.json}: what was typed when, and what of
 * the truth the flier does not know.
 *
 * @param seed of the scatter
 */
record DemoScript(long seed, DemoScatter scatter, List<DemoStep> steps) {
  private static final String PLACE = "/data/demo-season.json";
  private static final Set<String> ADDED_TOGETHER =
      Set.of("rocket", "device", "altimeter", "field", "lot");

  /** Keeps its own list. */
  DemoScript {
    steps = List.copyOf(steps);
  }

  /** The script that comes inside the jar. */
  static DemoScript shipped() {
    try (InputStream json = DemoScript.class.getResourceAsStream(PLACE)) {
      if (json == null) {
        throw new IllegalStateException("not in the jar:" + PLACE);
      }
      Map<String, Object> script = JSON.std.mapFrom(json);
      return new DemoScript(
          ((Number) script.get("seed")).longValue(),
          DemoScatter.of((Map<?, ?>) script.get("scatter")),
          ((List<?>) script.get("steps")).stream().map(DemoScript::step).toList());
    } catch (IOException e) {
      throw new UncheckedIOException("unreadable in the jar:" + PLACE, e);
    }
  }

  /** The steps, those together that add things of one kind to fleet and range box at one time. */
  List<List<DemoStep>> acts() {
    List<List<DemoStep>> acts = new ArrayList<>();
    String last = "";
    for (DemoStep step : steps) {
      if (!step.does().equals(last) || !ADDED_TOGETHER.contains(last)) {
        acts.add(new ArrayList<>());
      }
      acts.get(acts.size() - 1).add(step);
      last = step.does();
    }
    return acts;
  }

  private static DemoStep step(Object json) {
    Map<String, String> words = new LinkedHashMap<>();
    ((Map<?, ?>) json).forEach((word, text) -> words.put((String) word, (String) text));
    return new DemoStep(words);
  }
}
