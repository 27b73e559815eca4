package padside.terminal;

/**
 * Where in an escape sequence a stream of characters stands, after ECMA-48 section 5.4 with three
 * things terminals do beside it: the text console's {@code ESC [ [ A} for F1 to F5, one more escape
 * before a sequence for Alt, and the three characters that follow {@code ESC [ M} in a mouse
 * report.
 */
enum SequenceState {
  /** Between sequences. */
  GROUND,
  /** After an escape: the key itself, or the start of more. */
  ESCAPE,
  /** After {@code ESC O}: one character follows. */
  SINGLE_SHIFT,
  /** After {@code ESC [}. */
  CONTROL_START,
  /** Among the parameters of a control sequence. */
  CONTROL,
  /** After {@code ESC [ [}: one character follows. */
  CONSOLE_FUNCTION,
  /** After {@code ESC [ M}: three characters follow. */
  MOUSE_3,
  MOUSE_2,
  MOUSE_1;

  private static final char ESC = 0x1b;

  /** The state after one more character; a control character breaks any sequence off. */
  SequenceState after(int character) {
    if (isControl(character)) {
      return character == ESC ? ESCAPE : GROUND;
    }
    return switch (this) {
      case GROUND -> GROUND;
      case ESCAPE ->
          switch (character) {
            case '[' -> CONTROL_START;
            case 'O' -> SINGLE_SHIFT;
            default -> GROUND;
          };
      case CONTROL_START ->
          switch (character) {
            case '[' -> CONSOLE_FUNCTION;
            case 'M' -> MOUSE_3;
            default -> inControl(character);
          };
      case CONTROL -> inControl(character);
      case MOUSE_3 -> MOUSE_2;
      case MOUSE_2 -> MOUSE_1;
      case SINGLE_SHIFT, CONSOLE_FUNCTION, MOUSE_1 -> GROUND;
    };
  }

  /** True for a control character, the end of the stream counted as one. */
  static boolean isControl(int character) {
    return character < 0x20;
  }

  /** Parameter and intermediate bytes are 0x20 to 0x3f; anything else ends the sequence. */
  private static SequenceState inControl(int character) {
    return character >= 0x20 && character <= 0x3f ? CONTROL : GROUND;
  }
}
