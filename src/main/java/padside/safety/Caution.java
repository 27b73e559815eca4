package padside.safety;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A rule no number tells, in plain words of our own, with where it comes from. */
public record Caution(Topic about, Sourced<String> text) {
  /** What a caution is about. */
  public enum Topic {
    MATERIALS,
    GUIDANCE,
    IGNITION,
    PEOPLE,
    FLIGHT,
    GROUND,
    RECOVERY,
    PERMISSION,
    CLUSTERS,
    STAGES,
    COLD;

    /** As rule files and screens say it. */
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Topic> find(String words) {
      return List.of(values()).stream().filter(topic -> topic.words().equals(words)).findFirst();
    }
  }
}
