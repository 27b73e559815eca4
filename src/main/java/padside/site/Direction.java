package padside.site;

/** Which way something lies: east, north and up, of any length. */
record Direction(double east, double north, double up) {
  /** Toward the sun, of length one. */
  static Direction toward(Sun sun) {
    double level = Math.cos(sun.elevation().radians());
    double azimuth = sun.azimuth().inRadians();
    return new Direction(
        level * Math.sin(azimuth), level * Math.cos(azimuth), Math.sin(sun.elevation().radians()));
  }

  Direction minus(Direction other) {
    return new Direction(east - other.east, north - other.north, up - other.up);
  }

  /**
   * From 0 to π, from sine and cosine both, so that small and straight angles keep their digits;
   * nothing where one of the two has no length.
   */
  double angleTo(Direction other) {
    return Math.atan2(cross(other).length(), dot(other));
  }

  /** The least angle to what is passed in view on the straight way between two directions. */
  double angleToWay(Direction from, Direction to) {
    Direction normal = from.cross(to);
    boolean between = normal.cross(from).dot(this) > 0 && to.cross(normal).dot(this) > 0;
    return between
        ? Math.atan2(Math.abs(normal.dot(this)), normal.cross(this).length())
        : Math.min(angleTo(from), angleTo(to));
  }

  private double dot(Direction other) {
    return east * other.east + north * other.north + up * other.up;
  }

  private Direction cross(Direction other) {
    return new Direction(
        north * other.up - up * other.north,
        up * other.east - east * other.up,
        east * other.north - north * other.east);
  }

  private double length() {
    return Math.sqrt(dot(this));
  }
}
