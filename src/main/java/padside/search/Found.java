package padside.search;

import java.util.List;

/**
 * What a search came to.
 *
 * @param newest of those found, newest first; so many as were asked for at most
 * @param count of all found
 * @param whole false where older flights, or what was changed last, are still to be looked through
 */
public record Found<T>(List<T> newest, int count, boolean whole) {
  /** Keeps its own list. */
  public Found {
    newest = List.copyOf(newest);
  }
}
