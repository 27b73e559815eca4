package padside.screen;

/**
 * Ties a result to the screen that asked for it and to what it asked.
 *
 * @param screen unlike that of any other open screen
 * @param serial counts up with every effect of that screen
 */
public record Ticket(long screen, long serial) {}
