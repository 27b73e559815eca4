package padside.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.units.Reading;

/**
 * What is looked for: flights that match every word and every filter.
 *
 * @param words as {@link Folding} has them, none empty
 * @param open only flights after which something was noted to mend that is not mended yet
 */
public record Search(List<String> words, List<Filter> filters, boolean open) {
  /** Everything. */
  public static final Search ALL = new Search(List.of(), List.of(), false);

  /** So many words and filters at most: more are no search but a text put in by accident. */
  public static final int MOST = 20;

  /** The word that asks for open fixes. */
  public static final String OPEN = "open";

  /** What a filter looks at. */
  public enum Part {
    ROCKET("its rocket's name"),
    MOTOR("its motor"),
    LOT("the code or date code of a lot its motors come from"),
    FIELD("the name of the field"),
    OUTCOME("what came of it, such as nominal, malfunction, late"),
    ON("the date, or its beginning: 2026-05"),
    FROM("that date or later"),
    TO("that date or earlier");

    private final String meaning;

    Part(String meaning) {
      this.meaning = meaning;
    }

    /** As it is typed, without the colon. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** What of the flight is looked at. */
    public String meaning() {
      return meaning;
    }

    /** Whether it is about dates. */
    public boolean isDate() {
      return this == ON || this == FROM || this == TO;
    }

    static Optional<Part> find(String code) {
      return Arrays.stream(values()).filter(part -> part.code().equals(code)).findFirst();
    }

    /** All of them as they are typed. */
    public static String list() {
      return Arrays.stream(values())
          .map(part -> part.code() + ":")
          .collect(Collectors.joining(" "));
    }
  }

  /**
   * One filter.
   *
   * @param value as {@link Folding} has it; stands anywhere in what the part tells; of a date the
   *     ISO date or its beginning
   */
  public record Filter(Part part, String value) {
    /** Whether what a flight has for this part passes; of a date it is ISO 8601. */
    public boolean passes(String folded) {
      return switch (part) {
        case ROCKET, MOTOR, LOT, FIELD, OUTCOME -> folded.contains(value);
        case ON -> folded.startsWith(value);
        case FROM -> folded.compareTo(value) >= 0;
        case TO -> folded.compareTo(value) <= 0 || folded.startsWith(value);
      };
    }

    private String told() {
      return switch (part) {
        case ROCKET, MOTOR, LOT, FIELD, OUTCOME -> part.code() + " \"" + value + "\"";
        case ON, FROM, TO -> part.code() + " " + value;
      };
    }
  }

  /** Keeps its own lists. */
  public Search {
    words = List.copyOf(words);
    filters = List.copyOf(filters);
  }

  /** Reads a typed line. */
  public static Reading<Search> read(String typed) {
    List<TypedTerm> terms = TypedTerm.in(typed);
    if (terms.size() > MOST) {
      return Reading.refused(
          "That is " + terms.size() + " words and filters; " + MOST + " are the most.");
    }
    List<String> words = new ArrayList<>();
    List<Filter> filters = new ArrayList<>();
    boolean open = false;
    for (TypedTerm term : terms) {
      if (term.filter().isEmpty()) {
        boolean asks = !term.quoted() && Folding.of(term.text()).equals(OPEN);
        open |= asks;
        words.addAll(asks ? List.of() : List.of(Folding.of(term.text())));
        continue;
      }
      Reading<Optional<Filter>> filter = filter(term.filter().get(), term.text());
      if (filter.objection().isPresent()) {
        return Reading.refused(filter.objection().get());
      }
      filter.value().orElseThrow().ifPresent(filters::add);
    }
    return Reading.of(
        new Search(words.stream().filter(any -> !any.isEmpty()).toList(), filters, open));
  }

  /**
   * One filter by its name and what was typed behind it; nothing where that is empty, as it is
   * while it is being typed.
   */
  public static Reading<Optional<Filter>> filter(String name, String typed) {
    Optional<Part> part = Part.find(Folding.of(name));
    if (part.isEmpty()) {
      return Reading.refused(
          "There is no filter "
              + Reading.echo(name + ":")
              + "; there are "
              + Part.list()
              + " and "
              + OPEN
              + ". Quotes around it look for it as a word.");
    }
    String value = Folding.of(typed.strip());
    if (value.isEmpty()) {
      return Reading.of(Optional.empty());
    }
    if (part.get().isDate() && !IsoBeginning.is(value)) {
      return Reading.refused(
          part.get().code()
              + ": takes a date, a month or a year such as 2026-05-02, 2026-05 or 2026, not "
              + Reading.echo(typed.strip())
              + ".");
    }
    return Reading.of(Optional.of(new Filter(part.get(), value)));
  }

  /** This and what another asks for besides. */
  public Search and(Search other) {
    return new Search(
        Stream.concat(words.stream(), other.words.stream()).toList(),
        Stream.concat(filters.stream(), other.filters.stream()).toList(),
        open || other.open);
  }

  /** This with one filter more. */
  public Search and(Filter filter) {
    return and(new Search(List.of(), List.of(filter), false));
  }

  /** True where every flight matches. */
  public boolean isAll() {
    return equals(ALL);
  }

  /** The filters in words: {@code rocket "lark", on 2026-05, open fixes}; mostly empty. */
  public String filtersTold() {
    return Stream.concat(
            filters.stream().map(Filter::told), open ? Stream.of("open fixes") : Stream.empty())
        .collect(Collectors.joining(", "));
  }
}
