package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Ruling;
import padside.preflight.Answer;

/**
 * Going on from the checklist to the count.
 *
 * @param checked what of the check's answer is not kept with the flight yet
 * @param open lines not ticked, in words
 * @param against the check says NO-GO
 */
record GoingOn(Flight flight, Facts checked, List<String> open, boolean against)
    implements AgainstScreen.Question {
  private static final int NAMED = 5;

  GoingOn {
    open = List.copyOf(open);
  }

  /**
   * Of a card the check has answered to.
   *
   * @param answered what of that is to be kept
   */
  static GoingOn of(Flight flight, List<PadLine> open, Answer answer, Facts answered) {
    return new GoingOn(
        flight,
        answered.changedSince(flight.facts()),
        open.stream().map(PadLine::text).toList(),
        answer.ruling().verdict() == Ruling.Verdict.NO_GO);
  }

  /** Asked again, by what is kept with the flight. */
  static GoingOn again(Flight flight, World world) {
    return new GoingOn(
        flight,
        Facts.none(),
        PadList.of(flight, Optional.empty(), world).open().stream().map(PadLine::text).toList(),
        flight.verdict().equals(Optional.of(Ruling.Verdict.NO_GO)));
  }

  /** Whether a reason is wanted. */
  boolean asks() {
    return against || !open.isEmpty();
  }

  /** What is kept when the count begins; a reason that is not wanted any more goes. */
  Facts facts(String why) {
    Facts facts = put(checked, Flight.AGAINST, against, why);
    facts = put(facts, Flight.WENT_ON, !open.isEmpty(), why);
    return put(facts, Flight.UNTICKED, !open.isEmpty(), open);
  }

  private <T> Facts put(Facts facts, Column<T> column, boolean wanted, T value) {
    if (wanted) {
      return facts.with(column, value);
    }
    boolean stands = flight.facts().get(column).isPresent();
    return stands ? facts.with(column.name(), Facts.Cell.emptied()) : facts;
  }

  @Override
  public Column<String> reason() {
    return against ? Flight.AGAINST : Flight.WENT_ON;
  }

  @Override
  public String text(World world) {
    String said = against ? "The check says NO-GO" + because() + ". " : "";
    return said + unticked() + "To go on to the count say why:";
  }

  /** As many by name as leave room for the answer. */
  private String unticked() {
    if (open.isEmpty()) {
      return "";
    }
    int named = Math.min(NAMED, open.size());
    int more = open.size() - named;
    String lines = String.join("; ", open.subList(0, named));
    return open.size()
        + " not ticked: "
        + lines
        + (more == 0 ? "" : " and " + more + " more")
        + ". ";
  }

  private String because() {
    return flight.facts().with(checked).get(Flight.REASON).map(reason -> ": " + reason).orElse("");
  }

  @Override
  public Action action(Facts reason, World world) {
    return Action.change("arm", Kind.FLIGHT, flight.id(), facts(reason.get(reason()).orElse("")));
  }

  @Override
  public Screen next(Flight kept, World world) {
    return CountScreen.ready(kept.id(), Sending.of(world), CountCheck.of(world));
  }

  @Override
  public Optional<Screen> back(World world) {
    return Optional.of(PadScreen.of(flight.id(), world));
  }

  @Override
  public String bookmark() {
    return Bookmarks.GOING_ON;
  }

  @Override
  public String title() {
    return "Going on to the count";
  }

  @Override
  public Binding keep() {
    return Binding.of("<enter><f2>", "go on", "go on to the count with this reason");
  }

  @Override
  public Binding leave() {
    return Binding.of("<esc>", "back", "back to the checklist");
  }
}
