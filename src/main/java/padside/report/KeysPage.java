package padside.report;

import java.util.List;
import java.util.stream.Stream;
import padside.flight.Ruling.Verdict;
import padside.page.Keys;
import padside.page.Page;
import padside.page.Prose;

/** One sheet for the pad box: keys, what the check's answers mean, and who decides. */
final class KeysPage {
  private static final String CAUTIONS =
      "Read the wind yourself, just before the flight. The key goes in when all are back"
          + " and told. After a misfire the key comes out and nobody goes near"
          + " before the wait is over. No flight under or into an aircraft or a cloud, none with dry"
          + " grass round the pad or a fire ban. A rocket in wires, in a tree or on a road is left"
          + " there. Heights and landings foretold are estimates.";

  private KeysPage() {}

  static Page of(PageSource source) {
    return new Page(
        "Padside at the pad",
        source.made("Keys of the main screens; F1 shows those of any."),
        List.of(
            Page.Section.of(
                "",
                Prose.notice(
                    "The check advises; you decide. Above it stand the national safety code, local"
                        + " law, the site's rules and the range officer, and it knows only what"
                        + " was typed."),
                new Keys(
                    Stream.concat(Stream.of(answers()), source.keys().groups().stream()).toList()),
                Prose.of(CAUTIONS))));
  }

  private static Keys.Group answers() {
    return new Keys.Group(
        "The check says",
        Stream.of(Verdict.values())
            .map(verdict -> new Keys.Key(verdict.word(), meaning(verdict)))
            .toList());
  }

  private static String meaning(Verdict verdict) {
    return switch (verdict) {
      case GO -> "all that is asked is known, and nothing speaks against it";
      case MARGINAL ->
          "within a fifth of a limit, or short of something advised: look at the reasons (F3)";
      case UNKNOWN -> "something the check needs is missing; it says what";
      case NO_GO -> "a limit is passed or a rule is broken; the first line says which";
    };
  }
}
