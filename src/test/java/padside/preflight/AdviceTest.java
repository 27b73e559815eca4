package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Fix;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Ruling.Verdict;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Speed;
import padside.units.Wind;

/** What would help, held against the check itself put to each card with the change made by hand. */
class AdviceTest {
  private final Preflight preflight = new Preflight(Settings.standard());

  private Advice advise(Card card) {
    return preflight.advise(card, preflight.answer(card), () -> false);
  }

  private static List<String> changes(Advice advice) {
    return advice.helps().stream().map(Advice.Help::change).toList();
  }

  private static Wind southWest(double mps) {
    return new Wind(new Speed(mps), new Speed(mps), Optional.of(new Bearing(225)));
  }

  @Test
  void a_card_at_go_needs_no_help() {
    Card card = AdviceBox.on(CardBuilder.small().build());

    assertThat(preflight.answer(card).ruling().verdict()).isEqualTo(Verdict.GO);
    assertThat(advise(card)).isEqualTo(new Advice(List.of(), Optional.empty()));
  }

  @Test
  void a_delay_too_short_is_made_good_by_the_delay_next_to_it() {
    // C6-7 and C6-5 in the box: by the table of the outlook five seconds is the nearer fit.
    Card card = AdviceBox.on(CardBuilder.small().motor("C6-3").edge(300).build());
    Advice advice = advise(card);

    assertThat(preflight.answer(card).ruling().verdict()).isNotEqualTo(Verdict.GO);
    assertThat(changes(advice).get(0)).isEqualTo("with C6-5");
    assertThat(advice.helps()).allMatch(help -> help.verdict() == Verdict.GO);
    assertThat(advice.remark()).isEmpty();
  }

  @Test
  void every_help_is_what_the_check_says_with_the_change_made() {
    List<Card> cards = AdviceBox.cards(7, 24);
    int helps = 0;
    for (Card card : cards) {
      for (Advice.Help help : advise(card).helps()) {
        Answer then = preflight.answer(AdviceBox.made(help.change(), card));
        assertThat(then.ruling().verdict())
            .as("%s on %s, seed 7", help, preflight.answer(card).headline())
            .isLessThanOrEqualTo(help.verdict());
        double told = help.limit().orElseThrow().metresPerSecond();
        assertThat(then.ruling().limit().orElseThrow().metresPerSecond())
            .as("%s on %s, seed 7", help, preflight.answer(card).headline())
            .isBetween(told - 0.01, told * 1.1 + 0.01);
        assertThat(then.outlook().orElseThrow().apogee().metres())
            .isCloseTo(help.apogee().orElseThrow().metres(), within(0.01));
        helps++;
      }
    }
    assertThat(helps).isGreaterThan(20);
  }

  @Test
  void no_smaller_change_that_makes_it_go_is_left_out() {
    int without = 0;
    for (Card card : AdviceBox.cards(8, 10)) {
      Advice advice = advise(card);
      if (preflight.answer(card).ruling().verdict() == Verdict.GO) {
        continue;
      }
      List<String> told = changes(advice);
      boolean go = advice.helps().stream().anyMatch(help -> help.verdict() == Verdict.GO);
      for (List<String> way : AdviceBox.ways(card)) {
        if (go && way.contains(told.get(0))) {
          break;
        }
        for (String change : way) {
          without++;
          assertThat(comfortable(AdviceBox.made(change, card)))
              .as("%s before %s on %s, seed 8", change, told, card.wind())
              .isFalse();
        }
      }
    }
    assertThat(without).isGreaterThan(50);
  }

  /** GO, and would be in a tenth more wind. */
  private boolean comfortable(Card card) {
    Wind wind = card.wind().orElseThrow();
    Card windier = card.withWind(wind.scaledTo(new Speed(wind.tested().metresPerSecond() * 1.1)));
    return preflight.answer(card).ruling().verdict() == Verdict.GO
        && preflight.answer(windier).ruling().verdict() == Verdict.GO;
  }

  @Test
  void two_changes_at_once_are_told_only_where_no_single_one_makes_it_go() {
    int pairs = 0;
    for (Card card : AdviceBox.cards(10, 40)) {
      List<Advice.Help> helps = advise(card).helps();
      boolean paired = helps.stream().anyMatch(help -> help.change().contains(" and with "));
      if (paired && helps.get(0).verdict() == Verdict.GO) {
        pairs++;
        assertThat(helps).allMatch(help -> help.change().contains(" and with "));
        assertThat(AdviceBox.ways(card).stream().flatMap(List::stream))
            .noneMatch(change -> comfortable(AdviceBox.made(change, card)));
      }
    }
    assertThat(pairs).isPositive();
  }

  @Test
  void a_grounded_rocket_is_not_searched_for() {
    Fix fix =
        new Fix(
            new RecordId("fix.1"),
            Facts.none().with(Fix.TEXT, "fin cracked").with(Fix.SEVERITY, Fix.Severity.GROUNDS_IT));
    Card card = AdviceBox.on(CardBuilder.small().motor("C6-3").edge(300).fix(fix).build());

    assertThat(advise(card).helps()).isEmpty();
    assertThat(advise(card).remark()).contains("Nothing but mending it: fin cracked.");
  }

  @Test
  void what_is_missing_comes_first() {
    assertThat(advise(AdviceBox.on(CardBuilder.small().noWind().build())).remark().orElseThrow())
        .startsWith("Enter what is missing");
    assertThat(advise(AdviceBox.on(CardBuilder.small().noField().build())).helps()).isEmpty();
  }

  @Test
  void past_the_fliers_own_limit_nothing_but_less_wind_helps_and_how_little_is_told() {
    Card card =
        AdviceBox.on(
            CardBuilder.small()
                .rocketFact(facts -> facts.with(Rocket.OWN_LIMIT, Speed.ofMph(5)))
                .wind(southWest(3))
                .build());
    Advice advice = advise(card);

    assertThat(advice.helps()).isEmpty();
    // A fifth under the limit of 5 mph: 4 mph.
    assertThat(advice.remark().orElseThrow())
        .contains("past the limit of 5 mph (own limit)")
        .containsPattern("GO up to (4|3.9) mph");
  }

  @Test
  void a_lot_with_malfunctions_gives_way_to_one_without_and_is_never_put_first() {
    Card.LotRecord bad = CardBuilder.record("K9", 5, 2);
    Card card = AdviceBox.on(CardBuilder.small().motor("C6-5").edge(300).lot(bad).build());

    assertThat(changes(advise(card)).get(0)).isEqualTo("with C6-5 of lot K1");

    Card only =
        AdviceBox.with(card, List.of(AdviceBox.stock("C6-5", bad), AdviceBox.stock("B6-4", bad)));
    assertThat(advise(only).helps()).noneMatch(help -> help.verdict() == Verdict.GO);
  }

  @Test
  void tilt_stays_within_the_code_and_is_not_proposed_where_none_is_known() {
    Card card =
        AdviceBox.with(CardBuilder.small().edge(60).wind(southWest(2.5)).build(), List.of());

    assertThat(changes(advise(card)))
        .isNotEmpty()
        .allMatch(change -> change.startsWith("with the rod leaning"));
    Preflight unknown = new Preflight(Settings.standard().withRuleSet("nowhere"));
    assertThat(unknown.advise(card, unknown.answer(card), () -> false).helps()).isEmpty();
  }

  @Test
  void the_same_card_gets_the_same_advice() {
    for (Card card : AdviceBox.cards(9, 5)) {
      assertThat(advise(card)).isEqualTo(advise(card));
    }
  }

  @Test
  void a_search_nobody_waits_for_any_more_is_given_up() {
    Card card = AdviceBox.on(CardBuilder.small().edge(60).wind(southWest(4)).build());
    Answer answer = preflight.answer(card);
    AtomicInteger asked = new AtomicInteger();

    assertThatThrownBy(() -> preflight.advise(card, answer, () -> asked.incrementAndGet() > 5))
        .isInstanceOf(CancellationException.class);
    assertThat(asked).hasValue(6);
  }

  @Test
  void a_rod_that_leans_may_be_set_upright() {
    Card leaning =
        AdviceBox.with(CardBuilder.small().edge(80).build(), List.of())
            .withTilt(Angle.ofDegrees(28), new Bearing(45));

    assertThat(preflight.answer(leaning).ruling().verdict()).isNotEqualTo(Verdict.GO);
    assertThat(changes(advise(leaning))).isNotEmpty();
    assertThat(preflight.answer(AdviceBox.made(changes(advise(leaning)).get(0), leaning)))
        .extracting(answer -> answer.ruling().verdict())
        .isEqualTo(Verdict.GO);
  }

  @Test
  void devices_of_unknown_size_are_not_proposed() {
    Card card = CardBuilder.small().motor("B6-4").edge(55).wind(southWest(3)).build();
    List<RecoveryDevice> devices = new ArrayList<>(AdviceBox.on(card).box().devices());
    devices.add(
        new RecoveryDevice(
            new RecordId("device.9"), Facts.none().with(RecoveryDevice.NAME, "no size")));

    assertThat(changes(advise(card.withBox(new Box(List.of(), devices)))))
        .noneMatch(change -> change.contains("no size"));
  }
}
