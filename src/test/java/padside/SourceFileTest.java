package padside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.SourceFile.Method;

/** Sizes are counted as a reader would count them. */
class SourceFileTest {
  private static final String TEXT =
      """
      package made.up;

      /** Above the method: not counted. */
      public record Six(int a, int b, int c, int d, int e, int f) {
        private static final int SEVENTH = 7;

        public Six(int a, int b, int c, int d, int e, int f) {
          this.a = a; this.b = b; this.c = c; this.d = d; this.e = e; this.f = f;
        }

        Six(int a, int b) {
          this(a, b, 3, 4, 5, 6);
        }

        @SuppressWarnings({
          "one",
          "two"
        })
        static int sum(
            int first,
            int second,
            int third) {
          return first + second + third;
        }

        interface Bodiless {
          int none(int parameter);

          default int one() { return 1; }
        }
      }

      enum Aside { ONE }
      """;

  @TempDir private Path folder;

  @Test
  void lines_and_public_types_are_counted() throws IOException {
    assertThat(read().lines()).isEqualTo(33);
    assertThat(read().publicTypes()).isEqualTo(1);
  }

  @Test
  void every_method_with_a_body_is_found() throws IOException {
    assertThat(read().methods())
        .extracting(Method::place)
        .containsExactly(
            "Six.java:7 Six.<init>",
            "Six.java:11 Six.<init>",
            "Six.java:19 Six.sum",
            "Six.java:29 Bodiless.one");
  }

  @Test
  void a_method_is_measured_below_its_annotations() throws IOException {
    assertThat(read().methods()).extracting(Method::lines).containsExactly(3, 3, 6, 1);
  }

  @Test
  void only_a_constructor_that_repeats_the_components_is_free() throws IOException {
    assertThat(read().methods()).extracting(Method::parameters).containsExactly(0, 2, 3, 0);
  }

  private SourceFile read() throws IOException {
    Files.writeString(folder.resolve("Six.java"), TEXT);
    return SourceFile.below(folder).get(0);
  }
}
