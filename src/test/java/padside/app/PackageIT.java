package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The Debian package: what is in it, and that what is unpacked from it runs for somebody who may
 * write nowhere but at home. Installing, upgrading and removing need root: {@code
 * src/test/sh/deb.sh}.
 */
class PackageIT {
  @TempDir static Path built;

  private static Path deb;
  private static Path tree;

  @TempDir Path folder;

  @BeforeAll
  static void build() throws Exception {
    assumeTrue(
        Files.isExecutable(Path.of("/usr/bin/dpkg-deb")), "dpkg-deb is not here: no Debian system");
    deb = Path.of(printed("src/deb/build").strip());
    tree = built.resolve("tree");
    printed("dpkg-deb", "-x", deb.toString(), tree.toString());
  }

  private static String printed(String... command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("LC_ALL", "C.UTF-8");
    Process process = builder.start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(out).isZero();
    return out;
  }

  /** Debian Policy 4.6: 9.1 file system hierarchy, 10.9 permissions and owners. */
  @Test
  void it_holds_the_program_for_three_kinds_of_machine_and_nothing_of_the_user() throws Exception {
    List<String> entries = printed("dpkg-deb", "-c", deb.toString()).lines().toList();

    assertThat(entries)
        .allSatisfy(entry -> assertThat(entry).matches("[-dl]\\S+ root/root .* \\./(usr/.*)?"))
        .allSatisfy(entry -> assertThat(entry).doesNotMatch("-.......w. .*|-....w.*"));
    assertThat(entries)
        .filteredOn(entry -> entry.startsWith("-rwx"))
        .singleElement()
        .asString()
        .endsWith("./usr/lib/padside/bin/padside");
    assertThat(entries.stream().filter(entry -> entry.endsWith(".so")))
        .extracting(entry -> entry.replaceFirst(".*/native/", ""))
        .containsExactlyInAnyOrder(
            "aarch64/libsqlitejdbc.so", "armv6/libsqlitejdbc.so", "x86_64/libsqlitejdbc.so");
    assertThat(tree.resolve("usr/share"))
        .isDirectoryRecursivelyContaining("glob:**/man/man1/padside.1.gz")
        .isDirectoryRecursivelyContaining("glob:**/bash-completion/completions/padside")
        .isDirectoryRecursivelyContaining("glob:**/zsh/vendor-completions/_padside")
        .isDirectoryRecursivelyContaining("glob:**/icons/hicolor/scalable/apps/padside.svg")
        .isDirectoryRecursivelyContaining("glob:**/doc/padside/copyright");
    assertThat(tree.resolve("usr/share/applications/padside.desktop"))
        .content()
        .contains("Exec=padside --window\n", "Terminal=false\n", "Icon=padside\n");
  }

  @Test
  void it_asks_for_java_17_and_runs_nothing_when_it_comes_or_goes() throws Exception {
    assertThat(printed("dpkg-deb", "-I", deb.toString()))
        .contains("Package: padside\n", "Architecture: all\n")
        .contains("Depends: default-jre-headless (>= 2:1.17) | java17-runtime-headless\n")
        .doesNotContain("postinst", "postrm", "preinst", "prerm");
  }

  /** The kind of processor by the ELF specification: 0x3E x86-64, 0xB7 AArch64, 0x28 Arm. */
  @Test
  void each_library_is_of_the_machine_its_folder_names() throws Exception {
    assertThat(machine("x86_64")).isEqualTo(0x3E);
    assertThat(machine("aarch64")).isEqualTo(0xB7);
    assertThat(machine("armv6")).isEqualTo(0x28);
  }

  private static int machine(String name) throws IOException {
    byte[] library =
        Files.readAllBytes(tree.resolve("usr/lib/padside/native/" + name + "/libsqlitejdbc.so"));
    return library[18] & 0xFF;
  }

  @Test
  void what_is_unpacked_keeps_a_log_and_opens_the_screens_and_changes_nothing_of_itself()
      throws Exception {
    Path program = tree.resolve("usr/bin/padside");
    List<String> before = files();
    try (PadTable pad = new PadTable(folder, 80, 24)) {
      pad.launch(program, "echo '{\"name\": \"Alder\"}' |", "add rocket");
      pad.ended(0);
      pad.launch(program, "", "");
      pad.sees("No day is open yet.");
      pad.press("f");
      pad.sees("Alder");
      pad.quit();
    }
    assertThat(folder.resolve(".cache/padside/classes.jsa")).isNotEmptyFile();
    assertThat(files()).isEqualTo(before);
  }

  private static List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(tree)) {
      return all.map(Path::toString).sorted().toList();
    }
  }
}
