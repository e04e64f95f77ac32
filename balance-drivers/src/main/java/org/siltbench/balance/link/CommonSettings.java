package org.siltbench.balance.link;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.balance.link.LineSettings.Parity;
import org.siltbench.balance.link.LineSettings.Stop;

/** The line settings balances commonly leave the factory with: common practice, from memory. */
final class CommonSettings {

  private static final int[] BAUDS = {9600, 2400, 4800, 19200, 1200, 38400, 57600, 115200, 600};

  private CommonSettings() {}

  static List<LineSettings> all() {
    List<LineSettings> all = new ArrayList<>();
    for (int baud : BAUDS) {
      all.add(new LineSettings(baud, 8, Parity.NONE, Stop.ONE));
      all.add(new LineSettings(baud, 7, Parity.EVEN, Stop.ONE));
      all.add(new LineSettings(baud, 7, Parity.ODD, Stop.ONE));
      all.add(new LineSettings(baud, 7, Parity.NONE, Stop.TWO));
    }
    return List.copyOf(all);
  }
}
