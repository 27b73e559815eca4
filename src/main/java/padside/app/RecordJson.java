package padside.app;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Kind;
import padside.report.Sheet;
import padside.report.WholeLog;
import picocli.CommandLine.ParameterException;

/**
 * One record as JSON has it: an object whose members are the columns of its kind, {@code id}, and
 * {@code typed} with what was typed for some of them.
 *
 * @param refused makes what is thrown of a sentence
 */
record RecordJson(Kind kind, String what, Function<String, ParameterException> refused) {
  Map<?, ?> members(Object item) {
    if (item instanceof Map<?, ?> members) {
      return members;
    }
    throw refused.apply(what + " is not a JSON object like {\"name\": \"Alder\"}.");
  }

  Optional<String> id(Map<?, ?> members) {
    if (!members.containsKey(Sheet.ID)) {
      return Optional.empty();
    }
    if (members.get(Sheet.ID) instanceof String text && !text.isBlank()) {
      return Optional.of(text);
    }
    throw refused.apply(what + ": id is not a text.");
  }

  Facts facts(Map<?, ?> members) {
    Map<String, String> typed = typed(members);
    Facts facts = Facts.none();
    for (Map.Entry<?, ?> member : members.entrySet()) {
      String name = (String) member.getKey();
      if (!name.equals(Sheet.ID) && !name.equals(WholeLog.TYPED)) {
        Optional<Object> value = value(column(name), Optional.ofNullable(member.getValue()));
        facts = facts.with(name, new Facts.Cell(value, Optional.ofNullable(typed.remove(name))));
      }
    }
    for (Map.Entry<String, String> unread : typed.entrySet()) {
      facts = facts.with(unread.getKey(), Facts.Cell.unread(unread.getValue()));
    }
    if (facts.isEmpty()) {
      throw refused.apply(what + " has no fields.");
    }
    return facts;
  }

  private Map<String, String> typed(Map<?, ?> members) {
    Map<String, String> typed = new LinkedHashMap<>();
    if (!members.containsKey(WholeLog.TYPED)) {
      return typed;
    }
    if (!(members.get(WholeLog.TYPED) instanceof Map<?, ?> texts)) {
      throw refused.apply(what + ": typed is not an object like {\"mass_kg\": \"42g\"}.");
    }
    for (Map.Entry<?, ?> each : texts.entrySet()) {
      if (!(each.getValue() instanceof String text)) {
        throw refused.apply(
            what + ": what was typed for " + each.getKey() + " is not a text; put it in quotes.");
      }
      typed.put(column((String) each.getKey()).name(), text);
    }
    return typed;
  }

  private Column<?> column(String name) {
    return kind.column(name)
        .orElseThrow(
            () ->
                refused.apply(
                    what
                        + ": "
                        + kind.code()
                        + " has no field \""
                        + name
                        + "\"; it has "
                        + kind.columns().stream()
                            .<String>map(Column::name)
                            .collect(Collectors.joining(", "))
                        + "."));
  }

  private Optional<Object> value(Column<?> column, Optional<Object> value) {
    value.ifPresent(
        present -> {
          if (Facts.none().with(column.name(), Facts.Cell.of(present)).get(column).isEmpty()) {
            throw refused.apply(
                "%s: \"%s\" is no value for %s (%s)."
                    .formatted(what, present, column.name(), column.meaning()));
          }
        });
    return value;
  }
}
