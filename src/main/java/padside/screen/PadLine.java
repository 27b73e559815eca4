package padside.screen;

import padside.flight.CheckLine;

/**
 * One line of the checklist as it is read for one flight.
 *
 * @param key what a tick is kept under
 * @param text with what is known for this flight
 * @param warns it names something that speaks against flying
 */
record PadLine(String key, CheckLine.Part part, String text, boolean warns) {}
