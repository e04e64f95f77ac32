package org.siltbench.balance.link;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.link.PortIdentity.Listed;

class PortIdentityTest {

  private static final PortIdentity OURS = new PortIdentity(0x1234, 0x5678, "A7");
  private static final PortIdentity OTHER = new PortIdentity(0x1234, 0x5678, "B9");

  @Test
  void anAdapterIsFoundAgainUnderItsNewName() {
    List<Listed> now = List.of(new Listed("/dev/ttyUSB0", OTHER), new Listed("/dev/ttyUSB3", OURS));
    assertEquals(Optional.of("/dev/ttyUSB3"), OURS.among(now));
  }

  @Test
  void twoThatCannotBeToldApartAreNotGuessedAt() {
    List<Listed> now = List.of(new Listed("/dev/ttyUSB0", OURS), new Listed("/dev/ttyUSB1", OURS));
    assertEquals(Optional.empty(), OURS.among(now));
  }

  @Test
  void oneThatIsNotThereIsNotFound() {
    assertEquals(Optional.empty(), OURS.among(List.of(new Listed("/dev/ttyUSB0", OTHER))));
  }
}
