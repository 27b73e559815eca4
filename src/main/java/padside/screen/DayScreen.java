package padside.screen;

import java.util.List;

/** The day at the field: weather, cards, tally. */
record DayScreen() implements Screen {
  static DayScreen open(World world) {
    return new DayScreen();
  }

  @Override
  public Step on(Event event, World world) {
    return Step.stay(this);
  }

  @Override
  public void draw(Canvas canvas, World world) {}

  @Override
  public String title(World world) {
    return "Day";
  }

  @Override
  public List<Binding> bindings() {
    return List.of();
  }
}
