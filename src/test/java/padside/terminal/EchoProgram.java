package padside.terminal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import padside.screen.Ease.Looks;
import padside.screen.Frame;
import padside.screen.Key;
import padside.screen.Size;
import padside.screen.Style;

/**
 * The smallest program on a console: shows its size, every style and the last keys, repaints at
 * Control-L, throws at {@code !} and ends at {@code q} or when hung up.
 */
final class EchoProgram {
  private static final int KEYS_SHOWN = 12;

  private EchoProgram() {}

  public static void main(String[] arguments) throws InterruptedException {
    BlockingQueue<Input> told = new LinkedBlockingQueue<>();
    List<String> keys = new ArrayList<>();
    Looks looks = arguments.length > 0 ? Looks.valueOf(arguments[0]) : Looks.BLACK_ON_WHITE;
    try (Console console = Console.open(Tty.of(System.getProperties()), looks, told::add)) {
      console.paint(frame(console.size(), keys));
      Input input = told.take();
      while (!(input instanceof Input.HungUp) && !input.equals(new Input.Pressed(new Key("q")))) {
        if (input instanceof Input.Pressed pressed) {
          keys.add(pressed.key().name());
        }
        if (input.equals(new Input.Pressed(new Key("!")))) {
          throw new IllegalStateException("thrown on purpose");
        }
        if (input.equals(new Input.Pressed(Key.control('l')))) {
          console.repaint(frame(console.size(), keys));
        } else {
          console.paint(frame(console.size(), keys));
        }
        input = told.take();
      }
    }
    System.out.println("ended after " + keys.size() + " keys");
  }

  private static Frame frame(Size size, List<String> keys) {
    List<Frame.Row> rows = new ArrayList<>();
    rows.add(row("┌─ size " + size.columns() + " x " + size.rows() + " ─ wind 240° ≤ 13 ─┐"));
    for (Style style : Style.values()) {
      rows.add(new Frame.Row(List.of(new Frame.Span(" " + style.name() + " ", style))));
    }
    String last =
        String.join(" ", keys.subList(Math.max(0, keys.size() - KEYS_SHOWN), keys.size()));
    rows.add(row("keys: " + last));
    rows.addAll(Collections.nCopies(Math.max(0, size.rows() - rows.size() - 1), row("")));
    rows.add(row("bottom row"));
    return new Frame(size, rows, Optional.of(new Frame.Spot(6 + last.length(), 12)));
  }

  private static Frame.Row row(String text) {
    return new Frame.Row(List.of(new Frame.Span(text, Style.PLAIN)));
  }
}
