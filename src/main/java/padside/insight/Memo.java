package padside.insight;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Answers to questions that always have the same answer; those asked last are kept. Any thread. */
final class Memo<K, V> {
  private final Map<K, V> known;

  Memo(int kept) {
    known =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > kept;
          }
        };
  }

  /** The answer, worked out where it is not known. */
  V of(K question, Function<K, V> answer) {
    synchronized (known) {
      V old = known.get(question);
      if (old != null) {
        return old;
      }
    }
    V fresh = answer.apply(question);
    synchronized (known) {
      known.put(question, fresh);
    }
    return fresh;
  }
}
