package padside.app;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import padside.flight.Kind;
import picocli.CommandLine.ParameterException;

/** A kind of record as it is named on the command line or in JSON. */
final class KindNamed {
  private KindNamed() {}

  /**
   * The kind of that code.
   *
   * @param typed how it was written, to say it again
   * @param refused makes what is thrown of a sentence
   */
  static Kind find(String code, String typed, Function<String, ParameterException> refused) {
    return Kind.find(code)
        .orElseThrow(
            () ->
                refused.apply(
                    "There is no kind of record called \""
                        + typed
                        + "\"; choose "
                        + List.of(Kind.values()).stream()
                            .map(Kind::code)
                            .collect(Collectors.joining(", "))
                        + "."));
  }
}
