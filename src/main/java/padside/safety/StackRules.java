package padside.safety;

import padside.flight.Ruling.Verdict;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorType;

/** Rules about several motors: side by side in a cluster, one on top of the other in stages. */
record StackRules(Basis basis) {
  private static final String STAGES = "stages";

  void on(MotorStack motors, Findings out) {
    motors.stages().stream().filter(stage -> stage.count() > 1).forEach(each -> cluster(each, out));
    for (int i = 1; i < motors.stages().size(); i++) {
      staging(motors.stages().get(i - 1).motor(), motors.stages().get(i).motor(), out);
    }
    if (motors.isStaged() && isBooster(motors.top().motor())) {
      out.add(
          STAGES,
          Verdict.NO_GO,
          motors.top().motor().designation()
              + " on top is a booster: it has no delay and fires as it burns out, at full speed",
          basis.house().cited(Caution.Topic.STAGES));
    }
  }

  private void cluster(MotorStack.Stage stage, Findings out) {
    basis
        .house()
        .about(Caution.Topic.CLUSTERS)
        .forEach(
            caution ->
                out.told("cluster", stage.designation() + ": " + caution.value(), caution.cited()));
  }

  private void staging(MotorChoice booster, MotorChoice above, Findings out) {
    if (!isBooster(booster)) {
      out.add(
          STAGES,
          Verdict.NO_GO,
          "%s does not light the %s above it; a booster has no delay, like %s"
              .formatted(booster.designation(), above.designation(), boosterLike(booster.type())),
          basis.house().cited(Caution.Topic.STAGES));
    }
    if (above.type().isComposite()) {
      out.add(
          STAGES,
          Verdict.MARGINAL,
          above.designation()
              + " is a composite motor, which a booster burning out does not light; it needs an"
              + " igniter of its own in flight",
          basis.house().cited(Caution.Topic.IGNITION));
    }
  }

  private static boolean isBooster(MotorChoice motor) {
    return motor.delaySeconds().isPresent() && motor.delaySeconds().getAsDouble() == 0;
  }

  private static String boosterLike(MotorType type) {
    return type.delays().contains(MotorType.BOOSTER) ? type.withDelay(MotorType.BOOSTER) : "C6-0";
  }
}
