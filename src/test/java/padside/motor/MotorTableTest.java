package padside.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MotorTableTest {
  private static final String HEAD =
      "designation,class,kind,diameter_mm,delays_s,total_impulse_ns,burn_time_s,total_mass_g,max_liftoff_mass_g\n";

  private final MotorTable.Contents shipped = shipped();
  private final MotorTable table = new MotorTable(shipped.types());

  private static MotorTable.Contents shipped() {
    try (var csv =
        new InputStreamReader(
            MotorTableTest.class.getResourceAsStream("/data/motors.csv"), StandardCharsets.UTF_8)) {
      return MotorTable.read(csv, "motors.csv");
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void the_shipped_table_is_read_whole() {
    assertThat(shipped.objections()).isEmpty();
    assertThat(shipped.types()).hasSize(23);
  }

  @Test
  void every_motor_keeps_where_its_numbers_come_from() {
    assertThat(shipped.types()).allSatisfy(type -> assertThat(type.provenance()).isNotBlank());
  }

  /** Impulse classes: association sporting code 4.5; code bound = 2.5 · 2^n N·s. */
  @Test
  void impulse_lies_in_the_class_of_the_letter() {
    for (MotorType type : shipped.types()) {
      String letter = type.facts().get(MotorType.IMPULSE_CLASS).orElseThrow();
      double fraction = letter.contains("/") ? 1.0 / (letter.charAt(2) - '0') : 1;
      double upper = 2.5 * Math.pow(2, letter.charAt(letter.length() - 1) - 'A') * fraction;
      double impulse = type.totalImpulse().orElseThrow().newtonSeconds();
      assertThat(impulse).as(type.designation()).isBetween(upper / 2, upper);
    }
  }

  @ParameterizedTest
  @CsvSource({"C6-5,C6,5", "c6-5,C6,5", "1/2A6-2,1/2A6,2", "A10-3T,A10T,3", "A10T-P,A10T,P"})
  void designations_are_read_as_the_trade_writes_them(String typed, String type, String delay) {
    MotorChoice choice = table.choose(typed).value().orElseThrow();

    assertThat(choice.type().designation()).isEqualTo(type);
    assertThat(choice.delay()).isEqualTo(delay);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Z9-4", "", "  ", "C6-", "-5", "C6-5-5", "C6"})
  void what_is_not_a_motor_on_sale_is_refused(String typed) {
    assertThat(table.choose(typed).value()).isEmpty();
  }

  @Test
  void a_delay_not_sold_is_answered_with_those_that_are() {
    assertThat(table.choose("C6-4").objection())
        .contains("C6 is not sold with delay \"4\"; choose C6-0, C6-3, C6-5, C6-7.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          C6-5             | C6-5
          3xC6-5           | 3xC6-5
          3 X c6-5         | 3xC6-5
          2×1/2A6-2        | 2x1/2A6-2
          1xC6-5           | C6-5
          C6-0 then C6-7   | C6-0 then C6-7
          c6-0 THEN c6-7   | C6-0 then C6-7
          C6-0,C6-7        | C6-0 then C6-7
          3xD12-0 , 2xC6-7 | 3xD12-0 then 2xC6-7
          """)
  void several_motors_are_read_and_written_in_one_way(String typed, String written) {
    assertThat(table.chooseAll(typed).value().orElseThrow().designation()).isEqualTo(written);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0xC6-5         | "0xC6-5" names no motor; type it like 3xC6-5.
          3xC6           | Motor "C6" needs its delay; choose C6-0, C6-3, C6-5, C6-7.
          3xZ9-1         | No motor "Z9-1" in the motor table; check
          C6-0,          | No motor named; type its designation with the delay, like C6-5.
          C6-0,C6-0,C6-7 | "C6-0,C6-0,C6-7" names 3 stages; name two at most, like C6-0 then C6-7.
          """)
  void what_is_wrong_with_several_motors_is_said_in_a_sentence(String typed, String sentence) {
    assertThat(table.chooseAll(typed).objection())
        .hasValueSatisfying(it -> assertThat(it).startsWith(sentence));
  }

  @Test
  void a_stack_knows_its_stages_and_every_motor() {
    MotorStack stack = table.chooseAll("3xD12-0 then C6-7").value().orElseThrow();

    assertThat(stack.motors())
        .extracting(MotorChoice::designation)
        .containsExactly("D12-0", "D12-0", "D12-0", "C6-7");
    assertThat(stack.booster().orElseThrow().designation()).isEqualTo("3xD12-0");
    assertThat(stack.top().designation()).isEqualTo("C6-7");
    assertThat(stack.withTop(table.choose("C6-5").value().orElseThrow()).designation())
        .isEqualTo("3xD12-0 then C6-5");
  }

  @Test
  void several_motors_side_by_side_or_in_stages_are_complex() {
    assertThat(List.of("C6-5", "2xC6-5", "C6-0 then C6-7"))
        .extracting(line -> table.chooseAll(line).value().orElseThrow().isComplex())
        .containsExactly(false, true, true);
    assertThat(table.chooseAll("2xC6-5").value().orElseThrow().booster()).isEmpty();
  }

  @Test
  void a_stack_is_never_empty() {
    assertThatThrownBy(() -> new MotorStack(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new MotorStack.Stage(0, table.choose("C6-5").value().orElseThrow()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void largest_liftoff_masses_belong_to_delays() {
    MotorType c6 = table.find("C6").orElseThrow();

    assertThat(c6.maxLiftoffMass("7").orElseThrow().inGrams()).isCloseTo(71, within(1e-9));
    assertThat(c6.maxLiftoffMass("9")).isEqualTo(Optional.empty());
  }

  @Test
  void broken_rows_are_named_by_row_and_column_and_the_others_stay() throws IOException {
    MotorTable.Contents contents =
        MotorTable.read(
            new StringReader(
                HEAD
                    + "C6,C,bp,18,0;3;5;7,8.82,1.86,24.0,5:113\n"
                    + "D12,D,bp,24,3;x,16.84,1.65,42.6,\n"
                    + "E9,E,bp,24,4,-28,3.09,56.7,\n"
                    + "B6,B,bp,18,4,4.33,0.86,19.3,4:4-113\n"
                    + ",A,bp,18,4,2.3,0.7,16,\n"
                    + "A8,A,bp\n"),
            "mine.csv");

    assertThat(contents.types()).extracting(MotorType::designation).containsExactly("C6");
    assertThat(contents.objections())
        .containsExactly(
            "mine.csv, line 3: column delays_s has \"x\"; write seconds or P, divided by ; like 3;5;P.",
            "mine.csv, line 4: column total_impulse_ns has \"-28\"; write a number above 0.",
            "mine.csv, line 5: column max_liftoff_mass_g has \"4-113\"; write a number above 0.",
            "mine.csv, line 6: column designation is missing or empty; fill it in.",
            "mine.csv, line 7: column total_impulse_ns is missing or empty; fill it in.");
  }

  @Test
  void the_fliers_own_type_stands_before_the_tables() throws IOException {
    MotorType own =
        MotorTable.read(new StringReader(HEAD + "C6,C,bp,18,5,9.5,1.7,24,\n"), "own.csv")
            .types()
            .get(0);

    assertThat(table.with(List.of(own)).find("C6")).contains(own);
  }
}
