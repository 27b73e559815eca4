package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import padside.fact.Fault;
import padside.store.Arrived;
import padside.store.Exchange;
import padside.store.Holdings;

/**
 * The exchange of a log that another thread has: each call waits for its turn there, so that what
 * is typed meanwhile is kept in between.
 */
final class ExchangeInTurn implements Exchange {
  /** Lines taken in one turn: a save that comes meanwhile is not to wait for a whole batch. */
  private static final int MOST_AT_ONCE = 64;

  private final LogKeeper keeper;
  private final Going going;

  /** Whether to go on. */
  interface Going {
    /** Throws where the exchange is to end. */
    void on() throws Fault;
  }

  private interface Call<T> {
    T on(Exchange exchange) throws Fault;
  }

  ExchangeInTurn(LogKeeper keeper, Going going) {
    this.keeper = keeper;
    this.going = going;
  }

  private <T> T ask(Call<T> call) throws Fault {
    going.on();
    return keeper.ask(log -> call.on(log.exchange()));
  }

  @Override
  public Device self() throws Fault {
    return ask(Exchange::self);
  }

  @Override
  public Map<String, Device> devices() throws Fault {
    return ask(Exchange::devices);
  }

  @Override
  public Holdings holdings() throws Fault {
    return ask(Exchange::holdings);
  }

  @Override
  public List<String> lines(String run, Holdings.Span span) throws Fault {
    return ask(exchange -> exchange.lines(run, span));
  }

  @Override
  public Taken take(Arrived lines) throws Fault {
    int fresh = 0;
    int known = 0;
    int later = 0;
    List<String> refused = new ArrayList<>();
    for (int from = 0; from < lines.count(); from += MOST_AT_ONCE) {
      Arrived some = lines.some(from, Math.min(lines.count(), from + MOST_AT_ONCE));
      Taken taken = ask(exchange -> exchange.take(some));
      fresh += taken.fresh();
      known += taken.known();
      later += taken.later();
      refused.addAll(taken.refused());
    }
    return new Taken(fresh, known, later, refused);
  }

  @Override
  public List<String> settle() throws Fault {
    return ask(Exchange::settle);
  }
}
