package padside.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.insight.Burns;
import padside.insight.Delays;
import padside.insight.Failures;
import padside.insight.Igniters;
import padside.insight.Interval;
import padside.insight.Reliability;
import padside.screen.LessonsText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** Tells what the log teaches of lots, igniters and delays. */
@Command(
    name = "lots",
    description =
        "How the lots of motors have done, suspect first; igniters; delays as flown beside their"
            + " labels, and which suited.",
    footer = {"", "Exit status: 0 done, 1 the log failed, 2 wrong input."})
final class LotsCommand implements Callable<Integer> {
  @Mixin private Output output;
  @ParentCommand private RootCommand root;

  @Override
  public Integer call() throws Fault {
    Logbook book;
    try (FlightLog open = root.openLogToRead()) {
      book = Logbook.readWhole(open, Shipped.motors());
    }
    output.print(json(book), () -> LessonsText.whole(book, Shipped.outcomes(), Output.WIDTH));
    return Exit.DONE;
  }

  private static Map<String, Object> json(Logbook book) {
    Reliability reliability = new Reliability(book, Shipped.outcomes());
    Delays delays = Delays.of(book);
    Igniters igniters = Igniters.of(book);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(
        "lots", reliability.suspectFirst().stream().map(lot -> lot(lot, reliability)).toList());
    json.put("types", named(reliability.byType()));
    json.put("date_codes", named(reliability.byDateCode()));
    json.put("key_pressed", share(igniters.tries()));
    json.put(
        "igniters",
        igniters.kinds().stream()
            .map(
                kind -> Map.of("kind", kind.name(), "misfires", kind.misfires(), "own", kind.own()))
            .toList());
    json.put("delays", delays.byMotor().stream().map(LotsCommand::delay).toList());
    json.put("suits", delays.suits().stream().map(each -> suits(each, book)).toList());
    return json;
  }

  private static Map<String, Object> lot(Lot lot, Reliability reliability) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", lot.id().text());
    json.put("motor", lot.motor());
    json.put("code", lot.code());
    json.put("date_code", lot.dateCode().orElse(null));
    json.putAll(burns(reliability.of(lot)));
    json.put(
        "differs_by_chance",
        reliability.contrast(lot).map(Reliability.Contrast::chance).orElse(null));
    return json;
  }

  private static List<Map<String, Object>> named(Map<String, Burns> burns) {
    return burns.entrySet().stream()
        .map(
            each -> {
              Map<String, Object> json = new LinkedHashMap<>();
              json.put("name", each.getKey());
              json.putAll(burns(each.getValue()));
              return json;
            })
        .toList();
  }

  private static Map<String, Object> burns(Burns burns) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("fired", burns.fired());
    json.put("untold", burns.untold());
    json.put("burst", burns.burst());
    json.putAll(share(burns.failures()));
    json.put("words", burns.words());
    return json;
  }

  private static Map<String, Object> share(Failures failures) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("failed", failures.failed());
    json.put("of", failures.of());
    if (failures.of() > 0) {
      json.put("share_95", ends(failures.exact()));
      json.put("share_95_jeffreys", ends(failures.jeffreys()));
      json.put("next_works", failures.allWork(1));
    }
    return json;
  }

  private static List<Double> ends(Interval interval) {
    return List.of(interval.low(), interval.high());
  }

  private static Map<String, Object> delay(Delays.AsFlown flown) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("motor", flown.motor());
    json.put("label_s", flown.label());
    json.put("flown", flown.measured().count());
    json.put("mean_s", flown.measured().mean());
    json.put("mean_95_s", flown.mean().map(LotsCommand::ends).orElse(null));
    json.put("beyond_certification", flown.isBeyond());
    return json;
  }

  private static Map<String, Object> suits(Delays.Suits suits, Logbook book) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("rocket_name", book.rocket(suits.rocket()).map(each -> each.name()).orElse(null));
    json.put("motor", suits.motors());
    json.put("delay_s", suits.delay());
    json.put("says", suits.says());
    json.put("of", suits.of());
    json.put("predicted_short_s", suits.off().count() == 0 ? null : suits.off().mean());
    return json;
  }
}
