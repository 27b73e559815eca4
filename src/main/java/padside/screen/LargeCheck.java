package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.flight.Ruling;
import padside.preflight.Answer;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.UnitNotation;
import padside.units.Wind;

/**
 * The verdict, the wind the check looked at and the limit, large enough to be read at arm's length,
 * and as large as there is room for.
 */
final class LargeCheck {
  private static final int GAP = 3;

  /**
   * Blocks between two numbers beside each other, at least and where there is room: one block is
   * between the digits of a number, and 14 beside 18 must not be read as 1418.
   */
  private static final int APART = 2;

  private static final int WELL_APART = 4;

  /** Where a row of figures beside each other begins to be worth its rows. */
  private static final int TALL = 36;

  /** Where it may take twice as many. */
  private static final int VERY_TALL = 56;

  private final LiveCheck check;
  private final World world;

  /** One figure with what it is, in common letters below it. */
  private record Part(String figures, String caption, Style style) {
    int width(Size block) {
      return Math.max(new Figures.Sized(figures, block).width(), caption.length());
    }
  }

  private LargeCheck(LiveCheck check, World world) {
    this.check = check;
    this.world = world;
  }

  /** True of a terminal where a row of large figures leaves the rest its room. */
  static boolean fits(Size size) {
    return size.rows() >= TALL;
  }

  /** How many rows that row takes. */
  static int rows(Size size) {
    return size.rows() >= VERY_TALL ? 2 * Figures.ROWS + 1 : Figures.ROWS + 1;
  }

  /** Fills an area: the verdict, what it rests on, the numbers; what does not fit is left out. */
  static void fill(Canvas canvas, LiveCheck check, World world, FormPane.Area area) {
    new LargeCheck(check, world).filling(canvas, area);
  }

  /**
   * Draws verdict and numbers beside each other where they fit that way, else the verdict alone;
   * returns the row below, that of the area where nothing fits.
   */
  static int row(Canvas canvas, LiveCheck check, World world, FormPane.Area area) {
    LargeCheck large = new LargeCheck(check, world);
    List<Part> all = new ArrayList<>(List.of(large.verdict()));
    all.addAll(large.numbers());
    return large
        .beside(canvas, all, area)
        .or(() -> large.beside(canvas, List.of(large.verdict()), area))
        .orElse(area.top());
  }

  /** Draws wind and limit in the middle of an area, no larger than the clocks beside them. */
  static void numbers(Canvas canvas, LiveCheck check, World world, FormPane.Area area) {
    LargeCheck large = new LargeCheck(check, world);
    List<Part> parts = large.numbers();
    int height = Math.min(area.height(), Figures.rows(canvas.size()) + 1);
    FormPane.Area band = new FormPane.Area(area.left(), area.top(), area.width(), height);
    block(parts, band)
        .ifPresent(
            each -> {
              int wide = digits(parts, each) + gap(parts, each, area.width()) * (parts.size() - 1);
              int left = area.left() + (area.width() - wide) / 2;
              draw(canvas, parts, each, new FormPane.Area(left, area.top(), wide, height));
            });
  }

  private void filling(Canvas canvas, FormPane.Area area) {
    List<Line> told = CheckText.verdict(check, area.width());
    int numbers = Figures.ROWS + 2;
    int half = Math.max(Figures.ROWS, (area.height() - told.size() - 1) / 2);
    FormPane.Area upper =
        new FormPane.Area(area.left(), area.top(), area.width(), Math.min(half, area.height()));
    int row = beside(canvas, List.of(verdict()), upper).orElse(area.top());
    for (Line line : told.subList(1, told.size())) {
      if (row < area.top() + area.height() - numbers) {
        canvas.put(area.left(), row++, line.text().strip(), Style.STRONG);
      }
    }
    int left = area.top() + area.height() - row - 1;
    beside(canvas, numbers(), new FormPane.Area(area.left(), row + 1, area.width(), left));
  }

  /** Of one size all of them; the row below, absent where they do not fit. */
  private Optional<Integer> beside(Canvas canvas, List<Part> parts, FormPane.Area area) {
    Optional<Size> block = block(parts, area);
    block.ifPresent(each -> draw(canvas, parts, each, area));
    return block.map(each -> area.top() + Figures.ROWS * each.rows() + caption(parts));
  }

  private static int caption(List<Part> parts) {
    return parts.stream().anyMatch(part -> !part.caption().isEmpty()) ? 1 : 0;
  }

  /** The largest size in which all of them fit. */
  private static Optional<Size> block(List<Part> parts, FormPane.Area area) {
    return Figures.BLOCKS.stream()
        .filter(each -> width(parts, each) <= area.width())
        .filter(each -> Figures.ROWS * each.rows() + caption(parts) <= area.height())
        .findFirst()
        .filter(any -> !parts.isEmpty());
  }

  private static void draw(Canvas canvas, List<Part> parts, Size block, FormPane.Area area) {
    int gap = gap(parts, block, area.width());
    int left = area.left();
    for (Part part : parts) {
      Figures.Sized figures = new Figures.Sized(part.figures(), block);
      figures.draw(canvas, left, area.top(), part.style());
      canvas.put(left, area.top() + figures.height(), part.caption(), Style.STRONG);
      left += part.width(block) + gap;
    }
  }

  /** With the least gaps. */
  private static int width(List<Part> parts, Size block) {
    return digits(parts, block) + leastGap(block) * (parts.size() - 1);
  }

  private static int digits(List<Part> parts, Size block) {
    return parts.stream().mapToInt(part -> part.width(block)).sum();
  }

  private static int leastGap(Size block) {
    return Math.max(GAP, APART * block.columns());
  }

  /** Between two of them in so much room. */
  private static int gap(List<Part> parts, Size block, int room) {
    int shared = (room - digits(parts, block)) / Math.max(1, parts.size() - 1);
    return Math.max(leastGap(block), Math.min(shared, WELL_APART * block.columns()));
  }

  /** Points while it is worked out, so that no old word is taken for a new one. */
  private Part verdict() {
    Optional<Ruling.Verdict> verdict = check.current().map(Answer::ruling).map(Ruling::verdict);
    return verdict
        .map(known -> new Part(known.word().toUpperCase(Locale.ROOT), "", CheckText.style(known)))
        .orElse(new Part("...", "", Style.UNKNOWN));
  }

  private List<Part> numbers() {
    List<Part> numbers = new ArrayList<>();
    Optional<Wind> wind = check.asked().flatMap(card -> card.wind());
    wind.map(Wind::mean).ifPresent(mean -> numbers.add(number("wind", mean, false)));
    wind.filter(each -> each.gust().metresPerSecond() > each.mean().metresPerSecond())
        .map(Wind::gust)
        .ifPresent(gust -> numbers.add(number("gust", gust, false)));
    check
        .current()
        .flatMap(answer -> answer.ruling().limit())
        .ifPresent(limit -> numbers.add(number("limit", limit, true)));
    return numbers;
  }

  /** A limit is never told as more than it is. */
  private Part number(String caption, Speed speed, boolean down) {
    UnitNotation<Speed> notation = Notations.windSpeed(world.settings().units());
    String[] shown = (down ? notation.showDown(speed) : notation.show(speed)).split(" ", 2);
    return new Part(shown[0], (caption + " " + shown[1]).strip(), Style.STRONG);
  }
}
