package padside.sync;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.store.SmallMedium;
import padside.store.Summed;

/** What may happen to a stick between two machines, each mishap for itself. */
class FolderPartnerTest {
  @TempDir Path folder;
  private Path stick;
  private Card pad;
  private Card desktop;
  private Card third;

  @BeforeEach
  void three_machines_and_a_stick() throws IOException {
    Random random = new Random(11);
    stick = Files.createDirectory(folder.resolve("stick"));
    pad = new Card(folder.resolve("pad"), "pad", random);
    desktop = new Card(folder.resolve("desktop"), "desktop", random);
    third = new Card(folder.resolve("third"), "third", random);
  }

  @AfterEach
  void switch_off() throws Fault {
    pad.close();
    desktop.close();
    third.close();
  }

  @Test
  void one_stick_carried_there_and_back_makes_both_alike() throws Exception {
    RecordId heron = pad.add("Heron");
    desktop.add("Wren");
    assertThat(pad.with(stick).out()).isEqualTo(2);
    Told told = desktop.with(stick);
    assertThat(told.in()).isEqualTo(2);
    assertThat(told.out()).isEqualTo(2);
    assertThat(told.here()).isEmpty();
    assertThat(pad.with(stick).in()).isEqualTo(2);
    pad.rename(heron, "Grey Heron");
    pad.with(stick);
    desktop.with(stick);
    assertThat(desktop.names()).containsExactly("Grey Heron", "Wren").isEqualTo(pad.names());
    assertThat(pad.lines()).isEqualTo(desktop.lines());
    assertThat(Harm.parcels(stick)).as("what is there is written no second time").hasSize(3);
  }

  @Test
  void with_nothing_new_nothing_is_written_and_nobody_is_asked() throws Exception {
    pad.add("Heron");
    pad.with(stick);
    Willing terms = new Willing();
    Told told = new FolderPartner(stick).exchange(pad.exchange(), terms);
    assertThat(told.out() + told.in()).isZero();
    assertThat(terms.asked).isEmpty();
    assertThat(Harm.parcels(stick)).hasSize(1);
  }

  @Test
  void strangers_are_named_before_anything_moves() throws Exception {
    pad.add("Heron");
    desktop.add("Wren");
    pad.with(stick);
    Willing terms = new Willing();
    terms.yes = false;
    assertThatThrownBy(() -> new FolderPartner(stick).exchange(desktop.exchange(), terms))
        .isInstanceOfSatisfying(
            Fault.class, fault -> assertThat(fault.code()).isEqualTo("sync-strangers"));
    assertThat(terms.asked).containsExactly(new Stranger(pad.exchange().self(), 2));
    assertThat(desktop.names()).containsExactly("Wren");
    assertThat(Harm.parcels(stick)).hasSize(1);
    desktop.with(stick);
    Willing again = new Willing();
    pad.add("Rook");
    pad.with(stick);
    new FolderPartner(stick).exchange(desktop.exchange(), again);
    assertThat(again.asked).as("known by now").isEmpty();
  }

  @Test
  void a_look_moves_nothing() throws Exception {
    pad.add("Heron");
    desktop.add("Wren");
    pad.with(stick);
    Willing terms = new Willing();
    terms.looks = true;
    Told told = new FolderPartner(stick).exchange(desktop.exchange(), terms);
    assertThat(List.of(told.in(), told.out())).containsExactly(2L, 2L);
    assertThat(desktop.names()).containsExactly("Wren");
    assertThat(Harm.parcels(stick)).hasSize(1);
  }

  @Test
  void a_parcel_cut_short_at_any_byte_gives_what_is_sound_and_the_rest_comes_again()
      throws Exception {
    pad.add("Heron");
    pad.add("Wren");
    pad.with(stick);
    byte[] whole = Files.readAllBytes(Harm.parcels(stick).get(0));
    for (int length = 0; length < whole.length; length += 1 + whole.length / 40) {
      Path cut = Files.createDirectories(folder.resolve("cut" + length));
      Path parcel = cut.resolve(FolderPartner.FOLDER).resolve("0123456789abcdef0123.parcel");
      Files.createDirectories(parcel.getParent());
      Files.write(parcel, Arrays.copyOf(whole, length));
      try (Card taker = new Card(folder.resolve("taker" + length), "taker", new Random(length))) {
        assertThat(taker.with(cut).here()).as("cut at %d", length).isNotEmpty();
        assertThat(taker.lines()).isSubsetOf(pad.lines());
        pad.with(cut);
        taker.with(cut);
        assertThat(taker.lines()).isEqualTo(pad.lines());
      }
    }
  }

  @Test
  void a_flipped_bit_anywhere_is_never_taken_for_what_was_written() throws Exception {
    pad.add("Heron");
    pad.add("Wren");
    pad.with(stick);
    byte[] whole = Files.readAllBytes(Harm.parcels(stick).get(0));
    Random random = new Random(5);
    for (int i = 0; i < 40; i++) {
      Path flipped = Files.createDirectories(folder.resolve("flipped" + i));
      Path parcel = flipped.resolve(FolderPartner.FOLDER).resolve("0123456789abcdef0123.parcel");
      Files.createDirectories(parcel.getParent());
      Files.write(parcel, whole);
      Harm.flip(parcel, random.nextInt(whole.length), random.nextInt(8));
      try (Card taker = new Card(folder.resolve("taker" + i), "taker", new Random(i))) {
        taker.with(flipped);
        assertThat(taker.names()).isSubsetOf("Heron", "Wren");
        pad.with(flipped);
        taker.with(flipped);
        assertThat(taker.names()).containsExactly("Heron", "Wren");
        int parcels = Harm.parcels(flipped).size();
        assertThat(pad.with(flipped).out() + taker.with(flipped).out())
            .as("and then nothing more is written")
            .isZero();
        assertThat(Harm.parcels(flipped)).hasSize(parcels);
      }
    }
  }

  @Test
  void what_a_pulled_stick_left_half_written_is_no_parcel_and_goes_with_the_next()
      throws Exception {
    pad.add("Heron");
    Path place = Files.createDirectories(stick.resolve(FolderPartner.FOLDER));
    Path left = place.resolve(pad.exchange().self().id() + ".unfinished");
    Files.writeString(left, "{\"padside\":\"parcel\",\"v\":1,");
    assertThat(desktop.with(stick).here()).isEmpty();
    assertThat(left).exists();
    pad.with(stick);
    assertThat(left).doesNotExist();
    desktop.with(stick);
    assertThat(desktop.names()).containsExactly("Heron");
  }

  @Test
  void a_parcel_taken_away_is_given_again() throws Exception {
    pad.add("Heron");
    pad.with(stick);
    desktop.with(stick);
    for (Path parcel : Harm.parcels(stick)) {
      Files.delete(parcel);
    }
    assertThat(desktop.with(stick).out()).isEqualTo(2);
    third.with(stick);
    assertThat(third.names()).containsExactly("Heron");
  }

  @Test
  void news_travels_from_pad_to_desktop_to_a_third_that_never_met_the_pad() throws Exception {
    pad.add("Heron");
    Path other = Files.createDirectory(folder.resolve("other"));
    pad.with(stick);
    desktop.with(stick);
    desktop.with(other);
    third.with(other);
    assertThat(third.names()).containsExactly("Heron");
    assertThat(third.exchange().devices()).containsOnlyKeys(pad.exchange().self().id());
  }

  @Test
  void two_machines_at_one_stick_at_once_lose_nothing() throws Exception {
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      for (int i = 0; i < 10; i++) {
        pad.add("pad " + i);
        desktop.add("desktop " + i);
        Callable<Told> one = () -> pad.with(stick);
        Callable<Told> other = () -> desktop.with(stick);
        for (Future<Told> done : two.invokeAll(List.of(one, other))) {
          done.get();
        }
      }
    } finally {
      two.shutdown();
    }
    pad.with(stick);
    desktop.with(stick);
    pad.with(stick);
    assertThat(pad.names()).hasSize(20).isEqualTo(desktop.names());
  }

  @Test
  void lines_of_a_newer_version_are_passed_on_by_one_that_cannot_show_them() throws Exception {
    Map<String, Object> newer = new LinkedHashMap<>();
    newer.put("v", 7);
    newer.put("run", "00000000000000000007");
    newer.put("n", 1);
    newer.put("t", 3);
    newer.put("wings", List.of(Map.of("span", 2)));
    pad.exchange().take(List.of(Summed.write(newer)));
    pad.with(stick);
    assertThat(desktop.with(stick).later()).isEqualTo(1);
    Path other = Files.createDirectory(folder.resolve("other"));
    desktop.with(other);
    third.with(other);
    assertThat(third.lines()).containsExactly("00000000000000000007.1");
  }

  @Test
  void a_parcel_of_a_newer_form_is_refused_in_a_sentence_and_the_others_are_read()
      throws Exception {
    pad.add("Heron");
    pad.with(stick);
    put("aaaaaaaaaaaaaaaaaaaa", Summed.write(Map.of("padside", "parcel", "v", 2, "x", 1)) + "\n");
    Told told = desktop.with(stick);
    assertThat(told.here())
        .containsExactly(
            "Parcel aaaaaaaaaaaaaaaaaaaa there: it was written by a newer Padside (form 2); update"
                + " Padside on this machine to take what is in it.");
    assertThat(desktop.names()).containsExactly("Heron");
  }

  @Test
  void hostile_parcels_are_told_and_harm_nothing() throws Exception {
    pad.add("Heron");
    String self = pad.exchange().self().id();
    put("aaaaaaaaaaaaaaaaaaa0", "[".repeat(1 << 20) + "\n");
    put("aaaaaaaaaaaaaaaaaaa1", head("../../../etc", "x", Map.of()));
    put("aaaaaaaaaaaaaaaaaaa2", head(self, "x", Map.of("../../passwd", List.of(0, 3))));
    put("aaaaaaaaaaaaaaaaaaa3", head(self, "x", Map.of(self, List.of(0, 999_999_999_999L))));
    put("aaaaaaaaaaaaaaaaaaa4", head(self, "x", Map.of(self, List.of(5, 2))));
    put("aaaaaaaaaaaaaaaaaaa5", head(self, "x", Map.of(self, List.of("a", "b"))));
    put("aaaaaaaaaaaaaaaaaaa6", "x".repeat(ParcelForm.MOST_BYTES + 10) + "\n" + "{}\n");
    put("aaaaaaaaaaaaaaaaaaa7", Summed.write(Map.of("padside", "parcel", "v", 1)) + "\n");
    put("aaaaaaaaaaaaaaaaaaa8", "\0\u001b[2J\n");
    put("aaaaaaaaaaaaaaaaaaa9", "");
    Told told = pad.with(stick);
    assertThat(told.here()).hasSize(10);
    assertThat(told.in()).isZero();
    assertThat(told.out()).isEqualTo(2);
    desktop.with(stick);
    assertThat(desktop.names()).containsExactly("Heron");
  }

  @Test
  void a_machine_may_call_itself_anything_and_it_reaches_the_terms_as_it_is() throws Exception {
    try (Card odd = new Card(folder.resolve("odd"), "\u001b[2J\u202eevil", new Random(3))) {
      odd.add("Heron");
      odd.with(stick);
      Willing terms = new Willing();
      new FolderPartner(stick).exchange(desktop.exchange(), terms);
      assertThat(terms.asked)
          .singleElement()
          .satisfies(
              stranger -> assertThat(stranger.device().label()).isEqualTo("\u001b[2J\u202eevil"));
    }
  }

  @Test
  void no_link_is_followed() throws Exception {
    pad.add("Heron");
    Path secret = Files.writeString(folder.resolve("secret"), "secret");
    Path place = Files.createDirectories(stick.resolve(FolderPartner.FOLDER));
    Files.createSymbolicLink(place.resolve("bbbbbbbbbbbbbbbbbbbb.parcel"), secret);
    assertThat(pad.with(stick).here()).isEmpty();
    Path other = Files.createDirectory(folder.resolve("other"));
    Files.createSymbolicLink(other.resolve(FolderPartner.FOLDER), place);
    assertThatThrownBy(() -> pad.with(other))
        .isInstanceOf(Fault.class)
        .hasMessageContaining("leads elsewhere");
    assertThat(secret).hasContent("secret");
  }

  @Test
  void a_folder_that_is_not_there_is_not_made() {
    Path gone = folder.resolve("gone");
    assertThatThrownBy(() -> pad.with(gone)).isInstanceOf(Fault.class);
    assertThat(gone).doesNotExist();
  }

  @Test
  void a_full_stick_is_told_and_takes_what_is_given_once_there_is_room() throws Exception {
    assumeTrue(SmallMedium.canBeMounted(), "nothing can be mounted here");
    pad.add("Heron");
    desktop.add("Wren");
    desktop.with(stick);
    Path small = Files.createDirectory(folder.resolve("small"));
    try (SmallMedium medium = SmallMedium.inMemory(small)) {
      Path parcel = Harm.parcels(stick).get(0);
      Files.createDirectories(small.resolve(FolderPartner.FOLDER));
      Files.copy(parcel, small.resolve(FolderPartner.FOLDER).resolve(parcel.getFileName()));
      Path filler = medium.fill();
      assertThatThrownBy(() -> pad.with(small))
          .isInstanceOf(Fault.class)
          .hasMessageStartingWith("2 lines came. What this log has to give could not be written to")
          .hasMessageContaining("No space left on device");
      assertThat(pad.names()).containsExactly("Heron", "Wren");
      assertThat(Harm.parcels(small)).hasSize(1);
      Files.delete(filler);
      assertThat(pad.with(small).out()).isEqualTo(2);
      assertThat(Harm.parcels(small)).hasSize(2);
    }
  }

  @Test
  void a_stick_that_cannot_be_written_gives_all_it_has() throws Exception {
    assumeTrue(SmallMedium.canBeMounted(), "nothing can be mounted here");
    pad.add("Heron");
    desktop.add("Wren");
    Path small = Files.createDirectory(folder.resolve("small"));
    try (SmallMedium medium = SmallMedium.inMemory(small)) {
      desktop.with(small);
      medium.readOnly();
      assertThatThrownBy(() -> pad.with(small))
          .isInstanceOf(Fault.class)
          .hasMessageStartingWith("2 lines came.")
          .hasMessageContaining("Read-only file system");
      assertThat(pad.names()).containsExactly("Heron", "Wren");
      third.with(small);
      assertThat(third.names())
          .as("one with nothing to give needs no more")
          .containsExactly("Wren");
    }
  }

  @Test
  void a_stick_with_a_fat_file_system_does_as_well() throws Exception {
    Path small = Files.createDirectory(folder.resolve("small"));
    Path image = folder.resolve("image");
    assumeTrue(SmallMedium.canBeMountedAsFat(), "no FAT file system can be mounted here");
    pad.add("Heron");
    try (SmallMedium medium = SmallMedium.fat(image, small)) {
      pad.with(small);
    }
    try (SmallMedium medium = SmallMedium.mounted(image, small)) {
      desktop.with(small);
    }
    assertThat(desktop.names()).containsExactly("Heron");
  }

  private static String head(String id, String label, Map<String, Object> runs) {
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("padside", "parcel");
    head.put("v", 1);
    head.put("by", Map.of("id", id, "label", label));
    head.put("lines", List.of(Map.of("id", id, "label", label, "runs", runs)));
    head.put("unsound", Map.of());
    head.put("bytes", "000000000000000");
    return Summed.write(head) + "\n";
  }

  private void put(String name, String text) throws IOException {
    Path place = Files.createDirectories(stick.resolve(FolderPartner.FOLDER));
    Files.writeString(place.resolve(name + ".parcel"), text, StandardCharsets.UTF_8);
  }
}
