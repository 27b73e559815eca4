package padside.screen;

import java.util.Optional;
import padside.flight.Day;
import padside.flight.Field;
import padside.preflight.Outlook;
import padside.site.Daylight;
import padside.site.Sun;
import padside.units.Angle;
import padside.units.Notations;

/** Where the sun stands, in words. */
final class SunText {
  private SunText() {}

  /**
   * Over a day's field now, and when it sets; absent without coordinates: {@code Sun 165° SSE, 42°
   * up; sets 19:43}.
   */
  static Optional<String> of(Day day, World world) {
    return day.field()
        .flatMap(world.log()::field)
        .flatMap(Field::coordinates)
        .map(place -> "Sun " + of(place, world));
  }

  private static String of(Field.Coordinates place, World world) {
    Sun sun = Sun.at(place, world.now());
    Daylight light = Daylight.on(place, DayScreen.today(world), world.zone());
    return sun.isUp()
        ? at(Notations.bearing().show(sun.azimuth()), sun.elevation()) + "; " + sets(light, world)
        : "down" + ends(light, world);
  }

  private static String sets(Daylight light, World world) {
    return light
        .sunset()
        .map(at -> "sets " + DayWords.clock(at, world))
        .orElse("does not set today");
  }

  /** Before it rises, when; after it has set, since when. */
  private static String ends(Daylight light, World world) {
    return light
        .sunrise()
        .filter(world.now()::isBefore)
        .map(at -> "; rises " + DayWords.clock(at, world))
        .or(() -> light.sunset().map(at -> " since " + DayWords.clock(at, world)))
        .orElse("; does not rise today");
  }

  /** During a flight, and where to stand: {@code 165° SSE, 42° up; stand S, 71° clear}. */
  static String of(Outlook.InSun sun) {
    return at(Notations.bearing().show(sun.azimuth()), sun.elevation())
        + "; stand "
        + sun.stand().compassPoint()
        + ", "
        + degrees(sun.clearance())
        + " clear";
  }

  private static String at(String azimuth, Angle elevation) {
    return azimuth + ", " + degrees(elevation) + " up";
  }

  private static String degrees(Angle angle) {
    return Math.round(angle.inDegrees()) + "°";
  }
}
