package padside.flight;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;

/** A rocket of the fleet. */
public record Rocket(RecordId id, Facts facts) {
  public static final Column<String> NAME = Column.text("name", "what its owner calls it");
  public static final Column<Mass> MASS =
      Column.quantity(
          "mass_kg",
          "mass ready to fly without any motor, recovery packed",
          Mass::new,
          Mass::kilograms);
  public static final Column<Mass> BOOSTER_MASS =
      Column.quantity(
          "booster_mass_kg",
          "of that, what falls off at staging, without its motors; a one-stage rocket has none",
          Mass::new,
          Mass::kilograms);
  public static final Column<Length> DIAMETER =
      Column.quantity(
          "diameter_m", "largest outer diameter of the body tube", Length::new, Length::metres);
  public static final Column<Double> DRAG_COEFFICIENT =
      Column.number("drag_coefficient", "drag coefficient on the body tube's frontal area");
  public static final Column<Boolean> DRAG_FIXED =
      Column.flag(
          "drag_fixed", "yes: the coefficient above is taken as it is, whatever flights teach");
  public static final Column<Length> MOUNT =
      Column.quantity("mount_m", "inner diameter of the motor mount", Length::new, Length::metres);
  public static final Column<Length> ROD =
      Column.quantity(
          "rod_m", "guided length of its usual rod or rail", Length::new, Length::metres);
  public static final Column<Speed> OWN_LIMIT =
      Column.quantity(
          "own_limit_mps",
          "the flier's own largest wind for this rocket",
          Speed::new,
          Speed::metresPerSecond);
  public static final Column<RecordId> DEVICE =
      Column.reference("device", "its usual parachute or streamer");
  public static final Column<String> FLIER = Column.text("flier", "whose it is");
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  static final List<Column<?>> COLUMNS =
      List.of(
          NAME,
          MASS,
          BOOSTER_MASS,
          DIAMETER,
          DRAG_COEFFICIENT,
          DRAG_FIXED,
          MOUNT,
          ROD,
          OWN_LIMIT,
          DEVICE,
          FLIER,
          NOTE);

  public String name() {
    return facts.get(NAME).orElse("unnamed rocket");
  }

  public Optional<Mass> mass() {
    return facts.get(MASS);
  }

  public Optional<Mass> boosterMass() {
    return facts.get(BOOSTER_MASS);
  }

  public Optional<Length> diameter() {
    return facts.get(DIAMETER);
  }

  public Optional<Double> dragCoefficient() {
    return facts.get(DRAG_COEFFICIENT);
  }

  /** Whether its drag coefficient is as told, whatever its flights teach. */
  public boolean isDragFixed() {
    return facts.get(DRAG_FIXED).orElse(false) && dragCoefficient().isPresent();
  }

  public Optional<Length> mount() {
    return facts.get(MOUNT);
  }

  public Optional<Length> rod() {
    return facts.get(ROD);
  }

  public Optional<Speed> ownLimit() {
    return facts.get(OWN_LIMIT);
  }

  /** Whose it is, where that was told. */
  public Optional<String> flier() {
    return facts.get(FLIER).filter(name -> !name.isBlank());
  }

  public Optional<RecordId> device() {
    return facts.get(DEVICE);
  }
}
