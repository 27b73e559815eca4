package padside.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.flight.Flight.PartState;
import padside.flight.OutcomeTable;
import padside.units.Reading;

/**
 * How a rocket came back, part by part in one line: {@code fins cracked; nose cone scuffed}. Parts
 * and states are words of the outcome table or the flier's own: nothing is refused.
 */
public record Conditions(OutcomeTable outcomes) implements Completing<List<PartState>> {
  private static final String PART = "part";
  private static final String STATE = "state";

  /** So many letters of a part say which is meant; fewer do before a state that is known. */
  private static final int ENOUGH = 3;

  @Override
  public Reading<List<PartState>> read(String typed) {
    return Reading.of(
        Stream.of(typed.split(";", -1))
            .map(String::strip)
            .filter(piece -> !piece.isEmpty())
            .map(this::one)
            .toList());
  }

  @Override
  public String show(List<PartState> parts) {
    return parts.stream().map(this::show).collect(Collectors.joining("; "));
  }

  private String show(PartState one) {
    return (outcomes.words(PART, one.part()) + " " + outcomes.words(STATE, one.state())).strip();
  }

  @Override
  public String example() {
    return "fins cracked; nose cone scuffed";
  }

  private PartState one(String piece) {
    List<String> words = words(piece);
    Optional<Head> head = head(words);
    if (head.isPresent()) {
      return new PartState(head.get().part.code(), state(rest(words, head.get().words)));
    }
    for (int from = 0; from < words.size(); from++) {
      Optional<String> known = exact(STATE, rest(words, from)).map(OutcomeTable.Outcome::code);
      if (known.isPresent()) {
        return new PartState(String.join(" ", words.subList(0, from)), known.get());
      }
    }
    return new PartState(words.get(0), rest(words, 1));
  }

  /** A part at the start of some words, and how many of them it takes. */
  private record Head(OutcomeTable.Outcome part, int words) {}

  private Optional<Head> head(List<String> words) {
    for (int count = words.size(); count > 0; count--) {
      int taken = count;
      String text = String.join(" ", words.subList(0, count));
      boolean enough = text.length() >= ENOUGH || single(STATE, rest(words, count)).isPresent();
      Optional<OutcomeTable.Outcome> part =
          exact(PART, text).or(() -> enough ? single(PART, text) : Optional.empty());
      if (part.isPresent()) {
        return part.map(each -> new Head(each, taken));
      }
    }
    return Optional.empty();
  }

  private String state(String typed) {
    return exact(STATE, typed)
        .or(() -> single(STATE, typed))
        .map(OutcomeTable.Outcome::code)
        .orElse(typed);
  }

  private Optional<OutcomeTable.Outcome> exact(String aspect, String typed) {
    return outcomes.of(aspect).stream()
        .filter(each -> fold(typed).equals(fold(each.words())) || fold(typed).equals(each.code()))
        .findFirst();
  }

  private Optional<OutcomeTable.Outcome> single(String aspect, String typed) {
    List<OutcomeTable.Outcome> some = beginning(aspect, typed);
    return typed.length() > 1 && some.size() == 1 ? Optional.of(some.get(0)) : Optional.empty();
  }

  /** Those of which a word begins so. */
  private List<OutcomeTable.Outcome> beginning(String aspect, String typed) {
    return outcomes.of(aspect).stream()
        .filter(each -> (" " + fold(each.words())).contains(" " + fold(typed)))
        .toList();
  }

  @Override
  public List<Choices.Option<List<PartState>>> completions(String typed) {
    int start = typed.lastIndexOf(';') + 1;
    String before = start == 0 ? "" : typed.substring(0, start) + " ";
    String piece = typed.substring(start).stripLeading();
    List<String> words = words(piece);
    boolean between = piece.endsWith(" ");
    Optional<Head> head = head(words).filter(each -> each.words < words.size() || between);
    Optional<OutcomeTable.Outcome> whole = words.isEmpty() ? Optional.empty() : exact(PART, piece);
    if (head.isPresent() || whole.isPresent()) {
      int taken = head.map(Head::words).orElse(words.size());
      String part = head.map(Head::part).or(() -> whole).orElseThrow().words();
      return states(before + part, rest(words, taken));
    }
    return beginning(PART, piece.strip()).stream()
        .map(part -> option(before + part.words(), ""))
        .toList();
  }

  /** After a part alone it may stay at that. */
  private List<Choices.Option<List<PartState>>> states(String part, String typed) {
    List<Choices.Option<List<PartState>>> options = new ArrayList<>();
    if (typed.isEmpty()) {
      options.add(option(part, "and how it is"));
    } else if (exact(STATE, typed).isPresent()) {
      return List.of();
    }
    outcomes.of(STATE).stream()
        .filter(state -> fold(state.words()).startsWith(fold(typed)))
        .forEach(state -> options.add(option(part + " " + state.words(), "")));
    return options;
  }

  private Choices.Option<List<PartState>> option(String line, String note) {
    return new Choices.Option<>(read(line).value().orElseThrow(), line, note);
  }

  private static List<String> words(String text) {
    return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
  }

  private static String rest(List<String> words, int from) {
    return String.join(" ", words.subList(from, words.size()));
  }

  private static String fold(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
