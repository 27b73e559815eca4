package padside.flight;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.Length;

/** A parachute or streamer that moves from rocket to rocket. */
public record RecoveryDevice(RecordId id, Facts facts) {
  /** How it slows the fall, which also names the area its drag coefficient is on. */
  public enum Shape {
    /** Drag coefficient on the area of the flat canopy, π/4 × diameter². */
    PARACHUTE,
    /** Drag coefficient on one side, width × length. */
    STREAMER;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Shape> find(String code) {
      return List.of(values()).stream().filter(shape -> shape.code().equals(code)).findFirst();
    }
  }

  public static final Column<String> NAME = Column.text("name", "what its owner calls it");
  public static final Column<Shape> SHAPE =
      Column.word("shape", "parachute or streamer", Shape::find, Shape::code);
  public static final Column<Length> DIAMETER =
      Column.quantity("diameter_m", "parachute: diameter laid flat", Length::new, Length::metres);
  public static final Column<Length> WIDTH =
      Column.quantity("width_m", "streamer: width", Length::new, Length::metres);
  public static final Column<Length> LENGTH =
      Column.quantity("length_m", "streamer: length", Length::new, Length::metres);
  public static final Column<Double> DRAG_COEFFICIENT =
      Column.number("drag_coefficient", "on the flat canopy area, or on one side of the streamer");
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  static final List<Column<?>> COLUMNS =
      List.of(NAME, SHAPE, DIAMETER, WIDTH, LENGTH, DRAG_COEFFICIENT, NOTE);

  public String name() {
    return facts.get(NAME).orElse("unnamed device");
  }

  public Optional<Shape> shape() {
    return facts.get(SHAPE);
  }

  public Optional<Length> diameter() {
    return facts.get(DIAMETER);
  }

  public Optional<Length> width() {
    return facts.get(WIDTH);
  }

  public Optional<Length> length() {
    return facts.get(LENGTH);
  }

  public Optional<Double> dragCoefficient() {
    return facts.get(DRAG_COEFFICIENT);
  }
}
