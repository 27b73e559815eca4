package padside.form;

import java.util.List;
import padside.flight.Field;
import padside.units.Reading;
import padside.units.UnitSystem;

/**
 * The edges of a field in one line, divided by semicolons: bearing and distance from the pad, then
 * what the edge is called and, behind a {@code >}, what lies beyond; both may be left out. {@code N
 * 300ft lane > road; NE 280ft; 240 450ft > trees}.
 */
public final class EdgesNotation extends SpotsNotation<Field.Edge> {
  public EdgesNotation(UnitSystem system) {
    super(system, "edge", List.of("distance"));
  }

  @Override
  Reading<Field.Edge> one(String typed) {
    int mark = typed.indexOf('>');
    String beyond = mark < 0 ? "" : typed.substring(mark + 1).strip();
    return one(
        mark < 0 ? typed : typed.substring(0, mark),
        at -> new Field.Edge(at.bearing(), at.lengths().get(0), at.name(), beyond));
  }

  @Override
  String showOne(Field.Edge edge) {
    String beyond = edge.beyond().isEmpty() ? "" : " > " + edge.beyond();
    return show(new Spot(edge.bearing(), List.of(edge.distance()), edge.name())) + beyond;
  }

  @Override
  String exampleOne() {
    return "NE " + exampleLength() + " lane > road";
  }

  @Override
  public String example() {
    return "N " + exampleLength() + " lane > road; NE " + exampleLength();
  }
}
