package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padside.fact.Facts.Cell;
import padside.store.JournalLine.CellChange;
import padside.units.Reading;

class LineFormTest {
  private static final String RUN = "0123456789abcdef0123";

  /** RFC 3720, appendix B.4: 32 bytes of zeros give aa 36 91 8a, least significant byte first. */
  @Test
  void the_checksum_is_the_one_of_rfc_3720() {
    CRC32C crc = new CRC32C();
    crc.update(new byte[32]);

    assertThat(HexFormat.of().toHexDigits((int) crc.getValue())).isEqualTo("8a9136aa");
  }

  /**
   * Check value of CRC-32C over "123456789": e3069283 (catalogue of parametrised CRC algorithms).
   */
  @Test
  void a_line_is_summed_over_the_bytes_before_the_sum() {
    assertThat(Summed.sum("123456789")).isEqualTo("e3069283");
    String raw = LineForm.write(line(Cell.of("Æ", "æ")));
    int end = raw.indexOf(",\"crc\"");

    assertThat(raw.substring(end))
        .isEqualTo(",\"crc\":\"" + Summed.sum(raw.substring(0, end)) + "\"}");
  }

  @Test
  void a_line_reads_back_as_it_was_written() {
    JournalLine line = line(Cell.of(List.of(Map.of("a", 1.5, "b", true), 3L), "typed \u0000\n"));

    assertThat(LineForm.read(LineForm.write(line))).isEqualTo(Reading.of(line));
    assertThat(LineForm.write(line)).doesNotContain("\n");
  }

  @Test
  void half_a_surrogate_pair_does_not_spoil_the_sum() {
    String raw = LineForm.write(line(Cell.of("broken \ud83d")));

    assertThat(read(raw.getBytes(StandardCharsets.UTF_8)).value()).isPresent();
  }

  @Test
  void any_flipped_bit_is_noticed() {
    byte[] bytes = LineForm.write(line(Cell.of(1.25, "1.25"))).getBytes(StandardCharsets.UTF_8);
    for (int bit = 0; bit < bytes.length * 8; bit++) {
      bytes[bit / 8] ^= (byte) (1 << bit % 8);
      assertThat(read(bytes).objection()).as("bit %d", bit).isPresent();
      bytes[bit / 8] ^= (byte) (1 << bit % 8);
    }
    assertThat(read(bytes).value()).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"v\":1,\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[]",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[]} {\"x\":1",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"x\":[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]",
        "{\"v\":1,\"run\":\"../%s\",\"n\":1,\"t\":1",
        "{\"v\":0,\"run\":\"%s\",\"n\":1,\"t\":1",
        "{\"v\":1,\"run\":\"%s\",\"n\":-1,\"t\":1",
        "{\"v\":1,\"run\":\"%s\",\"n\":1e0,\"t\":1",
        "{\"v\":1,\"run\":\"%s\",\"n\":1000000000000000,\"t\":1",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":99999999999999999999",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[{\"k\":\"flight\"}]",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[{\"k\":\"flight\",\"e\":\"\"}]",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[{\"k\":\"f\",\"e\":\"e\",\"f\":1}]",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[{\"k\":\"f\",\"e\":\"e\",\"b\":[\"x\"]}]",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[{\"k\":\"f\",\"e\":\"e\",\"v\":1e999}]",
        "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[7]",
        "[1",
        ""
      })
  void a_line_out_of_bounds_is_refused_though_its_sum_fits(String body) {
    assertThat(LineForm.read(summed(body.formatted(RUN))).objection()).isPresent();
  }

  @Test
  void the_plain_line_those_were_made_from_is_taken() {
    String plain = "{\"v\":1,\"run\":\"%s\",\"n\":1,\"t\":1,\"ch\":[]".formatted(RUN);

    assertThat(LineForm.read(summed(plain)).value()).isPresent();
  }

  @Test
  void texts_and_lines_have_a_largest_size() {
    assertThat(LineForm.read(LineForm.write(line(Cell.of("x".repeat(20_000))))).value())
        .isPresent();
    assertThat(LineForm.read(LineForm.write(line(Cell.of("x".repeat(20_001))))).objection())
        .isPresent();
    assertThat(read(new byte[256 * 1024 + 1]).objection().orElseThrow()).contains("262144");
  }

  @Test
  void what_is_not_utf_8_is_refused() {
    assertThat(read(new byte[] {'{', (byte) 0xc3, '}'}).objection()).contains("not UTF-8 text");
  }

  @Test
  void a_line_of_a_newer_version_is_known_by_its_operation_only() {
    Reading<JournalLine> newer =
        LineForm.read(
            summed("{\"v\":2,\"run\":\"%s\",\"n\":1,\"t\":5,\"ch\":{\"odd\":1}".formatted(RUN)));

    assertThat(newer.value().orElseThrow().fromNewerVersion()).isTrue();
    assertThat(newer.value().orElseThrow().op()).isEqualTo(new OpId(RUN, 1));
  }

  static String summed(String body) {
    return body + ",\"crc\":\"" + Summed.sum(body) + "\"}";
  }

  private static Reading<JournalLine> read(byte[] bytes) {
    return LineForm.read(ByteBuffer.wrap(bytes));
  }

  private static JournalLine line(Cell cell) {
    OpId op = new OpId(RUN, 12);
    return new JournalLine(
        1,
        op,
        40,
        12.5,
        1_795_601_335_276L,
        "keep card",
        List.of(
            new CellChange("flight", op.toString(), Optional.empty(), Cell.emptied(), List.of()),
            new CellChange("flight", op.toString(), Optional.of("note"), cell, List.of(op))),
        Map.of());
  }
}
