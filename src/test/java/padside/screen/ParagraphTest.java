package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParagraphTest {
  @ParameterizedTest
  @CsvSource({
    "limit 13 mph (field), 20, limit 13 mph (field)",
    "limit 13 mph (field), 12, limit 13 mp…",
    "limit 13 mph (field), 9, limit 13…",
    "limit 13 mph (field), 8, limit…",
    "limit 5.8 mph, 10, limit 5.8…",
    "limit 5.8 mph, 9, limit…",
    "limit 5.8 mph, 8, limit…",
    "at 1675 ft, 5, at…",
    "1675 ft, 3, …",
    "Mill 2. Then, 7, Mill 2…",
    "Grandfather Clock, 12, Grandfather…",
    "Long, 0, …"
  })
  void a_text_is_cut_but_no_number_in_it(String text, int width, String cut) {
    assertThat(Paragraph.cut(text, width)).isEqualTo(cut);
  }
}
