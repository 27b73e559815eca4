package padside.terminal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import padside.screen.Ease.Looks;
import padside.screen.Size;

/** A console over two streams: types bytes in, collects what it tells and what it writes. */
final class Typewriter implements AutoCloseable {
  private static final long PATIENCE_MS = 2000;

  private final PipedOutputStream line = new PipedOutputStream();
  private final ByteArrayOutputStream written = new ByteArrayOutputStream();
  private final BlockingQueue<Input> told = new LinkedBlockingQueue<>();
  final Console console;

  Typewriter(String term, boolean utf8, Size size, Looks looks) {
    try {
      console =
          new Console(
              new PipedInputStream(line, 4096),
              written,
              new Tty(size, term, utf8),
              looks,
              told::add);
      console.start();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Typewriter xterm() {
    return new Typewriter("xterm-256color", true, new Size(80, 24), Looks.BLACK_ON_WHITE);
  }

  Typewriter type(String text) {
    return type(text.getBytes(StandardCharsets.UTF_8));
  }

  Typewriter type(byte[] bytes) {
    try {
      line.write(bytes);
      line.flush();
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Typewriter pause(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
      return this;
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** Ends the line and answers all keys told, by name, in order. */
  List<String> keys() {
    hangUp();
    List<String> names = new ArrayList<>();
    Input input = next();
    while (input instanceof Input.Pressed pressed) {
      names.add(pressed.key().name());
      input = next();
    }
    if (!(input instanceof Input.HungUp)) {
      throw new AssertionError("the end was not told but " + input);
    }
    return names;
  }

  Input next() {
    try {
      Input input = told.poll(PATIENCE_MS, TimeUnit.MILLISECONDS);
      if (input == null) {
        throw new AssertionError("nothing told within " + PATIENCE_MS + " ms");
      }
      return input;
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  void hangUp() {
    try {
      line.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What was written since last asked. */
  String written() {
    String text = written.toString(StandardCharsets.UTF_8);
    written.reset();
    return text;
  }

  @Override
  public void close() {
    hangUp();
    console.close();
  }
}
