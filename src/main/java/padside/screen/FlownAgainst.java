package padside.screen;

import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Flight;

/** A flight that is marked as flown although the check said NO-GO. */
record FlownAgainst(Flight flight) implements AgainstScreen.Question {
  @Override
  public Column<String> reason() {
    return Flight.AGAINST;
  }

  @Override
  public String text(World world) {
    String reason = flight.facts().get(Flight.REASON).map(r -> ": " + r).orElse("");
    String rocket = flight.rocket().isEmpty() ? "This flight" : FlightText.rocket(flight, world);
    return "The check said NO-GO to " + rocket + reason + ". If it flew, say why:";
  }

  @Override
  public Action action(Facts reason, World world) {
    return DayScreen.goneAction(flight, reason, world);
  }

  @Override
  public Screen next(Flight kept, World world) {
    return DebriefScreen.open(kept, world);
  }

  @Override
  public Optional<Screen> back(World world) {
    return Optional.empty();
  }

  @Override
  public String bookmark() {
    return Bookmarks.FLOWN_AGAINST;
  }

  @Override
  public String title() {
    return "Flown against NO-GO";
  }

  @Override
  public Binding keep() {
    return Binding.of("<enter><f2>", "it flew", "marks it flown with this reason");
  }

  @Override
  public Binding leave() {
    return Binding.of("<esc>", "back", "it has not flown");
  }
}
