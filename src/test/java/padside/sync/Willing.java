package padside.sync;

import java.util.ArrayList;
import java.util.List;

/** Takes lines of whomever, and remembers who was asked about and how far it was. */
final class Willing implements Terms {
  final List<Stranger> asked = new ArrayList<>();
  final List<String> moved = new ArrayList<>();
  boolean looks;
  boolean yes = true;

  @Override
  public boolean onlyLook() {
    return looks;
  }

  @Override
  public boolean mayTake(List<Stranger> strangers) {
    asked.addAll(strangers);
    return yes;
  }

  @Override
  public void moved(Stage stage, long done, long of) {
    moved.add(stage + " " + done + " of " + of);
  }
}
