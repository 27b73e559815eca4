package padside.preflight;

import java.util.Optional;
import padside.flight.Ruling;

/**
 * What the check says to a card.
 *
 * @param headline one line: {@code GO 6 gusting 9 mph · limit 13 (field edge NE 280 ft)}
 * @param outlook the flight as predicted; absent while something it needs is missing
 */
public record Answer(Ruling ruling, String headline, Optional<Outlook> outlook) {}
