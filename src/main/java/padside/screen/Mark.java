package padside.screen;

import java.util.List;
import java.util.stream.Stream;

/** A sign a screen shows beside its words, and what it tells; for the help page. */
record Mark(String shown, String meaning) {
  private static final Mark CURSOR = new Mark(">", "the line the keys are about");

  static final List<Mark> OF_LISTS = List.of(CURSOR);

  static final List<Mark> OF_FORMS =
      List.of(
          new Mark(">", "the field that is typed into"),
          new Mark("!", "what is typed there cannot be taken yet; the reason stands below"),
          new Mark("?", "taken, but unlikely; the reason stands below"),
          new Mark("=", "how it was understood"),
          new Mark("…", "beside the first or the last line: there are more fields"));

  static final List<Mark> OF_CHECK =
      List.of(
          new Mark(">", "in the check: the rule that allows the least wind, so the one that holds"),
          new Mark("!", "in the check: a rule this card breaks, or one nobody confirmed"),
          new Mark("+", "in the check: a change that would help"),
          new Mark("~", "in the check: how the day's wind is changing"));

  static final List<Mark> OF_CARDS = both(OF_FORMS, OF_CHECK);

  static final List<Mark> OF_DAYS =
      List.of(
          CURSOR,
          new Mark("draft", "something is still missing or the card was not kept by F2"),
          new Mark("card", "kept, waits to be flown"),
          new Mark("flown", "off the pad; d notes what came of it"),
          new Mark("scrubbed", "called off, nothing was fired"));

  static final List<Mark> OF_PADS =
      List.of(
          CURSOR,
          new Mark("[x]", "ticked, with the time it was"),
          new Mark("!", "a line to be careful about, such as an open fix"));

  static final List<Mark> OF_PLANS =
      List.of(CURSOR, new Mark("!", "what is amiss with this planned flight"));

  static final List<Mark> OF_LESSONS =
      List.of(
          new Mark(
              "!", "a motor has failed, a key was pressed in vain, or a delay is off its label"),
          new Mark("o", "on a bar from none to all: the share seen"),
          new Mark("-", "on a bar: how far the true share may lie from it, 95 in 100"));

  private static List<Mark> both(List<Mark> first, List<Mark> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }
}
