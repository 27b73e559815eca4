package padside;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.summingInt;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import padside.SourceFile.Method;

/** Holds files, methods and rooms to the sizes in DEVELOPERS.md: it is files that rot. */
class SizeTest {
  private static final List<SourceFile> PROGRAM = SourceFile.below(Path.of("src/main/java"));
  private static final List<SourceFile> TESTS = SourceFile.below(Path.of("src/test/java"));
  private static final Limits FILE = Limits.of("lines of a file");
  private static final Limits METHOD = Limits.of("lines of a method, annotations apart");
  private static final Limits PARAMETERS = Limits.of("parameters of a method");
  private static final Limits ROOM = Limits.of("public types of a room");

  /** One row of the guide's table of sizes. */
  private record Limits(OptionalInt median, OptionalInt ninetyPercent, int most) {
    static Limits of(String what) {
      List<String> row =
          GuideTable.headed("what", "median at most", "90 % at most", "never above", "measured in")
              .rows()
              .stream()
              .filter(cells -> cells.get(0).equals(what))
              .findFirst()
              .orElseThrow(() -> new AssertionError("DEVELOPERS.md sets no size for " + what));
      return new Limits(number(row.get(1)), number(row.get(2)), Integer.parseInt(row.get(3)));
    }

    private static OptionalInt number(String cell) {
      return GuideTable.list(cell).stream().mapToInt(Integer::parseInt).findFirst();
    }
  }

  @Test
  void no_file_is_too_long() {
    assertThat(everything().filter(file -> file.lines() > FILE.most()))
        .as("files above %d lines: split them by what they know", FILE.most())
        .extracting(file -> file.path() + " " + file.lines())
        .isEmpty();
  }

  @Test
  void files_are_short_as_a_rule() {
    List<Integer> lines = PROGRAM.stream().map(SourceFile::lines).toList();

    assertThat(quantile(lines, 0.5)).as("median lines").isLessThanOrEqualTo(median(FILE));
    assertThat(quantile(lines, 0.9)).as("90 % lines").isLessThanOrEqualTo(ninety(FILE));
  }

  @Test
  void no_method_is_too_long() {
    assertThat(methods(everything()).filter(method -> method.lines() > METHOD.most()))
        .as("methods above %d lines: give their steps names", METHOD.most())
        .extracting(method -> method.place() + " " + method.lines())
        .isEmpty();
  }

  @Test
  void methods_are_short_as_a_rule() {
    List<Integer> lines = methods(PROGRAM.stream()).map(Method::lines).toList();

    assertThat(quantile(lines, 0.9)).as("90 % lines").isLessThanOrEqualTo(ninety(METHOD));
  }

  @Test
  void no_method_takes_too_much() {
    assertThat(methods(PROGRAM.stream()).filter(method -> method.parameters() > PARAMETERS.most()))
        .as("methods with more than %d parameters: make a record of them", PARAMETERS.most())
        .extracting(method -> method.place() + " " + method.parameters())
        .isEmpty();
  }

  @Test
  void no_room_shows_too_much() {
    Map<Path, Integer> shown =
        PROGRAM.stream()
            .collect(
                groupingBy(
                    file -> file.path().getParent(),
                    TreeMap::new,
                    summingInt(SourceFile::publicTypes)));

    assertThat(shown)
        .as("public types of a room: keep inside what no other room needs")
        .isNotEmpty()
        .allSatisfy(
            (room, types) -> assertThat(types).as("" + room).isLessThanOrEqualTo(ROOM.most()));
  }

  /** The smallest value that at least this share of the values does not exceed. */
  private static int quantile(List<Integer> values, double share) {
    int rank = (int) Math.ceil(share * values.size());
    return values.stream().sorted().skip(rank - 1L).findFirst().orElseThrow();
  }

  private static int median(Limits limits) {
    return limits.median().orElseThrow();
  }

  private static int ninety(Limits limits) {
    return limits.ninetyPercent().orElseThrow();
  }

  private static Stream<SourceFile> everything() {
    return Stream.concat(PROGRAM.stream(), TESTS.stream());
  }

  private static Stream<Method> methods(Stream<SourceFile> files) {
    return files.flatMap(file -> file.methods().stream());
  }
}
