package padside.app;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** What a command printed and how it ended. */
record Ran(int status, String out, String err) {
  /** Runs a command within this program. */
  static Ran of(String input, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
    try {
      int status = CommandRun.of(new PrintWriter(out), new PrintWriter(err), arguments);
      return new Ran(status, out.toString(), err.toString());
    } finally {
      System.setIn(before);
    }
  }

  Map<String, Object> json() throws IOException {
    return JSON.std.mapFrom(out);
  }
}
