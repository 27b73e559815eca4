package padside.screen;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import padside.flight.Checklist;
import padside.flight.OutcomeTable;
import padside.flight.Ruling;
import padside.motor.MotorTable;
import padside.plan.PackingTable;
import padside.preflight.Answer;

/** The tables shipped with the program and the answer of no check, for a {@link Desk}. */
final class DeskData {
  private DeskData() {}

  static MotorTable motors() {
    try (Reader csv = data("motors.csv")) {
      return new MotorTable(MotorTable.read(csv, "motors.csv").types());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Checklist checklist() {
    try (Reader csv = data("checklist.csv")) {
      return Checklist.read(csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PackingTable packing() {
    try (Reader csv = data("packing.csv")) {
      return PackingTable.read(csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static OutcomeTable outcomes() {
    try (Reader csv = data("outcomes.csv")) {
      return OutcomeTable.read(csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Of a desk nobody checks at. */
  static Answer unknown() {
    Ruling ruling =
        new Ruling(
            Ruling.Verdict.UNKNOWN, Optional.empty(), "nothing checks here", List.of(), List.of());
    return new Answer(
        ruling, "UNKNOWN · nothing checks here", Optional.empty(), List.of(), Optional.empty());
  }

  private static Reader data(String name) {
    return new InputStreamReader(
        Desk.class.getResourceAsStream("/data/" + name), StandardCharsets.UTF_8);
  }
}
