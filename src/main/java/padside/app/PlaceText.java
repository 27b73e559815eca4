package padside.app;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.RecordId;
import padside.screen.Bookmark;

/** Where the flier is in the program, as JSON: the screens that are open, the uppermost last. */
final class PlaceText {
  private static final int VERSION = 1;

  /** More screens than this are never open. */
  private static final int MOST = 32;

  private PlaceText() {}

  static String of(List<Bookmark> marks) {
    List<Map<String, Object>> screens = new ArrayList<>();
    for (Bookmark mark : marks) {
      Map<String, Object> screen = new LinkedHashMap<>();
      screen.put("screen", mark.screen());
      mark.of().ifPresent(record -> screen.put("of", record.text()));
      mark.at().ifPresent(spot -> screen.put("at", spot));
      screen.put("typing", mark.typing());
      screen.put("text", mark.text());
      screens.add(screen);
    }
    Map<String, Object> place = new LinkedHashMap<>();
    place.put("v", VERSION);
    place.put("screens", screens);
    try {
      return JSON.std.asString(place);
    } catch (IOException e) {
      throw new IllegalStateException("texts can always be written", e);
    }
  }

  /** Nothing where the text was not written by {@link #of}, or by a later version of it. */
  static List<Bookmark> read(String text) {
    try {
      Map<String, Object> place = JSON.std.mapFrom(text);
      boolean known = Integer.valueOf(VERSION).equals(place.get("v"));
      return known && place.get("screens") instanceof List<?> screens && screens.size() <= MOST
          ? marks(screens)
          : List.of();
    } catch (IOException | IllegalArgumentException e) {
      return List.of();
    }
  }

  private static List<Bookmark> marks(List<?> screens) {
    List<Bookmark> marks = new ArrayList<>();
    for (Object screen : screens) {
      if (!(screen instanceof Map<?, ?> map)) {
        return List.of();
      }
      marks.add(
          new Bookmark(
              text(map, "screen").orElse(""),
              text(map, "of").map(RecordId::new),
              text(map, "at").filter(spot -> !spot.isBlank()),
              Boolean.TRUE.equals(map.get("typing")),
              text(map, "text").orElse("")));
    }
    return marks;
  }

  private static Optional<String> text(Map<?, ?> map, String name) {
    return map.get(name) instanceof String text ? Optional.of(text) : Optional.empty();
  }
}
