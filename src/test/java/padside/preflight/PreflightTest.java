package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.insight.Delays;
import padside.safety.OwnLimits;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.Wind;

class PreflightTest {
  private final Preflight preflight = new Preflight(Settings.standard());

  private static Wind wind(double meanMph, double gustMph, double fromDeg) {
    return new Wind(Speed.ofMph(meanMph), Speed.ofMph(gustMph), Optional.of(new Bearing(fromDeg)));
  }

  private Ruling ruling(CardBuilder card) {
    return preflight.answer(card.build()).ruling();
  }

  private static double limitMps(Ruling ruling, String rule) {
    return ruling.limits().stream()
        .filter(limit -> limit.rule().equals(rule))
        .mapToDouble(limit -> limit.wind().metresPerSecond())
        .min()
        .orElseThrow();
  }

  @Test
  void a_light_wind_over_a_large_field_is_go_with_the_binding_limit_named() {
    Answer answer = preflight.answer(CardBuilder.small().wind(wind(2, 3, 225)).build());

    assertThat(answer.ruling().verdict()).isEqualTo(Verdict.GO);
    assertThat(answer.headline()).startsWith("GO  2 gusting 3 mph · limit ");
  }

  @Test
  void no_wind_entered_is_unknown_and_never_go() {
    Answer answer = preflight.answer(CardBuilder.small().noWind().build());

    assertThat(answer.ruling().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(answer.headline()).contains("no wind entered").contains("missing: wind");
  }

  /** US model rocket code, NAR 2012, in our words; seen. */
  @Test
  void what_the_code_asks_besides_comes_with_every_answer() {
    assertThat(preflight.answer(CardBuilder.small().noWind().build()).reminders())
        .contains(
            new Answer.Reminder(
                "Never at targets, into clouds or near aircraft. Nothing that burns or explodes on"
                    + " board.",
                "US model code, seen"));
  }

  /** US model rocket code, NAR 2012: no launch above 20 mph. */
  @Test
  void above_twenty_mph_is_no_go_whatever_the_field() {
    Ruling ruling = ruling(CardBuilder.small().edge(20_000).wind(wind(10, 20.1, 90)));

    assertThat(ruling.verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(limitMps(ruling, "code")).isEqualTo(20 * 0.44704);
  }

  @Test
  void each_thing_missing_is_named() {
    assertThat(ruling(CardBuilder.small().noMotor()).reason()).contains("motor");
    assertThat(ruling(CardBuilder.small().noMass()).reason()).contains("mass");
    assertThat(ruling(CardBuilder.small().noRod()).reason()).contains("rod length");
    assertThat(ruling(CardBuilder.small().noDevice()).reason()).contains("recovery device");
    assertThat(ruling(CardBuilder.small().noField()).reason()).contains("field");
  }

  @Test
  void with_no_recovery_chosen_the_apogee_is_told_all_the_same() {
    Answer answer = preflight.answer(CardBuilder.small().noDevice().build());

    assertThat(answer.ruling().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(answer.outlook().orElseThrow().apogee().metres()).isGreaterThan(50);
  }

  @Test
  void the_field_limit_never_rises_when_an_edge_comes_nearer() {
    double before = Double.MAX_VALUE;
    for (double edge : List.of(400.0, 300.0, 200.0, 120.0, 80.0, 40.0, 10.0)) {
      double limit = limitMps(ruling(CardBuilder.small().edge(edge)), "field");
      assertThat(limit).as("edge at %s m", edge).isLessThanOrEqualTo(before);
      before = limit;
    }
  }

  @Test
  void an_edge_nobody_paced_is_told() {
    Field.Edge north = new Field.Edge(new Bearing(0), new Length(200), "", "");
    Field.Edge west = new Field.Edge(new Bearing(270), new Length(300), "", "");

    assertThat(fieldEdges(List.of(north)))
        .containsExactly("one edge alone was given; the field is" + " taken as that far every way");
    assertThat(fieldEdges(List.of(north, west)))
        .containsExactly(
            "nobody paced the field's edge"
                + " between N and W; the nearer of the two is taken there");
    Field.Edge south = new Field.Edge(new Bearing(180), new Length(300), "", "");
    Field.Edge east = new Field.Edge(new Bearing(90), new Length(300), "", "");
    assertThat(fieldEdges(List.of(north, east, south, west))).isEmpty();
  }

  private List<String> fieldEdges(List<Field.Edge> edges) {
    return ruling(CardBuilder.small().edges(edges)).findings().stream()
        .filter(finding -> finding.rule().equals("field edges"))
        .map(Ruling.Finding::sentence)
        .toList();
  }

  @Test
  void without_a_direction_the_worst_one_counts() {
    List<Field.Edge> edges = new ArrayList<>();
    for (int degrees = 0; degrees < 360; degrees += 30) {
      double metres = degrees == 90 ? 60 : 300;
      edges.add(new Field.Edge(new Bearing(degrees), new Length(metres), "", ""));
    }
    Wind toward90 = wind(4, 6, 270);
    Wind anywhere = new Wind(toward90.mean(), toward90.gust(), Optional.empty());

    double known = limitMps(ruling(CardBuilder.small().edges(edges).wind(toward90)), "field");
    double unknown = limitMps(ruling(CardBuilder.small().edges(edges).wind(anywhere)), "field");

    assertThat(unknown).isCloseTo(known, within(1e-6));
  }

  @Test
  void without_a_direction_no_landing_bearing_is_kept() {
    Wind toward90 = wind(4, 6, 270);
    Wind anywhere = new Wind(toward90.mean(), toward90.gust(), Optional.empty());

    Answer known = preflight.answer(CardBuilder.small().wind(toward90).build());
    Answer unknown = preflight.answer(CardBuilder.small().wind(anywhere).build());

    assertThat(known.facts().get(Flight.PREDICTED_BEARING).orElseThrow().degrees())
        .isCloseTo(90, within(0.1));
    assertThat(unknown.facts().get(Flight.PREDICTED_BEARING)).isEmpty();
    assertThat(unknown.facts().get(Flight.PREDICTED_DISTANCE).orElseThrow().metres())
        .isCloseTo(known.outlook().orElseThrow().landingDistance().metres(), within(0.1));
  }

  @Test
  void more_wind_never_improves_the_answer() {
    long seed = 20261125;
    Random random = new Random(seed);
    for (int i = 0; i < 10; i++) {
      CardBuilder card =
          CardBuilder.small()
              .edge(50 + random.nextInt(300))
              .mass(Mass.ofGrams(25 + random.nextInt(60)));
      Verdict before = Verdict.GO;
      for (double mph = 0; mph <= 26; mph += 2) {
        Verdict verdict = ruling(card.wind(wind(mph * 0.7, mph, 250))).verdict();
        assertThat(verdict.or(before)).as("seed %d, %s mph", seed, mph).isEqualTo(verdict);
        before = verdict;
      }
    }
  }

  @Test
  void a_rocket_too_heavy_for_the_rod_is_no_go_with_a_sentence() {
    Ruling ruling = ruling(CardBuilder.small().mass(new Mass(1.3)));

    assertThat(ruling.verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(ruling.reason()).contains("too heavy to leave the rod");
    assertThat(ruling.limits()).extracting(Ruling.Limit::rule).doesNotContain("rod");
  }

  @Test
  void a_grounding_fix_is_no_go_until_it_is_done() {
    Facts facts =
        Facts.none()
            .with(Fix.TEXT, "refit the shock cord")
            .with(Fix.SEVERITY, Fix.Severity.GROUNDS_IT);
    Ruling ruling =
        ruling(CardBuilder.small().wind(wind(1, 1, 0)).fix(new Fix(new RecordId("t.1"), facts)));

    assertThat(ruling.verdict()).isEqualTo(Verdict.NO_GO);
    assertThat(ruling.reason()).contains("refit the shock cord");
  }

  @Test
  void a_lot_with_a_malfunction_is_marginal_and_says_how_many() {
    CardBuilder card = CardBuilder.small().wind(wind(1, 1, 0));

    assertThat(ruling(card.lot(CardBuilder.record("K7", 6, 0))).verdict()).isEqualTo(Verdict.GO);
    Ruling ruling = ruling(card.lot(CardBuilder.record("K7", 6, 1)));
    assertThat(ruling.verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(ruling.reason()).contains("lot K7: 1 of 6 burst (1 in 238 to 2 in 3)");
  }

  @Test
  void own_flights_say_which_delay_suits_without_a_word_against_the_card() {
    CardBuilder card = CardBuilder.small().wind(wind(1, 1, 0));
    FlightLog.Moments off = new FlightLog.Moments(3, 0.4, 0.02);
    Ruling ruling =
        ruling(card.suits(new Delays.Suits(new RecordId("test.1"), "C6", 5, 4, 5, off)));

    assertThat(ruling.verdict()).isEqualTo(Verdict.GO);
    assertThat(ruling.findings())
        .extracting(Ruling.Finding::sentence)
        .contains(
            "4 of 5 own flights on C6 say delay 5; best delay was predicted 0.4 s too short (3"
                + " flights)");
  }

  @Test
  void the_lot_of_a_booster_counts_as_well() {
    CardBuilder card = CardBuilder.small().wind(wind(1, 1, 0)).lot(CardBuilder.record("K7", 6, 0));

    Ruling ruling = ruling(card.boosterLot(CardBuilder.record("L2", 9, 2)));

    assertThat(ruling.verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(ruling.reason()).contains("lot L2: 2 of 9 burst (1 in 36 to 5 in 8)");
  }

  @Test
  void the_lesser_of_the_fliers_own_limits_counts() {
    Settings careful =
        Settings.standard().with(OwnLimits.none().withWind(Optional.of(Speed.ofMph(12))));
    Card card =
        CardBuilder.small().rocketFact(f -> f.with(Rocket.OWN_LIMIT, Speed.ofMph(9))).build();

    assertThat(limitMps(new Preflight(careful).answer(card).ruling(), "own"))
        .isCloseTo(9 * 0.44704, within(1e-9));
  }

  @Test
  void an_unknown_rule_set_is_unknown_and_lists_the_known_ones() {
    Settings settings = Settings.standard().withRuleSet("moon");
    Ruling ruling = new Preflight(settings).answer(CardBuilder.small().build()).ruling();

    assertThat(ruling.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(ruling.reason()).contains("moon").contains("us-model");
  }

  @Test
  void the_same_card_gets_the_same_answer() {
    Card card = CardBuilder.small().build();

    assertThat(preflight.answer(card)).isEqualTo(new Preflight(Settings.standard()).answer(card));
  }
}
