package padside.preflight;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import padside.flight.Field;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.Wind;

/** How long the live check takes for one card, without and with what would help it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CheckBenchmark {
  private static final Bearing SOUTHWEST = new Bearing(225);

  /** What the card is like; {@link #card()} says how. */
  public enum Like {
    /** Helped by one change. */
    COMMON,
    /** Helped by two changes at once only. */
    PAIRED,
    /** Nobody noted where the wind comes from. */
    UNDIRECTED,
    /** The same with a leaning rod, so that every direction is flown for itself. */
    LEANING
  }

  @Param public Like like;

  private final Preflight preflight = new Preflight(Settings.standard());
  private Card card;

  /** Builds the card. */
  @Setup
  public void build() {
    card = AdviceBox.on(card());
  }

  private Card card() {
    return switch (like) {
      case COMMON -> uneven(Optional.of(SOUTHWEST));
      case PAIRED ->
          CardBuilder.small()
              .motor("C6-5")
              .edge(60)
              .wind(new Wind(new Speed(5), new Speed(7), Optional.of(SOUTHWEST)))
              .build();
      case UNDIRECTED -> uneven(Optional.empty());
      case LEANING -> uneven(Optional.empty()).withTilt(Angle.ofDegrees(5), SOUTHWEST);
    };
  }

  private static Card uneven(Optional<Bearing> from) {
    return CardBuilder.small()
        .motor("B6-4")
        .edges(List.of(edge(10, 150), edge(75, 90), edge(140, 120), edge(230, 200), edge(300, 110)))
        .wind(new Wind(new Speed(3), new Speed(4.5), from))
        .build();
  }

  private static Field.Edge edge(double degrees, double metres) {
    return new Field.Edge(new Bearing(degrees), new Length(metres), "hedge", "lane");
  }

  /** The flight, its spread, the field's limit and every rule. */
  @Benchmark
  public Answer answer() {
    return preflight.answer(card);
  }

  /** With what would help, if anything has to. */
  @Benchmark
  public Answer advised() {
    return preflight.advised(card);
  }
}
