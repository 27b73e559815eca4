package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import padside.fact.RecordId;

/** The columns of a list in ever less room. */
class ListColumnsTest {
  private static final List<ListPane.Heading> HEADINGS =
      List.of(
          ListPane.Heading.of("Date").whole(),
          ListPane.Heading.of("Rocket"),
          ListPane.Heading.of("Check").spare(),
          ListPane.Heading.ofNumbers("Altitude").orBriefly("Alt."),
          ListPane.Heading.of("Outcome"));

  private static final List<ListPane.Item> ITEMS =
      List.of(
          new ListPane.Item(
              new RecordId("a"),
              List.of(
                  "2026-05-02",
                  "Grandfather Clock",
                  "MARGINAL",
                  "564 ft",
                  "boost weathercocked, recovery opened late")),
          new ListPane.Item(
              new RecordId("b"), List.of("2026-05-02", "Wren", "GO", "1675 ft", "nominal")));

  private static String text(int columns) {
    Canvas canvas = new Canvas(new Size(columns, 5));
    ListPane.draw(canvas, HEADINGS, ITEMS, 0, new ListPane.Rows(0, 4));
    return canvas.frame().text();
  }

  @Test
  void dates_and_numbers_are_whole_in_every_width() {
    IntStream.rangeClosed(44, 120)
        .forEach(
            columns ->
                assertThat(text(columns))
                    .as(columns + " columns")
                    .containsPattern("2026-05-02 +Grand.*564 ft")
                    .containsPattern("2026-05-02 +Wren.*1675 ft"));
  }

  @Test
  void a_heading_is_told_briefly_before_a_cell_is_cut_and_never_cut_itself() {
    assertThat(text(120)).contains("Altitude", "recovery opened late");
    assertThat(text(70)).contains("   Alt. Outcome", "Grandfather Clock", "MARGINAL");
    assertThat(text(44)).contains("   Alt. Outcome");
  }

  @Test
  void a_column_others_can_do_without_is_left_out_with_its_heading() {
    assertThat(text(60)).doesNotContain("Check", "MARGINAL").contains("Grandfather Clock");
  }

  @Test
  void at_last_the_widest_that_may_be_cut_gives_way() {
    assertThat(text(48)).containsPattern("2026-05-02 Grandfat\\S*… ").contains("564 ft boost");
  }
}
