package padside.safety;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import padside.flight.Ruling.Verdict;
import padside.safety.RuleBlock.Broken;
import padside.units.Length;

/**
 * Reads a rule file; strict, because a rule that is passed over in silence looks like a rule that
 * is kept. The form is our own: {@code name, title, about}, the {@code sources} by short name,
 * {@code values} (each {@code value, source, status}, perhaps {@code stated} as the source puts it
 * and a {@code note}), tables {@code site} and {@code people}, and {@code cautions}.
 */
final class RuleFile {
  private static final JSON READER =
      JSON.std.with(JSON.Feature.FAIL_ON_DUPLICATE_MAP_KEYS).without(JSON.Feature.USE_FIELDS);
  private static final Set<String> TOP =
      Set.of("name", "title", "about", "sources", "values", "site", "people", "cautions");
  private static final Set<String> VALUE = Set.of("value", "stated", "source", "status", "note");
  private static final Set<String> TABLE =
      Set.of("source", "status", "note", "complex", "past", "by_impulse", "by_apogee");
  private static final Set<String> ORIGIN = Set.of("source", "status", "note");
  private static final Set<String> SITE_ROW =
      Set.of("up_to_ns", "up_to_m", "smallest_side_m", "classes", "stated");
  private static final Set<String> PEOPLE_ROW =
      Set.of("up_to_ns", "people_m", "people_complex_m", "cleared_diameter_m", "classes", "stated");
  private static final Set<String> CAUTION = Set.of("about", "text", "source", "status", "note");

  private final RuleBlock top;
  private final Map<String, String> sources = new LinkedHashMap<>();

  private RuleFile(RuleBlock top) {
    this.top = top;
  }

  /** Reads the text of a rule file; {@code file} is its name, for sentences. */
  static RuleSet read(String json, String file) throws Broken {
    try {
      return new RuleFile(new RuleBlock(file, READER.mapFrom(json))).ruleSet();
    } catch (JacksonException e) {
      throw new Broken(
          "%s, line %d: not readable as JSON; mend what stands there."
              .formatted(file, e.getLocation() == null ? 1 : e.getLocation().getLineNr()));
    } catch (IOException e) {
      throw new Broken(file + ": not readable as JSON; begin it with { and end it with }.");
    }
  }

  private RuleSet ruleSet() throws Broken {
    top.only(TOP);
    RuleBlock named = top.findBlock("sources").orElse(new RuleBlock(top.place(), Map.of()));
    for (Object name : named.items().keySet()) {
      sources.put((String) name, named.text((String) name));
    }
    return new RuleSet(
        new RuleSet.Heading(top.text("name"), top.text("title"), top.text("about"), sources),
        figures(),
        table("site", SITE_ROW),
        table("people", PEOPLE_ROW),
        cautions());
  }

  private Map<Figure, Sourced<Double>> figures() throws Broken {
    Map<Figure, Sourced<Double>> figures = new EnumMap<>(Figure.class);
    RuleBlock values =
        top.findBlock("values").orElseThrow(() -> top.broken("\"values\" is missing; add { }."));
    values.only(Set.of(Figure.values()).stream().map(Figure::key).collect(Collectors.toSet()));
    for (Object key : values.items().keySet()) {
      RuleBlock block = values.findBlock((String) key).orElseThrow();
      double value = block.only(VALUE).number("value");
      figures.put(Figure.find((String) key).orElseThrow(), sourced(block, value));
    }
    return figures;
  }

  private Optional<BandTable> table(String name, Set<String> columns) throws Broken {
    Optional<RuleBlock> found = top.findBlock(name);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    RuleBlock block = found.get().only(TABLE);
    BandTable table =
        new BandTable(
            bands(block, "by_impulse", "up_to_ns", columns),
            bands(block, "by_apogee", "up_to_m", columns),
            sourced(block, ""),
            complexOrigin(block),
            past(block));
    if (name.equals("site") == table.past().isEmpty()) {
      throw block.broken("\"past\" says what a site too small means, and belongs to site alone.");
    }
    return Optional.of(table);
  }

  private Optional<Sourced<String>> complexOrigin(RuleBlock table) throws Broken {
    Optional<RuleBlock> block = table.findBlock("complex");
    return block.isEmpty() ? Optional.empty() : Optional.of(sourced(block.get().only(ORIGIN), ""));
  }

  private static Optional<Verdict> past(RuleBlock block) throws Broken {
    Optional<String> word = block.findText("past");
    Optional<Verdict> past =
        word.flatMap(Verdict::find)
            .filter(verdict -> verdict == Verdict.NO_GO || verdict == Verdict.MARGINAL);
    if (word.isPresent() && past.isEmpty()) {
      throw block.broken("\"past\" is \"" + word.get() + "\"; write NO-GO or MARGINAL.");
    }
    return past;
  }

  private static List<Band> bands(RuleBlock table, String list, String bound, Set<String> columns)
      throws Broken {
    List<Band> bands = new ArrayList<>();
    double before = 0;
    for (RuleBlock row : table.blocks(list)) {
      double upTo = row.only(columns).number(bound);
      if (upTo <= before) {
        throw row.broken("\"" + bound + "\" does not rise; put the rows in order.");
      }
      before = upTo;
      bands.add(band(row, upTo, columns.contains("people_m") ? "people_m" : "smallest_side_m"));
    }
    return bands;
  }

  private static Band band(RuleBlock row, double upTo, String needed) throws Broken {
    row.number(needed);
    return new Band(
        upTo,
        row.findNumber("smallest_side_m").map(Length::new),
        row.findNumber("people_m").map(Length::new),
        row.findNumber("people_complex_m").map(Length::new),
        row.findNumber("cleared_diameter_m").map(Length::new),
        row.findText("classes").orElse(""));
  }

  private List<Caution> cautions() throws Broken {
    List<Caution> cautions = new ArrayList<>();
    for (RuleBlock block : top.blocks("cautions")) {
      String about = block.only(CAUTION).text("about");
      Caution.Topic topic =
          Caution.Topic.find(about)
              .orElseThrow(
                  () ->
                      block.broken(
                          "\"about\" is \"" + about + "\"; write one of " + topics() + "."));
      cautions.add(new Caution(topic, sourced(block, block.text("text"))));
    }
    return cautions;
  }

  private static String topics() {
    return List.of(Caution.Topic.values()).stream()
        .map(Caution.Topic::words)
        .collect(Collectors.joining(", "));
  }

  private <T> Sourced<T> sourced(RuleBlock block, T value) throws Broken {
    String word = block.text("status");
    Sourced.Status status =
        Sourced.Status.find(word)
            .orElseThrow(
                () ->
                    block.broken(
                        "\"status\" is \""
                            + word
                            + "\"; write seen, from memory or common practice."));
    Optional<String> source = block.findText("source");
    if (source.isEmpty() && status != Sourced.Status.COMMON_PRACTICE) {
      throw block.broken("\"source\" is missing; name where the value comes from.");
    }
    if (source.isPresent() && !sources.containsKey(source.get())) {
      throw block.broken("source \"" + source.get() + "\" is not described under \"sources\".");
    }
    return new Sourced<>(value, source.orElse(""), status, block.findText("note").orElse(""));
  }
}
