package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.RecordId;
import padside.screen.Bookmark;

class PlaceKeeperTest {
  private static final Bookmark DAY = mark("day screen", "");
  private static final Bookmark CARD =
      new Bookmark(
          "card",
          Optional.of(new RecordId("0123456789abcdef0123.12")),
          Optional.of("wind"),
          true,
          "half \"a\" word, été");

  @TempDir Path folder;

  private static Bookmark mark(String screen, String text) {
    return new Bookmark(screen, Optional.empty(), Optional.empty(), false, text);
  }

  private PlaceKeeper keeper() {
    return new PlaceKeeper(
        folder,
        bug -> {
          throw new AssertionError(bug);
        });
  }

  private List<Bookmark> read(String text) throws IOException {
    Files.writeString(folder.resolve(PlaceKeeper.NAME), text);
    return keeper().read();
  }

  @Test
  void the_place_is_read_as_it_was_kept_last() {
    PlaceKeeper keeper = keeper();
    keeper.keep(List.of(DAY));
    keeper.keep(List.of(DAY, CARD));
    keeper.close();

    assertThat(keeper().read()).containsExactly(DAY, CARD);
  }

  @Test
  void a_place_that_has_not_changed_is_not_written_again() throws IOException {
    PlaceKeeper keeper = keeper();
    keeper.keep(List.of(DAY));
    keeper.close();
    Files.delete(folder.resolve(PlaceKeeper.NAME));

    keeper.keep(List.of(DAY));
    assertThat(keeper().read()).isEmpty();
  }

  @Test
  void once_left_there_is_no_place_any_more() {
    PlaceKeeper keeper = keeper();
    keeper.keep(List.of(DAY, CARD));
    keeper.forget();
    keeper.keep(List.of(DAY));
    keeper.close();

    assertThat(keeper().read()).isEmpty();
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_folder_that_takes_nothing_is_of_no_account() {
    PlaceKeeper keeper =
        new PlaceKeeper(
            folder.resolve("not there"),
            bug -> {
              throw new AssertionError(bug);
            });
    keeper.keep(List.of(DAY));
    keeper.forget();
    keeper.close();

    assertThat(keeper.read()).isEmpty();
  }

  @Test
  void a_broken_or_foreign_file_is_no_place() throws IOException {
    String good = PlaceText.of(List.of(DAY, CARD));
    assertThat(read(good)).containsExactly(DAY, CARD);
    for (int length = 0; length < good.length(); length++) {
      assertThat(read(good.substring(0, length))).isEmpty();
    }
    assertThat(read(good.replace("\"v\":1", "\"v\":2"))).isEmpty();
    assertThat(read("[]")).isEmpty();
    assertThat(read("{\"v\":1,\"screens\":7}")).isEmpty();
    assertThat(read("{\"v\":1,\"screens\":[7]}")).isEmpty();
    assertThat(read("{\"v\":1,\"screens\":[{\"of\":\" \"}]}")).isEmpty();
    assertThat(read("[".repeat(60_000))).isEmpty();
  }

  @Test
  void members_of_another_kind_count_as_missing() throws IOException {
    assertThat(read("{\"v\":1,\"screens\":[{\"screen\":\"log\",\"at\":7,\"typing\":\"x\"}]}"))
        .containsExactly(mark("log", ""));
  }
}
