package padside.screen;

/**
 * Keeps something and closes. It is never seen: keys pressed meanwhile wait until it is kept, so
 * that they mean the log as it is then.
 *
 * @param told what to say once it is kept
 */
record SaveThenBack(Ticket ticket, Effect.Save save, String told) implements Unseen {
  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Opened) {
      return Step.stay(this).and(save);
    }
    if (event instanceof Event.Saved saved && saved.ticket().equals(ticket)) {
      return Step.close().and(new Effect.Tell(told));
    }
    boolean failed = event instanceof Event.NotSaved not && not.ticket().equals(ticket);
    return failed ? Step.close() : Step.stay(this);
  }

  @Override
  public String title(World world) {
    return "";
  }
}
