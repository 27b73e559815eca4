package padside.site;

import padside.flight.Field;

/**
 * What a landing is lost to: the edge it goes past, or what it lies in on this side of the edge.
 */
public sealed interface Loss {
  /** The edge or the hazard. */
  Field.Bound bound();

  /**
   * The landing lies outside the field.
   *
   * @param edge the one paced nearest to that way out; on a field with a single edge that edge, at
   *     the landing's own bearing
   */
  record PastEdge(Field.Edge edge) implements Loss {
    @Override
    public Field.Bound bound() {
      return edge;
    }
  }

  /** The landing lies inside the field, in something to keep clear of. */
  record InHazard(Field.Hazard hazard) implements Loss {
    @Override
    public Field.Bound bound() {
      return hazard;
    }
  }
}
