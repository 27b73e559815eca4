package padside.screen;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.clock.Anchor;
import padside.clock.DateAndTime;
import padside.clock.LogClock;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Kind;
import padside.form.Form;
import padside.form.FormField;
import padside.units.TimeSpan;

/**
 * Shows the log's date and time and asks whether it is right; another one can be typed, without
 * being the machine's administrator. What was entered since the machine's start moves with it.
 *
 * @param then what is opened once it is answered
 * @param doubted the text that was accepted although the log has newer entries, and is accepted
 *     when Enter is pressed again
 * @param sent the answer is on its way
 */
record ClockScreen(Form form, Then then, Optional<String> doubted, Optional<Ticket> sent)
    implements Screen {
  private static final Binding RIGHT =
      Binding.of("<enter><f2>", "it is right", "the time shown is right, or the one typed");
  private static final Binding LEAVE =
      Binding.of("<esc>", "not now", "leave it open; it is asked again with the next day");
  private static final Binding HISTORY =
      Binding.of("<f4>", "history", "what was told last and what it corrected: undo, redo");
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter WHOLE =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu, HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter SECONDS =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final int TOP = 1;
  private static final int ROOMY = 24;
  private static final int FORM_ROWS = 4;

  /** What is opened next. */
  enum Then {
    /** Nothing: back to where it was asked. */
    BACK,
    /** The form of a day of today. */
    DAY,
    /** The form of a day to plan for. */
    DAY_AHEAD
  }

  static ClockScreen of(Then then, World world) {
    Form form = Form.of(sheet(world).fields(), Facts.none());
    return new ClockScreen(form, then, Optional.empty(), Optional.empty());
  }

  /** Asked before anything else is done, once a start of the machine. */
  static Optional<Screen> atStart(World world) {
    return world.log().clock().asks(world.machine())
        ? Optional.of(of(Then.BACK, world))
        : Optional.empty();
  }

  /** How its record is called and shown. */
  static RecordForm.Sheet sheet(World world) {
    return new RecordForm.Sheet(
        Kind.CLOCK,
        "clock",
        List.of(
            FormField.of(
                Anchor.AT,
                "Right time",
                notation(world),
                "Enter if it is right. Else type it: 1432, 17 Oct 14:32 or 2026-10-17 14:32.")));
  }

  private static DateAndTime notation(World world) {
    Instant now = world.now();
    Instant newest = world.log().clock().newestTime().orElse(now);
    return new DateAndTime(now, newest.isAfter(now) ? newest : now, world.zone());
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Saved saved && sent.equals(Optional.of(saved.ticket()))) {
      long corrected = saved.records().stream().distinct().count() - 1;
      return goneOn(world).and(new Effect.Tell(told(corrected, world)));
    }
    if (event instanceof Event.NotSaved failed && sent.equals(Optional.of(failed.ticket()))) {
      return Step.stay(new ClockScreen(form, then, doubted, Optional.empty()));
    }
    return event instanceof Event.Pressed pressed ? pressed(pressed.key(), world) : Step.stay(this);
  }

  private static String told(long corrected, World world) {
    String time = whole(world.now(), world);
    String entries = corrected == 1 ? "1 entry" : corrected + " entries";
    return "The log's time is " + time + (corrected == 0 ? "." : "; " + entries + " corrected.");
  }

  private Step goneOn(World world) {
    return switch (then) {
      case BACK -> Step.close();
      case DAY -> Step.close().open(DayForm.today(world));
      case DAY_AHEAD -> Step.close().open(DayForm.tomorrow(world));
    };
  }

  private Step pressed(Key key, World world) {
    if (LEAVE.has(key)) {
      return goneOn(world);
    }
    if (HISTORY.has(key)) {
      return history(world);
    }
    if (!RIGHT.has(key)) {
      Form typed = FormKeys.press(form, key).orElse(form);
      boolean same = typed.entry().typed().equals(text());
      return Step.stay(new ClockScreen(typed, then, same ? doubted : Optional.empty(), sent));
    }
    Optional<Instant> time = time(world);
    if (time.isEmpty() || sent.isPresent()) {
      return Step.stay(this);
    }
    return isDoubtful(time.get(), world) && doubted.isEmpty()
        ? Step.stay(new ClockScreen(form, then, Optional.of(text()), sent))
        : answered(time.get(), world);
  }

  private Step history(World world) {
    List<RecordId> clocks = world.log().clocks();
    return clocks.isEmpty()
        ? Step.stay(this).and(new Effect.Tell("Nobody has confirmed or set the clock yet."))
        : Step.stay(this)
            .open(
                HistoryScreen.of(
                    new HistoryScreen.Subject(
                        Kind.CLOCK, clocks.get(clocks.size() - 1), "the clock"),
                    world));
  }

  private static boolean isDoubtful(Instant time, World world) {
    return DateAndTime.isAbsurd(time) || world.log().clock().isBehind(time, world.machine().boot());
  }

  private Step answered(Instant time, World world) {
    Ticket ticket = new Ticket(world.turn(), 1);
    Anchor.How how = time.equals(world.now()) ? Anchor.How.CONFIRMED : Anchor.How.SET;
    return Step.stay(new ClockScreen(form, then, doubted, Optional.of(ticket)))
        .and(new Effect.SetClock(ticket, Anchor.of(world.machine(), time, how)));
  }

  private String text() {
    return form.entry().typed();
  }

  /** The time as typed, else as shown; absent when it cannot be read. */
  private Optional<Instant> time(World world) {
    return text().isBlank() ? Optional.of(world.now()) : notation(world).read(text()).value();
  }

  @Override
  public void draw(Canvas canvas, World world) {
    ZonedDateTime now = world.now().atZone(world.zone());
    int gap = canvas.size().rows() < ROOMY ? 0 : 1;
    int row = Paragraph.draw(canvas, TOP, "Is this the date and time here?", Style.STRONG) + gap;
    centred(canvas, row, DAY.format(now));
    row = Figures.draw(canvas, row + 2, DayWords.clock(world.now(), world), Style.STRONG) + gap;
    centred(canvas, row, SECONDS.format(now) + "  " + zone(now));
    Optional<Instant> meant = time(world);
    Optional<Instant> doubt = meant.filter(any -> doubted.isPresent());
    Paragraph.draw(
        canvas,
        row + 1 + gap,
        doubt.map(time -> doubt(time, world)).orElse(why(world)),
        doubt.isPresent() ? Style.OBJECTION : Style.PLAIN);
    int top = canvas.size().rows() - 2 - FORM_ROWS;
    if (!text().isBlank()) {
      meant.ifPresent(time -> canvas.put(2, top + 1, "= " + whole(time, world), Style.STRONG));
    }
    FormPane.draw(canvas, form, new FormPane.Area(0, top, canvas.size().columns() - 2, FORM_ROWS));
  }

  private static String whole(Instant time, World world) {
    return WHOLE.format(time.atZone(world.zone()));
  }

  private static void centred(Canvas canvas, int row, String text) {
    canvas.put(Math.max(0, (canvas.size().columns() - text.length()) / 2), row, text, Style.STRONG);
  }

  /** {@code Europe/Berlin, UTC+02:00}. */
  private static String zone(ZonedDateTime now) {
    String offset = now.getOffset().getId();
    String name = now.getZone().getId();
    boolean same = offset.equals("Z") || name.equals(offset);
    return same
        ? now.getZone().getDisplayName(TextStyle.SHORT, Locale.ENGLISH).replace("Z", "UTC")
        : name + ", UTC" + offset;
  }

  private static String newest(World world) {
    return world.log().clock().newestTime().map(time -> whole(time, world)).orElse("");
  }

  private static String doubt(Instant time, World world) {
    String why =
        world.log().clock().isBehind(time, world.machine().boot())
            ? "That is earlier than the newest entry."
            : "That can hardly be.";
    return why
        + " Type date and time, like 2026-10-17 14:32; or Enter again if "
        + whole(time, world)
        + " is right.";
  }

  private static String why(World world) {
    LogClock clock = world.log().clock();
    if (clock.isBehind(world.now(), world.machine().boot())) {
      return "It is earlier than the newest entry of the log, of " + newest(world) + ".";
    }
    Optional<Anchor> anchor = clock.anchor(world.machine().boot());
    if (anchor.filter(Anchor::byFlier).isPresent()) {
      return "As "
          + (anchor.get().how() == Anchor.How.SET ? "set" : "confirmed")
          + " since this machine was started; the log keeps to it.";
    }
    if (world.machine().sure()) {
      return "The operating system has synchronised it, or the settings trust it.";
    }
    if (clock.knows(world.machine())) {
      return "This machine has a battery clock, and nothing in the log speaks against it.";
    }
    return clock.jumped(world.machine())
        ? "The machine's clock was set since the newest entry; nobody has said that it is right."
        : "Nobody has said so since this machine was started.";
  }

  @Override
  public Optional<TimeSpan> untilTick(World world) {
    double into = Math.floorMod(world.now().toEpochMilli(), 1000) / 1e3;
    return Optional.of(new TimeSpan(Math.max(0.02, 1 - into)));
  }

  @Override
  public String title(World world) {
    return "Clock";
  }

  @Override
  public String purpose() {
    return "Is the clock right? Times and ages of readings are told by it; where the "
        + "network vouches for it nobody is asked.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_FORMS;
  }

  @Override
  public List<Binding> bindings() {
    return List.of(RIGHT, LEAVE, HISTORY, FormKeys.CLEAR);
  }

  @Override
  public boolean questions() {
    return doubted.isPresent();
  }

  @Override
  public boolean takesText() {
    return true;
  }

  @Override
  public boolean leaving() {
    return sent.isPresent();
  }
}
