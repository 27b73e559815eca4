package padside.sync;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.store.Summed;
import padside.store.WholeFile;

/**
 * The places a log was synchronised with, in {@code partners.json} beside it; no part of the log.
 */
public final class Partners {
  private static final String NAME = "partners.json";
  private static final int MOST = 32;
  private static final int MOST_TEXT = 400;

  private final WholeFile file;

  /** Those of the log in a folder. */
  public Partners(Path log) {
    this.file = new WholeFile(log, NAME);
  }

  /**
   * A place.
   *
   * @param place a folder, or {@code ssh:user@host}
   * @param when the last exchange, by the log's time, as a text
   * @param out lines that went there then
   * @param in lines that came from there then
   * @param ended how it ended, a sentence
   */
  public record Partner(String place, String when, long out, long in, String ended) {}

  /** The last one first; none where the file is missing or damaged. */
  public List<Partner> list() {
    return file.read()
        .map(String::strip)
        .flatMap(
            text -> ParcelForm.json(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8))).value())
        .map(json -> json.get("partners") instanceof List<?> all ? read(all) : List.<Partner>of())
        .orElse(List.of());
  }

  private static List<Partner> read(List<?> all) {
    List<Partner> partners = new ArrayList<>();
    for (Object each : all) {
      if (each instanceof Map<?, ?> map
          && map.get("place") instanceof String place
          && map.get("when") instanceof String when
          && map.get("ended") instanceof String ended) {
        partners.add(new Partner(place, when, count(map.get("out")), count(map.get("in")), ended));
      }
    }
    return List.copyOf(partners);
  }

  private static long count(Object json) {
    return json instanceof Long whole ? whole : 0;
  }

  /** Puts a partner first, in place of what was noted of the same place. */
  public void note(Partner partner) throws IOException {
    List<Partner> all = new ArrayList<>(others(partner.place()));
    all.add(0, cut(partner));
    write(all.subList(0, Math.min(all.size(), MOST)));
  }

  /** Notes nothing of a place any more. */
  public void drop(String place) throws IOException {
    write(others(place));
  }

  private List<Partner> others(String place) {
    return list().stream().filter(each -> !each.place().equals(place)).toList();
  }

  private static Partner cut(Partner partner) {
    String ended = partner.ended();
    return new Partner(
        partner.place(),
        partner.when(),
        partner.out(),
        partner.in(),
        ended.substring(0, Math.min(ended.length(), MOST_TEXT)));
  }

  private void write(List<Partner> partners) throws IOException {
    List<Map<String, Object>> all = new ArrayList<>();
    for (Partner each : partners) {
      Map<String, Object> json = new LinkedHashMap<>();
      json.put("place", each.place());
      json.put("when", each.when());
      json.put("out", each.out());
      json.put("in", each.in());
      json.put("ended", each.ended());
      all.add(json);
    }
    file.write(Summed.write(Map.of("partners", all)));
    file.force();
  }
}
