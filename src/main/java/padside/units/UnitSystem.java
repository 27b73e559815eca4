package padside.units;

/** Which units a bare number means and results are shown in. */
public enum UnitSystem {
  US,
  METRIC
}
