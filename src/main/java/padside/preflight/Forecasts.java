package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.flight.Field;
import padside.flight.Weather;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.RefusedInput;
import padside.units.Length;

/** Predicts the flight of a card, without asking any rule. */
public final class Forecasts {
  private Forecasts() {}

  /** What the card's flight would be, or what it lacks. */
  public static Forecast of(Card card) {
    Launches.Prepared prepared = Launches.of(card);
    if (prepared.launch().isEmpty()) {
      return new Forecast(Optional.empty(), prepared.missing(), prepared.refused());
    }
    Launch launch = prepared.launch().get();
    Prediction flight = Flight.predict(launch);
    return flight.leftRod()
        ? new Forecast(
            Optional.of(Outlooks.of(Flown.of(launch, flight), card)),
            prepared.missing(),
            Optional.empty())
        : new Forecast(Optional.empty(), List.of(), Optional.of(Sentences.tooHeavy(flight, card)));
  }

  /**
   * Height in the standard atmosphere where dry air is as thin as at a pad in this weather; absent
   * when there can be no such air.
   */
  public static Optional<Length> densityAltitude(Optional<Field> field, Weather weather) {
    try {
      return Optional.of(Launches.air(field, Optional.of(weather)).densityAltitude());
    } catch (RefusedInput impossible) {
      return Optional.empty();
    }
  }
}
