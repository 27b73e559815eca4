package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import padside.store.Machine;

/** What the system's files say of the machine, held against what the JDK says. */
class ThisMachineTest {
  private final Machine.Identity identity = new ThisMachine().identity();

  @Test
  void its_process_is_the_one_the_jdk_knows() {
    assertThat(identity.processId()).isEqualTo(ProcessHandle.current().pid());
  }

  @Test
  void its_name_is_the_one_the_jdk_knows() throws UnknownHostException {
    assertThat(identity.label()).isEqualTo(InetAddress.getLocalHost().getHostName());
  }

  @Test
  void every_run_has_a_name_of_its_own() {
    ThisMachine machine = new ThisMachine();
    List<String> runs = Stream.generate(machine::freshRun).limit(1000).toList();
    assertThat(runs).doesNotHaveDuplicates().allMatch(run -> run.matches("[0-9a-f]{20}"));
  }
}
