package padside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What may stand at the top of the project, and what no text in it may contain. */
class WordsTest {
  private static final Path TOP = Path.of("");
  private static final List<String> VISIBLE =
      List.of("README.md", "DEVELOPERS.md", "pom.xml", "src", "data", "shared", "bin");
  private static final List<String> HIDDEN = List.of(".ci", ".gitignore");
  private static final String BUILT = "target";

  /** Something no text may contain, and why. */
  private record Ban(String name, Pattern words, String reason) {}

  private static final List<Ban> BANS =
      List.of(
          folder("work", "a path of the machine it was written on works on no other"),
          folder("tmp/wt", "a path of the machine it was written on works on no other"),
          folder("root", "somebody's home is nobody else's; write ~"),
          folder("home", "somebody's home is nobody else's; write ~"),
          folder("Users", "somebody's home is nobody else's; write ~"));

  /** The folder as an absolute path: put together here so that this file does not contain it. */
  private static Ban folder(String name, String reason) {
    return new Ban(name, Pattern.compile("(?<![\\w.~})-])/" + name + "/"), reason);
  }

  @TestFactory
  Stream<DynamicTest> no_text_contains_a_path_of_one_machine() {
    return BANS.stream()
        .map(
            ban ->
                DynamicTest.dynamicTest(
                    ban.name(),
                    () ->
                        assertThat(texts().flatMap(file -> found(ban, file)))
                            .as(ban.reason())
                            .isEmpty()));
  }

  @Test
  void a_path_of_one_machine_is_found() {
    String slash = "/";
    Pattern work = BANS.get(0).words();

    assertThat(slash + "work/main").containsPattern(work);
    assertThat("cd " + slash + "work/main").containsPattern(work);
    assertThat("\"" + slash + "work/main\"").containsPattern(work);
    assertThat("src/work/main").doesNotContainPattern(work);
    assertThat("~/work/main").doesNotContainPattern(work);
  }

  @Test
  void nothing_stray_stands_at_the_top() throws IOException {
    try (Stream<Path> entries = Files.list(Path.of("."))) {
      assertThat(entries.map(entry -> entry.getFileName().toString()))
          .as("what a newcomer sees first is what the project is made of")
          .filteredOn(name -> !name.startsWith(".") && !name.equals(BUILT))
          .isSubsetOf(VISIBLE);
    }
  }

  @Test
  void there_is_one_test_command() {
    assertThat(Stream.of(".ci/run", "DEVELOPERS.md", "README.md").map(Path::of))
        .as("what a newcomer, a contributor and the build server run is the same")
        .filteredOn(Files::exists)
        .allSatisfy(
            file ->
                assertThat(lines(file))
                    .anyMatch(line -> line.matches("(.*[`&;] ?)?mvn -B verify\\b.*")));
  }

  private static Stream<Path> texts() {
    return Stream.concat(VISIBLE.stream(), HIDDEN.stream())
        .map(TOP::resolve)
        .filter(Files::exists)
        .flatMap(WordsTest::files);
  }

  private static Stream<Path> files(Path top) {
    try (Stream<Path> walk = Files.walk(top)) {
      return walk.filter(Files::isRegularFile).toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<String> found(Ban ban, Path file) {
    List<String> lines = lines(file);
    return IntStream.range(0, lines.size())
        .filter(at -> ban.words().matcher(lines.get(at)).find())
        .mapToObj(at -> "%s:%d: %s".formatted(file, at + 1, lines.get(at).strip()));
  }

  /** Byte for byte, so that a file that is no text is searched as well. */
  private static List<String> lines(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
