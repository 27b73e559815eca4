package padside.sync;

import padside.store.Exchange;

/**
 * A machine the log knows nothing of.
 *
 * @param lines of it that would come
 */
public record Stranger(Exchange.Device device, long lines) {}
