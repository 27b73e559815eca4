package padside.motor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * All motors of one flight: the stages from the ground up, each of equal motors lit together. The
 * topmost stage's delay fires the ejection charge.
 */
public record MotorStack(List<Stage> stages) {
  /** Equal motors lit together, {@code 3xC6-5}. */
  public record Stage(int count, MotorChoice motor) {
    /** Refuses fewer than one motor. */
    public Stage {
      if (count < 1) {
        throw new IllegalArgumentException("a stage of " + count + " motors");
      }
    }

    /** As it is written on the card: {@code C6-5}, {@code 3xC6-5}. */
    public String designation() {
      return (count == 1 ? "" : count + "x") + motor.designation();
    }
  }

  /** Keeps its own list and refuses an empty one. */
  public MotorStack {
    stages = List.copyOf(stages);
    if (stages.isEmpty()) {
      throw new IllegalArgumentException("no motor");
    }
  }

  /** One motor alone. */
  public static MotorStack of(MotorChoice motor) {
    return new MotorStack(List.of(new Stage(1, motor)));
  }

  /** The topmost stage. */
  public Stage top() {
    return stages.get(stages.size() - 1);
  }

  /** Those under the topmost stage, from the ground up; they fall off. */
  public List<Stage> boosters() {
    return stages.subList(0, stages.size() - 1);
  }

  /** The lowest of several stages. */
  public Optional<Stage> booster() {
    return isStaged() ? Optional.of(stages.get(0)) : Optional.empty();
  }

  /** True of two stages or more. */
  public boolean isStaged() {
    return stages.size() > 1;
  }

  /** True of more than one motor, side by side or one on top of the other. */
  public boolean isComplex() {
    return isStaged() || top().count() > 1;
  }

  /** Every single motor, from the ground up. */
  public List<MotorChoice> motors() {
    List<MotorChoice> motors = new ArrayList<>();
    for (Stage stage : stages) {
      for (int i = 0; i < stage.count(); i++) {
        motors.add(stage.motor());
      }
    }
    return List.copyOf(motors);
  }

  /** The same with another motor in the topmost stage. */
  public MotorStack withTop(MotorChoice motor) {
    List<Stage> changed = new ArrayList<>(boosters());
    changed.add(new Stage(top().count(), motor));
    return new MotorStack(changed);
  }

  /** As it is written on the card: {@code C6-5}, {@code 3xC6-5}, {@code C6-0 then C6-7}. */
  public String designation() {
    return stages.stream().map(Stage::designation).collect(Collectors.joining(MotorText.THEN));
  }
}
