package org.siltbench.station.command.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.About;
import org.siltbench.station.life.LotState;
import org.siltbench.station.register.StateRow;
import org.siltbench.station.work.lot.LotMasses;
import org.siltbench.station.work.lot.MassWindow;

/** {@code lot list}. */
final class LotList implements Task {

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    List<Map<String, @Nullable Object>> document = new ArrayList<>();
    for (StateRow row : bench.register().list(About.LOT, "", "")) {
      String name = row.subject().id();
      LotState lot = LotState.fold(name, bench.register().history(row.subject())).orElseThrow();
      String window =
          LotMasses.window(bench.register(), name).map(MassWindow::text).orElse("not known yet");
      Map<String, @Nullable Object> fields = new LinkedHashMap<>();
      fields.put("lot", name);
      fields.put("blank_loss", lot.verdict());
      fields.put("window_g", window);
      document.add(fields);
      session.fact(name + "  blank loss " + lot.verdict() + "  window " + window);
    }
    session.document(document);
    return 0;
  }
}
