package padside.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Which lines of which runs somebody has.
 *
 * @param runs by the run's name its spans, in order, none touching the next
 */
public record Holdings(Map<String, List<Span>> runs) {
  /** The name of a run of the program. */
  public static final Pattern RUN = Pattern.compile("[0-9a-f]{20}");

  /** Lines of one run, by their count in it, the first and the last included. */
  public record Span(long first, long last) {
    public Span {
      if (first < 0 || last < first) {
        throw new IllegalArgumentException("lines " + first + " to " + last);
      }
    }

    public long count() {
      return last - first + 1;
    }
  }

  public Holdings {
    SortedMap<String, List<Span>> joined = new TreeMap<>();
    runs.forEach(
        (run, spans) -> {
          if (!isRun(run)) {
            throw new IllegalArgumentException("no name of a run: " + run);
          }
          if (!spans.isEmpty()) {
            joined.put(run, joined(spans));
          }
        });
    runs = Collections.unmodifiableSortedMap(joined);
  }

  /** Whether a text has the form of a run's name. */
  public static boolean isRun(String text) {
    return RUN.matcher(text).matches();
  }

  /** Lines of one run. */
  public static Holdings of(String run, Span span) {
    return new Holdings(Map.of(run, List.of(span)));
  }

  public static Holdings none() {
    return new Holdings(Map.of());
  }

  /** How many lines they are. */
  public long count() {
    return runs.values().stream().flatMap(List::stream).mapToLong(Span::count).sum();
  }

  public boolean isEmpty() {
    return runs.isEmpty();
  }

  /** Whether a line is among them. */
  public boolean has(String run, long n) {
    List<Span> spans = runs.getOrDefault(run, List.of());
    int low = 0;
    int high = spans.size() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      Span span = spans.get(middle);
      if (n < span.first()) {
        high = middle - 1;
      } else if (n > span.last()) {
        low = middle + 1;
      } else {
        return true;
      }
    }
    return false;
  }

  /** What of these the others have too. */
  public Holdings within(Holdings others) {
    return without(without(others));
  }

  /** These and those. */
  public Holdings with(Holdings others) {
    Map<String, List<Span>> all = new TreeMap<>(runs);
    others.runs.forEach(
        (run, spans) ->
            all.merge(
                run,
                spans,
                (mine, theirs) -> {
                  List<Span> both = new ArrayList<>(mine);
                  both.addAll(theirs);
                  return both;
                }));
    return new Holdings(all);
  }

  /** What of these the others lack. */
  public Holdings without(Holdings others) {
    Map<String, List<Span>> left = new TreeMap<>();
    runs.forEach(
        (run, spans) -> left.put(run, without(spans, others.runs.getOrDefault(run, List.of()))));
    return new Holdings(left);
  }

  private static List<Span> without(List<Span> spans, List<Span> others) {
    List<Span> left = new ArrayList<>();
    for (Span span : spans) {
      long from = span.first();
      for (Span other : others) {
        if (other.last() >= from && other.first() <= span.last()) {
          between(from, other.first() - 1).ifPresent(left::add);
          from = other.last() + 1;
        }
      }
      between(from, span.last()).ifPresent(left::add);
    }
    return left;
  }

  private static Optional<Span> between(long first, long last) {
    return last < first ? Optional.empty() : Optional.of(new Span(first, last));
  }

  private static List<Span> joined(List<Span> spans) {
    List<Span> joined = new ArrayList<>();
    for (Span span : spans.stream().sorted(Comparator.comparingLong(Span::first)).toList()) {
      Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last == null || span.first() > last.last() + 1) {
        joined.add(span);
      } else {
        joined.set(joined.size() - 1, new Span(last.first(), Math.max(last.last(), span.last())));
      }
    }
    return List.copyOf(joined);
  }
}
