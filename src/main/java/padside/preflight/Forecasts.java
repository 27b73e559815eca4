package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.physics.Flight;
import padside.physics.Prediction;
import padside.physics.RefusedInput;

/** Predicts the flight of a card, without asking any rule. */
public final class Forecasts {
  private Forecasts() {}

  /** What the card's flight would be, or what it lacks. */
  public static Forecast of(Card card) {
    Launches.Prepared prepared = Launches.of(card);
    if (prepared.launch().isEmpty()) {
      return new Forecast(Optional.empty(), prepared.missing(), prepared.refused());
    }
    try {
      Prediction flight = Flight.predict(prepared.launch().get());
      return flight.leftRod()
          ? new Forecast(
              Optional.of(Outlooks.of(prepared.launch().get(), card, flight)),
              prepared.missing(),
              Optional.empty())
          : refused(Sentences.tooHeavy(flight, card));
    } catch (RefusedInput impossible) {
      return refused(impossible.getMessage());
    }
  }

  private static Forecast refused(String sentence) {
    return new Forecast(Optional.empty(), List.of(), Optional.of(sentence));
  }
}
