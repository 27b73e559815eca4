package padside.app;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** One start of the program, some typing, and its end by kill -9 at a moment nobody chose. */
final class KilledSession {
  private static final int LOOKS = 60;
  private static final int LONGEST_MS = 150;
  private static final int BY_FORCE = 128 + 9;
  private static final int ONE_IN_TEN = 10;

  private final PadTable pad;
  private final TypedTexts typed;
  private final Random random;
  private final ScheduledExecutorService killers;
  private final FilledForm form;
  private Optional<Future<?>> killing = Optional.empty();
  private volatile boolean dead;
  private volatile boolean ofGroup;

  KilledSession(PadTable pad, TypedTexts typed, Random random, ScheduledExecutorService killers) {
    this.pad = pad;
    this.typed = typed;
    this.random = random;
    this.killers = killers;
    FilledForm[] forms = FilledForm.values();
    this.form = forms[random.nextInt(forms.length)];
  }

  String told(int log, int kill) {
    return "log " + log + ", kill " + kill + " in " + form;
  }

  /** Plays it; answers whether the whole process group was killed. */
  boolean play() throws ExecutionException, InterruptedException {
    ofGroup = random.nextInt(4) == 0;
    pad.forgetPlace(); // every session begins with the day; TerminalLossIT goes on where it was
    pad.launch("");
    if (random.nextInt(ONE_IN_TEN) == 0) {
      killIn(200 + random.nextInt(500));
    } else {
      pad.sees("n card");
      fill(1 + random.nextInt(form.fields().size() + 1));
    }
    killing.orElseThrow().get();
    pad.ended(BY_FORCE);
    return ofGroup;
  }

  private void killIn(int milliseconds) {
    killing = Optional.of(killers.schedule(this::kill, milliseconds, TimeUnit.MILLISECONDS));
  }

  /** The program may not have come up yet. */
  private void kill() {
    Optional<ProcessHandle> program = pad.started();
    while (program.isEmpty()) {
      Thread.onSpinWait();
      program = pad.started();
    }
    dead = true;
    if (ofGroup) {
      killGroup(program.get().parent().orElseThrow().pid());
    } else {
      program.get().destroyForcibly();
    }
  }

  private static void killGroup(long leader) {
    try {
      new ProcessBuilder("kill", "-9", "--", "-" + leader).start().waitFor();
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** Fills it until the kill, which comes within moments of a field being reached. */
  private void fill(int reached) {
    form.keys().forEach(pad::press);
    TypedTexts.Filling filling =
        form.isOfNew() ? typed.ofNew(form.kind()) : typed.again(form.kind(), form.mark());
    Map<FilledForm.Field, String> texts = new LinkedHashMap<>();
    Optional<FilledForm.Field> before = Optional.empty();
    for (int at = 0; !dead; at++) {
      Optional<FilledForm.Field> field = await(before, filling, texts);
      if (at == reached) {
        killIn(random.nextInt(LONGEST_MS));
      }
      field.ifPresent(each -> type(each, filling, texts));
      before = field.isPresent() ? field : before;
    }
  }

  private void type(
      FilledForm.Field field, TypedTexts.Filling filling, Map<FilledForm.Field, String> texts) {
    Optional<String> text = texts.containsKey(field) ? Optional.empty() : field.typed(random);
    text.ifPresent(
        each -> {
          filling.trying(field.column(), each);
          texts.put(field, each);
        });
    if (text.isPresent()) {
      pad.press("C-u");
    }
    pad.typeThenTab(text.orElse(""));
  }

  /**
   * Waits for the cursor to come into another field, if there is one more, and for the word that
   * all is kept that was typed.
   */
  private Optional<FilledForm.Field> await(
      Optional<FilledForm.Field> before,
      TypedTexts.Filling filling,
      Map<FilledForm.Field, String> texts) {
    Optional<FilledForm.Field> now = Optional.empty();
    boolean last = before.filter(form::endsWith).isPresent();
    for (int i = 0; i < LOOKS && !dead; i++) {
      List<String> screen = pad.tmux().lines();
      now = form.at(screen).filter(field -> !before.equals(Optional.of(field)));
      boolean kept = texts.isEmpty() || FilledForm.saysKept(screen);
      if (kept) {
        filling.kept(form.shown(screen, texts));
      }
      if (kept && (last || now.isPresent())) {
        return now;
      }
    }
    return now;
  }
}
