package padside.preflight;

import java.util.Optional;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.safety.Case;

/**
 * A launch with what it comes to.
 *
 * @param field the field's largest wind; absent while field or recovery are not known
 */
record Flown(Launch launch, Prediction prediction, Optional<Case.FieldLimit> field) {}
