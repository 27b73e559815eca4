package padside.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.CheckLine;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.preflight.Answer;

/**
 * The checklist of one flight: the standing lines, the rocket's own, its open fixes, and which of
 * them are ticked.
 *
 * @param ticked keys, also of lines that are not read for this flight
 */
record PadList(List<PadLine> lines, Set<String> ticked) {
  private static final String ALTIMETER = "altimeter";
  private static final String PEOPLE = "people";
  private static final String FIRE = "fire";

  PadList {
    lines = List.copyOf(lines);
    ticked = Set.copyOf(ticked);
  }

  /** That of a flight, with what the check said of it last. */
  static PadList of(Flight flight, Optional<Answer> answer, World world) {
    List<PadLine> lines = new ArrayList<>();
    world.checklist().with(world.log().checkLines()).forRocket(flight.rocket()).stream()
        .filter(line -> !line.key().equals(ALTIMETER) || flight.altimeter().isPresent())
        .map(line -> line(line, flight, answer, world))
        .forEach(lines::add);
    flight.rocket().map(world.log()::openFixes).orElse(List.of()).stream()
        .map(PadList::line)
        .forEach(lines::add);
    lines.sort(Comparator.comparing(PadLine::part));
    return new PadList(lines, Set.copyOf(flight.facts().get(Flight.TICKED).orElse(List.of())));
  }

  private static PadLine line(CheckLine line, Flight flight, Optional<Answer> answer, World world) {
    Optional<Boolean> ban = flight.day().flatMap(world.log()::day).flatMap(Day::fireBan);
    boolean warns = line.key().equals(FIRE) && ban.orElse(false);
    Optional<String> known =
        switch (line.key()) {
          case PEOPLE -> answer.flatMap(Answer::standBack);
          case FIRE -> Optional.of(ban.map(any -> "none noted").orElse("not asked"));
          case ALTIMETER -> PlanText.altimeter(flight, world.log());
          default -> Optional.empty();
        };
    String text =
        warns
            ? "FIRE BAN noted · " + line.text()
            : line.text() + known.map(" · "::concat).orElse("");
    return new PadLine(line.key(), line.part(), text, warns);
  }

  private static PadLine line(Fix fix) {
    boolean grounds = fix.severity() == Fix.Severity.GROUNDS_IT;
    String words = grounds ? "GROUNDED: " + fix.text() : fix.words();
    return new PadLine(fix.id().text(), CheckLine.Part.ROCKET, words, grounds);
  }

  boolean isTicked(PadLine line) {
    return ticked.contains(line.key());
  }

  /** Lines not ticked, in order. */
  List<PadLine> open() {
    return lines.stream().filter(line -> !isTicked(line)).toList();
  }

  /** Where a cursor on a key is; on the first open line while there is none. */
  int index(Optional<String> key) {
    List<String> keys = lines.stream().map(PadLine::key).toList();
    Optional<String> from = key.filter(keys::contains);
    return Math.max(
        0,
        from.or(() -> open().stream().map(PadLine::key).findFirst())
            .map(keys::indexOf)
            .orElse(keys.size() - 1));
  }

  /** The first line of the part behind that of a line; the last line where none follows. */
  PadLine behindPart(PadLine line) {
    return lines.stream()
        .filter(each -> each.part().compareTo(line.part()) > 0)
        .findFirst()
        .orElse(lines.get(lines.size() - 1));
  }

  /** One line ticked, or no longer. */
  PadList turned(PadLine line) {
    return isTicked(line) ? without(List.of(line)) : with(List.of(line));
  }

  /** All lines of one part ticked. */
  PadList withPart(CheckLine.Part part) {
    return with(of(part));
  }

  /** No line of these parts ticked. */
  PadList withoutParts(CheckLine.Part... parts) {
    return without(Stream.of(parts).flatMap(part -> of(part).stream()).toList());
  }

  private List<PadLine> of(CheckLine.Part part) {
    return lines.stream().filter(line -> line.part() == part).toList();
  }

  private PadList with(List<PadLine> more) {
    return new PadList(
        lines,
        Set.copyOf(
            Stream.concat(ticked.stream(), more.stream().map(PadLine::key)).distinct().toList()));
  }

  private PadList without(List<PadLine> some) {
    List<String> keys = some.stream().map(PadLine::key).toList();
    return new PadList(
        lines, Set.copyOf(ticked.stream().filter(key -> !keys.contains(key)).toList()));
  }

  /** The ticks as they are kept: those of the lines in order, then the others. */
  Facts facts() {
    List<String> keys = lines.stream().map(PadLine::key).toList();
    List<String> inOrder =
        Stream.concat(
                keys.stream().filter(ticked::contains),
                ticked.stream().filter(key -> !keys.contains(key)).sorted())
            .toList();
    return Facts.none().with(Flight.TICKED, inOrder);
  }

  /** A flight that has not been to the pad: nothing ticked, nothing gone on against. */
  static Facts none() {
    return Facts.emptied(List.of(Flight.TICKED, Flight.UNTICKED, Flight.WENT_ON, Flight.AGAINST));
  }

  /** The ticks of a flight once the key is out again: lines of these parts are read anew. */
  static Facts unticked(RecordId flight, World world, CheckLine.Part... parts) {
    return world
        .log()
        .flight(flight)
        .map(each -> of(each, Optional.empty(), world).withoutParts(parts).facts())
        .orElse(Facts.none());
  }
}
