package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import padside.flight.Rocket;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.units.Mass;

/** Clusters and stacks of a card as the flight model gets them. */
class LaunchesTest {
  private static Launch launch(CardBuilder card) {
    Launches.Prepared prepared = Launches.of(card.build());
    assertThat(prepared.missing()).isEmpty();
    return prepared.launch().orElseThrow();
  }

  private static CardBuilder stack() {
    return CardBuilder.small()
        .mass(Mass.ofGrams(80))
        .motor("B6-0 then B6-6")
        .rocketFact(f -> f.with(Rocket.BOOSTER_MASS, Mass.ofGrams(22)));
  }

  @Test
  void a_cluster_lifts_all_its_motors_and_pushes_with_all() {
    Launch one = launch(CardBuilder.small().mass(Mass.ofGrams(120)).motor("C6-5"));
    Launch three = launch(CardBuilder.small().mass(Mass.ofGrams(120)).motor("3xC6-5"));
    double motor = one.liftoffMass().inGrams() - 120;

    assertThat(three.liftoffMass().inGrams()).isCloseTo(120 + 3 * motor, within(1e-9));
    assertThat(three.totalImpulse().newtonSeconds())
        .isCloseTo(3 * one.totalImpulse().newtonSeconds(), within(1e-9));
    assertThat(three.stages()).hasSize(1);
  }

  @Test
  void the_booster_falls_off_the_lowest_stage_and_nothing_off_the_last() {
    Launch launch = launch(stack());

    assertThat(launch.stages().get(0).dropped().inGrams()).isCloseTo(22, within(1e-9));
    assertThat(launch.stages().get(1).dropped().inGrams()).isZero();
  }

  @Test
  void the_topmost_motors_delay_runs_from_the_last_burnout() {
    Launch launch = launch(stack());
    Prediction flight = Flight.predict(launch);

    assertThat(launch.delay().orElseThrow().seconds()).isEqualTo(6);
    assertThat(flight.ejection().orElseThrow().time().seconds())
        .isCloseTo(flight.burnoutTime().seconds() + 6, within(1e-9));
    assertThat(launch.delaysOnSale()).extracting(delay -> delay.seconds()).contains(4.0, 6.0);
  }

  @Test
  void a_stack_without_the_boosters_mass_names_it() {
    CardBuilder card = CardBuilder.small().mass(Mass.ofGrams(80)).motor("B6-0 then B6-6");

    Launches.Prepared prepared = Launches.of(card.build());
    assertThat(prepared.launch()).isEmpty();
    assertThat(prepared.missing()).containsExactly("mass of the booster of Alder");
    assertThat(new Preflight(Settings.standard()).answer(card.build()).ruling().reason())
        .isEqualTo("missing: mass of the booster of Alder");
  }

  @Test
  void a_booster_as_heavy_as_the_whole_rocket_is_refused_in_a_sentence() {
    CardBuilder card = stack().rocketFact(f -> f.with(Rocket.BOOSTER_MASS, Mass.ofGrams(80)));

    assertThat(Launches.of(card.build()).refused().orElseThrow()).contains("check both masses");
  }
}
