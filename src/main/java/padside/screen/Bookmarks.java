package padside.screen;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.flight.CheckLine;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Sighting;
import padside.flight.Weather;
import padside.motor.MotorType;

/**
 * The names of screens in bookmarks, which outlive the version that wrote them, and what each
 * opens. A form is called by the kind of its record.
 */
final class Bookmarks {
  static final String DAY = "day screen";
  static final String CARD = "card";
  static final String NEW_CARD = "new card";
  static final String NEW_PLANNED = "new planned flight";
  static final String DEBRIEF = "debrief";
  static final String PAD = "pad";
  static final String COUNT = "count";
  static final String MARKS = "marks";
  static final String MISFIRE = "misfire";
  static final String FLOWN_AGAINST = "flown against";
  static final String GOING_ON = "going on";
  static final String PLAN = "plan";
  static final String PACKING = "packing";
  static final String FLIGHT = "flight facts";
  static final String TRACE = "trace";
  static final String HISTORY = "history";
  static final String LOG = "log";
  static final String FLEET = "fleet";
  static final String FIELDS = "fields";
  static final String MOTORS = "motors";
  static final String RECOVERY = "recovery";
  static final String ALTIMETERS = "altimeters";
  static final String TYPES = "motor types";
  static final String FIXES = "fixes";
  static final String SIGHTS = "sights";
  static final String CHECKLIST = "checklist";
  static final String LESSONS = "lots, igniters, delays";
  static final String CONFLICTS = "conflicts";
  static final String FORETOLD = "predictions";
  static final String SYNC = "synchronise";
  static final String PAGES = "pages";

  private final Bookmark mark;
  private final World world;

  private Bookmarks(Bookmark mark, World world) {
    this.mark = mark;
    this.world = world;
  }

  /**
   * The screen of a bookmark; absent where its record is gone or its name is not known.
   *
   * @param below the screen it stood over
   */
  static Optional<Screen> open(Bookmark mark, Screen below, World world) {
    Bookmarks marks = new Bookmarks(mark, world);
    return marks
        .screen()
        .or(marks::atPad)
        .or(marks::list)
        .or(() -> Kind.find(mark.screen()).flatMap(kind -> marks.form(kind, below)))
        .map(screen -> screen.at(mark));
  }

  private Optional<Screen> screen() {
    return switch (mark.screen()) {
      case CARD -> flight(flight -> Optional.of(CardScreen.open(flight, world)));
      case NEW_CARD -> day().map(day -> CardScreen.create(world, day));
      case NEW_PLANNED -> day().map(day -> CardScreen.plan(world, day));
      case DEBRIEF -> flown(flight -> DebriefScreen.open(flight, world));
      case FLIGHT -> flight(flight -> Optional.of(FlightScreen.of(flight.id())));
      case TRACE -> flown(flight -> TraceScreen.of(flight, world));
      case PLAN -> Optional.of(PlanScreen.open(world));
      case PACKING -> day().map(day -> PackingScreen.of(day.id(), world));
      case HISTORY -> history();
      case SYNC -> Optional.of(SyncScreen.open());
      case FORETOLD -> Optional.of(ForetoldScreen.open());
      case PAGES -> Optional.of(PagesScreen.of(day()));
      case LESSONS -> Optional.of(LessonsScreen.open());
      case CONFLICTS -> Optional.of(ConflictScreen.open());
      default -> Optional.empty();
    };
  }

  private Optional<Screen> atPad() {
    return switch (mark.screen()) {
      case PAD -> waiting(this::pad);
      // Nobody knows what became of the key meanwhile: all of the count is to be heard anew.
      case COUNT ->
          waiting(flight -> CountScreen.held(flight.id(), Sending.of(world), CountCheck.of(world)));
      case GOING_ON -> waiting(this::goingOn);
      case FLOWN_AGAINST -> waiting(flight -> AgainstScreen.of(new FlownAgainst(flight)));
      case MARKS -> flown(flight -> MarkScreen.of(flight.id(), world));
      case MISFIRE -> attempt().map(attempt -> MisfireScreen.of(attempt, world));
      default -> Optional.empty();
    };
  }

  private Optional<Screen> list() {
    return switch (mark.screen()) {
      case LOG -> Optional.of(LogScreen.open(world));
      case FLEET -> Optional.of(FleetScreen.open(world));
      case FIELDS -> Optional.of(FieldsScreen.open(world));
      case TYPES -> Optional.of(MotorTypesScreen.open(world));
      case MOTORS -> Optional.of(RecordList.of(LotShelf.counted(), world));
      case RECOVERY -> Optional.of(RecordList.of(new DeviceShelf(), world));
      case ALTIMETERS -> Optional.of(RecordList.of(new AltimeterShelf(), world));
      case FIXES ->
          mark.of().flatMap(world.log()::rocket).map(rocket -> FixShelf.of(rocket.id(), world));
      case SIGHTS -> flight(flight -> Optional.of(SightShelf.of(flight.id(), world)));
      case CHECKLIST -> Optional.of(CheckLineShelf.of(mark.of(), world));
      default -> Optional.empty();
    };
  }

  private Optional<Screen> flight(Function<Flight, Optional<Screen>> screen) {
    return mark.of().flatMap(world.log()::flight).flatMap(screen);
  }

  private Optional<Screen> flown(Function<Flight, Screen> screen) {
    return flight(
        flight ->
            Optional.of(flight).filter(each -> each.status() == Flight.Status.FLOWN).map(screen));
  }

  private Optional<Screen> waiting(Function<Flight, Screen> screen) {
    return flight(
        flight ->
            Optional.of(flight).filter(each -> each.status() == Flight.Status.CARD).map(screen));
  }

  private Optional<Day> day() {
    return mark.of().flatMap(world.log()::day);
  }

  private Optional<Attempt> attempt() {
    return world.log().attempts().stream().filter(each -> isOf(each.id())).findFirst();
  }

  private Screen pad(Flight flight) {
    PadScreen pad = PadScreen.of(flight.id(), world);
    return mark.typing() ? pad.typing(mark.text(), world) : pad;
  }

  private Screen goingOn(Flight flight) {
    GoingOn question = GoingOn.again(flight, world);
    return question.asks() ? AgainstScreen.of(question) : PadScreen.of(flight.id(), world);
  }

  private Optional<Screen> history() {
    return mark.of()
        .flatMap(
            id ->
                mark.at()
                    .flatMap(Kind::find)
                    .map(kind -> new HistoryScreen.Subject(kind, id, mark.text())))
        .map(subject -> HistoryScreen.of(subject, world));
  }

  private boolean isOf(RecordId id) {
    return mark.of().equals(Optional.of(id));
  }

  /** The form of a record; one that had none yet as the screen below makes it. */
  private Optional<Screen> form(Kind kind, Screen below) {
    return mark.of().isPresent() ? mark.of().flatMap(id -> form(kind, id)) : fresh(kind, below);
  }

  private Optional<Screen> fresh(Kind kind, Screen below) {
    if (below instanceof RecordList list && list.shelf().kind() == kind) {
      return ofTable(kind, list.shelf()).or(() -> list.shelf().create(world));
    }
    return switch (kind) {
      case WEATHER -> DayScreen.day(world).map(day -> WeatherScreen.create(day, world));
      case DAY ->
          Optional.of(below instanceof PlanScreen ? DayForm.ahead(world) : DayForm.create(world));
      default -> Optional.empty();
    };
  }

  /** A type of the motor table has no record of its own before it is changed. */
  private Optional<Screen> ofTable(Kind kind, Shelf shelf) {
    return world.log().motors().types().stream()
        .filter(type -> kind == Kind.MOTOR && type.designation().equals(mark.text()))
        .findFirst()
        .map(type -> shelf.open(type.id(), world));
  }

  private Optional<Screen> form(Kind kind, RecordId id) {
    return switch (kind) {
      case DAY -> day().map(day -> DayForm.open(day, world));
      case WEATHER -> reading(id);
      case ROCKET -> in(new FleetScreen(), world.log().rocket(id).isPresent());
      case LOT -> in(LotShelf.counted(), world.log().lot(id).isPresent());
      case DEVICE -> in(new DeviceShelf(), world.log().device(id).isPresent());
      case ALTIMETER -> in(new AltimeterShelf(), world.log().altimeter(id).isPresent());
      case FIELD -> in(new FieldsScreen(), world.log().field(id).isPresent());
      case MOTOR -> in(new MotorTypesScreen(), has(world.log().motors().types(), MotorType::id));
      case FIX -> in(new FixShelf(id), has(world.log().fixes(), Fix::id));
      case CHECKLINE ->
          in(
              new CheckLineShelf(Optional.empty()),
              has(world.checklist().with(world.log().checkLines()).lines(), CheckLine::id));
      case SIGHTING -> sighting();
      case FLIGHT, ATTEMPT, CLOCK -> Optional.empty();
    };
  }

  private <T> boolean has(List<T> records, Function<T, RecordId> id) {
    return records.stream().map(id).anyMatch(this::isOf);
  }

  private Optional<Screen> in(Shelf shelf, boolean there) {
    return mark.of().filter(any -> there).map(id -> shelf.open(id, world));
  }

  private Optional<Screen> reading(RecordId id) {
    return world.log().weather().stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .map(
            reading -> {
              Optional<Day> day = reading.facts().get(Weather.DAY).flatMap(world.log()::day);
              return RecordForm.of(WeatherScreen.sheet(day, world), id, reading.facts(), world);
            });
  }

  private Optional<Screen> sighting() {
    return world.log().sightings().stream()
        .filter(each -> isOf(each.id()))
        .findFirst()
        .flatMap(each -> each.facts().get(Sighting.FLIGHT))
        .flatMap(flight -> in(new SightShelf(flight), true));
  }
}
