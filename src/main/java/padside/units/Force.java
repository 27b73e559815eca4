package padside.units;

/** A force in newtons. */
public record Force(double newtons) {
  /** Refuses what is not a finite number. */
  public Force {
    Finite.require(newtons, "newtons");
  }

  /** Exact: 0.45359237 kg at standard gravity 9.80665 m/s². */
  public static Force ofPoundsForce(double poundsForce) {
    return new Force(poundsForce * 4.4482216152605);
  }

  /** Exact: 0.45359237 kg at standard gravity 9.80665 m/s². */
  public double inPoundsForce() {
    return newtons / 4.4482216152605;
  }
}
