package padside.safety;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import padside.safety.RuleBlock.Broken;
import padside.units.Reading;

/** The rule sets that come with the program, and rule files of one's own. */
public final class RuleSets {
  private static final List<String> NAMES =
      List.of("us-model", "us-high-power", "canada-model", "canada-high-power", "uk-club");
  private static final String HOUSE = "house";
  private static final String SCATTER = "scatter";
  private static final Map<String, RuleSet> READ = new ConcurrentHashMap<>();

  private RuleSets() {}

  /** Every safety code by name, the usual one first. */
  public static List<String> names() {
    return NAMES;
  }

  /** The rule set of that name, or a sentence that lists the names. */
  public static Reading<RuleSet> find(String name) {
    return NAMES.contains(name)
        ? Reading.of(READ.computeIfAbsent(name, RuleSets::shipped))
        : Reading.refused("No rule set \"" + name + "\"; choose " + String.join(", ", NAMES) + ".");
  }

  /**
   * Reads a rule file.
   *
   * @param file its name, for the sentence that says what is wrong with it
   */
  public static Reading<RuleSet> read(String json, String file) {
    try {
      return Reading.of(RuleFile.read(json, file));
    } catch (Broken e) {
      return Reading.refused(e.getMessage());
    }
  }

  /** The rules beside the codes, as they come with the program. */
  public static HouseRules house() {
    return new HouseRules(READ.computeIfAbsent(HOUSE, RuleSets::shipped));
  }

  /** How far one flight differs from the next, as it comes with the program. */
  public static ScatterSizes scatter() {
    return ScatterSizes.of(READ.computeIfAbsent(SCATTER, RuleSets::shipped));
  }

  private static RuleSet shipped(String name) {
    String file = "/data/rules/" + name + ".json";
    try (InputStream stream = RuleSets.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalStateException("not in the program: " + file);
      }
      return RuleFile.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8), file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Broken e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
  }
}
