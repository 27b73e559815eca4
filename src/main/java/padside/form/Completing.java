package padside.form;

import java.util.List;
import padside.units.Notation;

/** A notation that knows how a text half typed may go on. */
interface Completing<T> extends Notation<T> {
  /**
   * Ways to go on, each the whole line as it would stand, the likeliest first; none where nothing
   * is to be completed. The first stands for what was typed once the field is left.
   */
  List<Choices.Option<T>> completions(String typed);
}
