package padside.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;
import padside.flight.Ruling;
import padside.plan.Packing;
import padside.plan.Plan;
import padside.plan.Taken;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.LotRecords;
import padside.units.Notations;
import padside.units.UnitSystem;
import padside.units.Wind;

/** A plan in words. */
public final class PlanText {
  private PlanText() {}

  /**
   * A planned flight as it is put to the check: in still air, so that what speaks against it is not
   * the wind, and its limits tell what wind it stands.
   */
  public static Card inStillAir(Flight flight, LotRecords records) {
    return Card.withoutBox(flight, records, Optional.empty()).withWind(Wind.calm());
  }

  /** What wind it stands, {@code 8.5 mph (rod)}, or the word of the check where it stands none. */
  static String stands(Answer answer, UnitSystem units) {
    Ruling ruling = answer.ruling();
    return switch (ruling.verdict()) {
      case NO_GO, UNKNOWN -> ruling.verdict().word();
      case GO, MARGINAL ->
          ruling.limits().stream()
              .min(Comparator.comparingDouble(limit -> limit.wind().metresPerSecond()))
              .map(
                  limit ->
                      Notations.windSpeed(units).showDown(limit.wind()) + " (" + limit.rule() + ")")
              .orElse("no limit known");
    };
  }

  /** All that is to be seen to: what the box lacks, open fixes, what the check has against it. */
  public static List<String> amiss(Plan.Line line, Optional<Answer> answer) {
    return Stream.concat(
            line.lacks().stream(),
            answer.map(Answer::ruling).filter(PlanText::objects).map(Ruling::reason).stream())
        .distinct()
        .toList();
  }

  private static boolean objects(Ruling ruling) {
    return ruling.verdict() != Ruling.Verdict.GO;
  }

  /** {@code Lamplighter on D12-5}. */
  static String name(Plan.Line line) {
    String rocket = line.rocket().map(each -> each.name()).orElse("no rocket");
    return rocket + " on " + line.flight().motor().orElse("no motor");
  }

  /** What it flies with: {@code 18in checked, old grey; D12-5 lot D130 from lower tray}. */
  static String with(Plan.Line line, Logbook book) {
    String gear =
        Stream.of(
                Optional.of(recovery(line.flight(), book).orElse("no recovery")),
                altimeter(line.flight(), book))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", "));
    return Stream.concat(Stream.of(gear), line.motors().stream().flatMap(PlanText::draws))
        .collect(Collectors.joining("; "));
  }

  /** The name of its parachute or streamer. */
  public static Optional<String> recovery(Flight flight, Logbook book) {
    return flight.device().flatMap(book::device).map(RecoveryDevice::name);
  }

  /** The name of the altimeter it carries. */
  public static Optional<String> altimeter(Flight flight, Logbook book) {
    return flight.altimeter().flatMap(book::altimeter).map(Altimeter::name);
  }

  private static Stream<String> draws(Taken taken) {
    return taken.draws().stream()
        .map(
            draw ->
                (draw.count() == 1 ? "" : draw.count() + "x")
                    + taken.motor()
                    + " lot "
                    + draw.lot().code()
                    + draw.lot().facts().get(Lot.PLACE).map(place -> " from " + place).orElse(""));
  }

  /** The counts above the list. */
  static String counts(Plan plan, Packing packing) {
    int lacking = plan.lacking();
    String planned = plan.lines().size() + " planned";
    String motors =
        lacking == 0 ? "" : " · short " + lacking + (lacking == 1 ? " motor" : " motors");
    return planned + motors + " · " + left(packing);
  }

  /** How far packing has come. */
  static String left(Packing packing) {
    return packing.left() == 0
        ? "all packed"
        : packing.left() + " of " + packing.items().size() + " to pack";
  }

  /** {@code [x]} once packed. */
  static String box(Packing packing, Packing.Item item) {
    return packing.isPacked(item) ? "[x]" : "[ ]";
  }

  /** Where it is kept, and what is to be known about it. */
  static String about(Packing.Item item) {
    return Stream.of(item.where(), item.note())
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining("; "));
  }

  /** Plan and packing list as plain lines. */
  public static List<String> whole(
      Plan plan, Map<RecordId, Answer> answers, Packing packing, Logbook book, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    lines.add("Plan · " + DayWords.of(plan.day(), book));
    lines.add(counts(plan, packing));
    lines.add("");
    for (int i = 0; i < plan.lines().size(); i++) {
      Plan.Line line = plan.lines().get(i);
      Optional<Answer> answer = Optional.ofNullable(answers.get(line.flight().id()));
      String stands = answer.map(each -> told(each, units)).orElse("");
      lines.add(CheckText.padLeft("" + (i + 1), 2) + "  " + name(line) + ": " + stands);
      lines.add("    " + with(line, book));
      amiss(line, answer).forEach(text -> lines.add("    ! " + text));
    }
    for (Packing.Group group : Packing.Group.values()) {
      List<Packing.Item> items =
          packing.items().stream().filter(item -> item.group() == group).toList();
      if (!items.isEmpty()) {
        lines.add("");
        lines.add(group.words());
        items.forEach(item -> lines.add(packed(packing, item)));
      }
    }
    lines.add("");
    lines.add(CheckText.CAUTION);
    return lines;
  }

  /** With a word before what is a speed. */
  private static String told(Answer answer, UnitSystem units) {
    return (objects(answer.ruling()) && answer.ruling().verdict() != Ruling.Verdict.MARGINAL
            ? ""
            : "stands ")
        + stands(answer, units);
  }

  private static String packed(Packing packing, Packing.Item item) {
    return "  " + box(packing, item) + " " + told(item);
  }

  /** A line of the packing list without its box. */
  static String told(Packing.Item item) {
    String about = about(item);
    return item.counted() + (about.isEmpty() ? "" : " · " + about);
  }
}
