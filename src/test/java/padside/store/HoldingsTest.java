package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import padside.Trials;
import padside.store.Holdings.Span;

/** Held to plain sets of numbers, one an operation. */
class HoldingsTest {
  private static final String A = "00000000000000000001";
  private static final String B = "00000000000000000002";
  private static final int LARGEST = 24;

  @Test
  void spans_that_touch_or_overlap_are_one() {
    assertThat(
            new Holdings(Map.of(A, List.of(new Span(7, 9), new Span(0, 3), new Span(4, 4)))).runs())
        .isEqualTo(Map.of(A, List.of(new Span(0, 4), new Span(7, 9))));
  }

  @Test
  void a_run_without_spans_is_not_held() {
    assertThat(new Holdings(Map.of(A, List.of()))).isEqualTo(Holdings.none());
    assertThat(Holdings.none().isEmpty()).isTrue();
    assertThat(Holdings.of(A, new Span(0, 0)).isEmpty()).isFalse();
  }

  @Test
  void what_is_no_run_and_no_span_is_refused() {
    for (String name :
        List.of(
            "",
            "1",
            "../../../../etc/passwd",
            A.toUpperCase(Locale.ROOT).replace('0', 'F'),
            A + "0")) {
      assertThatThrownBy(() -> Holdings.of(name, new Span(0, 1)))
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> new Span(-1, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Span(2, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void with_and_without_are_union_and_difference_of_sets() {
    Random random = Trials.random(1);
    for (int i = 0; i < 5000; i++) {
      Holdings one = holdings(random);
      Holdings other = holdings(random);
      Set<String> union = numbers(one);
      union.addAll(numbers(other));
      Set<String> difference = numbers(one);
      difference.removeAll(numbers(other));
      assertThat(numbers(one.with(other))).as("%s with %s", one, other).isEqualTo(union);
      assertThat(numbers(one.without(other))).as("%s without %s", one, other).isEqualTo(difference);
      assertThat(one.with(other).count()).isEqualTo(union.size());
      assertThat(one.without(other).isEmpty()).isEqualTo(difference.isEmpty());
      assertThat(one.without(other).with(other)).isEqualTo(one.with(other));
      assertApart(one.with(other));
      assertApart(one.without(other));
    }
  }

  private static void assertApart(Holdings holdings) {
    for (List<Span> spans : holdings.runs().values()) {
      for (int i = 1; i < spans.size(); i++) {
        assertThat(spans.get(i).first()).isGreaterThan(spans.get(i - 1).last() + 1);
      }
    }
  }

  private static Holdings holdings(Random random) {
    Map<String, List<Span>> runs = new TreeMap<>();
    for (String run : List.of(A, B)) {
      List<Span> spans = new ArrayList<>();
      for (int i = random.nextInt(5); i > 0; i--) {
        int first = random.nextInt(LARGEST);
        spans.add(new Span(first, first + random.nextInt(LARGEST - first)));
      }
      runs.put(run, spans);
    }
    return new Holdings(runs);
  }

  private static Set<String> numbers(Holdings holdings) {
    Set<String> numbers = new HashSet<>();
    holdings
        .runs()
        .forEach(
            (run, spans) -> {
              for (Span span : spans) {
                for (long n = span.first(); n <= span.last(); n++) {
                  numbers.add(run + "." + n);
                }
              }
            });
    return numbers;
  }
}
