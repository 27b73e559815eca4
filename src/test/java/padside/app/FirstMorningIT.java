package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A flier's first morning with the program, from an empty log to the flight found again. */
class FirstMorningIT {
  @TempDir Path folder;
  private PadTable pad;

  @BeforeEach
  void sitDown() throws Exception {
    pad = new PadTable(folder, 80, 24);
  }

  @AfterEach
  void packUp() {
    pad.close();
  }

  @Test
  void a_flight_is_checked_flown_debriefed_and_found_again_after_a_restart() {
    pad.launch("");
    pad.sees("No day is open yet.");
    addRocket();
    addMotorsAndParachute();
    addField();
    openDayAndReadTheWeather();
    fillCard();
    typeTheWindUpAndDownAgain();
    keepFlyAndDebrief();
    pad.quit();

    pad.launch("");
    pad.seesLine("Sparrow", "A8-3", "flown", "GO", "312 ft");
    pad.press("l");
    pad.seesLine("Sparrow", "A8-3", "GO", "312 ft");
    pad.escape("Flown 1");
    pad.quit();

    readWithSqlite();
    assertThat(pad.padside("flights", "--json").out())
        .contains("\"rocket_name\" : \"Sparrow\"", "\"motor\" : \"A8-3\"")
        .contains("\"status\" : \"flown\"", "\"verdict\" : \"GO\"", "\"altitude_m\" : 95.09");
  }

  private void addRocket() {
    pad.press("f");
    pad.sees("No rockets yet.");
    pad.press("n");
    pad.sees("Body diameter");
    pad.fields("Sparrow", "1.3oz", "", "0.976in", "0.75", "18", "36in");
    pad.seesLine("> Own wind limit");
    pad.press("F2");
    pad.seesLine("Sparrow", "1.3 oz", "0.976 in", "18 mm", "not flown");
    pad.escape("No day is open yet.");
  }

  private void addMotorsAndParachute() {
    pad.press("b");
    pad.sees("No motors yet.");
    pad.press("n");
    pad.sees("Lot code");
    pad.fields("A8-3", "04-2031", "3");
    pad.seesLine("> Bought on");
    pad.press("F2");
    pad.seesLine("A8-3", "04-2031", "3");
    pad.press("Tab");
    pad.sees("No parachutes or streamers yet.");
    pad.press("n");
    pad.sees("Shape");
    pad.fields("12 in nylon", "p", "12in");
    pad.seesLine("> Streamer width");
    pad.press("F2");
    pad.seesLine("12 in nylon", "parachute");
    pad.escape("No day is open yet.");
  }

  private void addField() {
    pad.press("p");
    pad.sees("No fields yet.");
    pad.press("n");
    pad.sees("Smallest side");
    pad.fields("Long Meadow", "850ft", "N 500ft lane > road; E 450ft; S 500ft hedge; W 450ft wood");
    pad.seesLine("> Hazards");
    pad.press("F2");
    pad.seesLine("Long Meadow", "850 ft");
    pad.escape("No day is open yet.");
  }

  private void openDayAndReadTheWeather() {
    pad.press("o");
    pad.sees("Fire ban");
    pad.press("Enter");
    pad.seesLine("> Date");
    pad.press("F2");
    pad.seesLine("Day", "Long Meadow");
    pad.press("w");
    pad.sees("Station pressure");
    pad.fields("4g6 SW");
    pad.seesLine("> Height of reading");
    pad.press("F2");
    pad.sees("Wind 4 gusting 6 mph from SW");
  }

  /** The rocket has never flown: what it does not know itself has to be typed once. */
  private void fillCard() {
    pad.press("n");
    pad.seesLine("Sparrow", "not flown yet");
    pad.press("Enter");
    pad.seesLine("> Motor");
    pad.seesVerdict("UNKNOWN");
    pad.type("a8-3");
    pad.press("Tab");
    pad.seesLine("> Lot", "04-2031");
    pad.press("Tab", "Down", "Tab");
    pad.seesLine("Recovery", "12 in nylon");
    pad.seesLine("> Altimeter");
    pad.press("Tab", "Tab", "Tab", "Tab", "Tab");
    pad.seesLine("> Wind", "4g6 SW");
    pad.seesVerdict("GO");
  }

  private void typeTheWindUpAndDownAgain() {
    pad.type("5");
    pad.seesLine("5 mph · limit");
    pad.seesVerdict("GO");
    pad.type("0");
    pad.seesLine("50 mph · limit");
    pad.seesVerdict("NO-GO");
    pad.press("BSpace");
    pad.seesLine("5 mph · limit");
    pad.seesVerdict("GO");
    pad.type(" SW");
    pad.seesLine("> Wind", "5 SW");
    pad.seesVerdict("GO");
  }

  private void keepFlyAndDebrief() {
    pad.press("F2");
    pad.seesLine("Sparrow", "A8-3", "card", "GO", "limit");
    pad.press("g");
    pad.sees("Debrief: Sparrow");
    pad.type("312");
    pad.press("F2");
    pad.seesLine("Sparrow", "A8-3", "flown", "312 ft");
    pad.sees("Flown 1");
  }

  /** 312 ft are 95.0976 m and 5 mph 2.2352 m/s by the international foot and mile. */
  private void readWithSqlite() {
    assertThat(
            pad.sqlite(
                "SELECT rocket.name, flight.motor, lot.code, device.name, verdict, status,"
                    + " round(altitude_m, 4), round(wind_mean_mps, 4), burn FROM flight"
                    + " JOIN rocket ON rocket.id = flight.rocket"
                    + " JOIN lot ON lot.id = flight.lot JOIN device ON device.id = flight.device"))
        .containsExactly("Sparrow|A8-3|04-2031|12 in nylon|GO|flown|95.0976|2.2352|nominal");
  }
}
