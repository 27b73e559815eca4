package padside.flight;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Facts;

/**
 * The words an outcome is told in, by aspect: boost, burn, ejection, recovery, landing, landed_on.
 * They are data, read from {@code data/outcomes.csv}; these aspects are columns of {@link Flight}.
 * Beside them stand the words for the cause of an {@link Attempt} and for {@link Flight.PartState}.
 */
public record OutcomeTable(List<Outcome> outcomes) {
  /** The place of a rocket that nobody has found. */
  public static final String LOST = "lost";

  private static final String NOMINAL = "nominal";

  /**
   * One word for one aspect.
   *
   * @param code as stored
   * @param words as shown
   * @param mark nominal, a malfunction, or neither
   */
  public record Outcome(String aspect, String code, String words, Mark mark) {}

  /** Whether an outcome is the one hoped for. */
  public enum Mark {
    NOMINAL,
    PASSABLE,
    MALFUNCTION,
    /** A malfunction that may hurt: the motor did not stay whole. */
    BURST;

    public boolean isMalfunction() {
      return this == MALFUNCTION || this == BURST;
    }
  }

  /** Keeps its own list. */
  public OutcomeTable {
    outcomes = List.copyOf(outcomes);
  }

  /** Reads the table; the first line names the columns. */
  public static OutcomeTable read(Reader csv) throws IOException {
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(csv)) {
      return new OutcomeTable(rows.stream().map(OutcomeTable::outcome).toList());
    }
  }

  /** The words for an aspect, the nominal one first. */
  public List<Outcome> of(String aspect) {
    return outcomes.stream().filter(outcome -> outcome.aspect().equals(aspect)).toList();
  }

  public Optional<Outcome> find(String aspect, String code) {
    for (Outcome outcome : outcomes) { // asked a million times for a page of a large log
      if (outcome.code().equals(code) && outcome.aspect().equals(aspect)) {
        return Optional.of(outcome);
      }
    }
    return Optional.empty();
  }

  /** True of facts in which what is told of an aspect is marked as a malfunction. */
  public Predicate<Facts> malfunction(String aspect) {
    Set<String> codes =
        of(aspect).stream()
            .filter(outcome -> outcome.mark().isMalfunction())
            .map(Outcome::code)
            .collect(Collectors.toSet());
    return facts -> code(facts, aspect).filter(codes::contains).isPresent();
  }

  /** True of facts in which any aspect is told as a malfunction. */
  public Predicate<Facts> anyMalfunction() {
    return aspects().map(this::malfunction).reduce(facts -> false, Predicate::or);
  }

  private Stream<String> aspects() {
    return outcomes.stream().map(Outcome::aspect).distinct();
  }

  /** How a stored code is shown; a code of a newer version shows as it is. */
  public String words(String aspect, String code) {
    return find(aspect, code).map(Outcome::words).orElse(code);
  }

  /**
   * What came of a flight in a few words: {@code nominal}, or what was not, such as {@code ejection
   * late, landed on tree}; empty when nothing was told.
   */
  public String told(Facts facts) {
    List<String> known = aspects().filter(aspect -> code(facts, aspect).isPresent()).toList();
    String amiss =
        known.stream()
            .filter(aspect -> !isNominal(aspect, code(facts, aspect).orElseThrow()))
            .map(aspect -> phrase(aspect, code(facts, aspect).orElseThrow()))
            .collect(Collectors.joining(", "));
    return known.isEmpty() || !amiss.isEmpty() ? amiss : NOMINAL;
  }

  /**
   * All that is told of what came of a flight, for whoever looks for a word of it: what {@link
   * #told} says, every aspect, nominal ones too, and {@code malfunction} where one is; or how far
   * it has come. {@code nominal} stands in it only where all is.
   */
  public String everyWord(Flight flight) {
    if (flight.status() != Flight.Status.FLOWN) {
      return flight.status().words();
    }
    if (flight.awaitsDebrief()) {
      return "debrief waits";
    }
    Facts facts = flight.facts();
    String whole = told(facts);
    Stream<String> phrases =
        aspects()
            .filter(aspect -> code(facts, aspect).isPresent())
            .map(aspect -> phrase(aspect, code(facts, aspect).orElseThrow()))
            .filter(phrase -> !phrase.endsWith(" " + NOMINAL));
    return Stream.of(
            whole.equals(NOMINAL) ? Stream.of(whole) : Stream.<String>empty(),
            phrases,
            anyMalfunction().test(facts) ? Stream.of("malfunction") : Stream.<String>empty())
        .flatMap(each -> each)
        .collect(Collectors.joining(", "));
  }

  private boolean isNominal(String aspect, String code) {
    return find(aspect, code).filter(outcome -> outcome.mark() == Mark.NOMINAL).isPresent();
  }

  /** A rocket that was not found landed on nothing anybody could tell. */
  private String phrase(String aspect, String code) {
    if (aspect.equals(Flight.LANDED_ON.name()) && code.equals(LOST)) {
      return words(aspect, code);
    }
    return aspect.replace('_', ' ') + " " + words(aspect, code);
  }

  private static Optional<String> code(Facts facts, String aspect) {
    return Optional.ofNullable(facts.cells().get(aspect))
        .flatMap(Facts.Cell::value)
        .filter(String.class::isInstance)
        .map(String.class::cast);
  }

  private static Outcome outcome(NamedCsvRecord row) {
    Mark mark =
        switch (row.getField("good")) {
          case "yes" -> Mark.NOMINAL;
          case "no" -> Mark.MALFUNCTION;
          case "burst" -> Mark.BURST;
          default -> Mark.PASSABLE;
        };
    return new Outcome(row.getField("aspect"), row.getField("code"), row.getField("words"), mark);
  }
}
