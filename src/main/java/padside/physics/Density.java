package padside.physics;

/** A density in kilograms per cubic metre; zero is a vacuum. */
public record Density(double kilogramsPerCubicMetre) {
  /** Refuses what is negative or not a finite number. */
  public Density {
    RefusedInput.unless(
        Double.isFinite(kilogramsPerCubicMetre) && kilogramsPerCubicMetre >= 0,
        () ->
            "Air density %s kg/m³ is not possible; check temperature and pressure."
                .formatted(kilogramsPerCubicMetre));
  }
}
