package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.lot.MassWindow;
import org.siltbench.station.work.lot.NewLot;
import picocli.CommandLine.Option;

/** {@code lot new}. */
final class LotNew implements Task {

  @Option(names = "--name", required = true, paramLabel = "NAME", description = "its name")
  private String name = "";

  @Option(names = "--maker-lot", paramLabel = "TEXT", description = "the maker's lot number")
  private @Nullable String makerLot;

  @Option(
      names = "--material",
      paramLabel = "TEXT",
      description = "for example \"glass fibre, no binder\"")
  private @Nullable String material;

  @Option(names = "--pore", paramLabel = "UM", description = "nominal pore size, µm")
  private @Nullable BigDecimal pore;

  @Option(names = "--diameter", paramLabel = "MM", description = "diameter, mm")
  private @Nullable BigDecimal diameter;

  @Option(names = "--washed", description = "washed before drying")
  private boolean washed;

  @Option(names = "--not-dried", description = "not dried before pre-weighing")
  private boolean notDried;

  @Option(names = "--muffled", description = "heated to the ignition temperature before use")
  private boolean muffled;

  @Option(
      names = "--window",
      paramLabel = "LOW..HIGH",
      description = "masses its filters may have, g; default: learnt from the weighings")
  private @Nullable String window;

  @Override
  public int run(Session session) {
    NewLot lot =
        new NewLot(
            name,
            makerLot,
            material,
            pore,
            diameter,
            washed,
            !notDried,
            muffled,
            window == null ? null : MassWindow.parse(window));
    lot.record(session.bench());
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("lot", lot.name());
    session.document(document);
    session.fact("lot " + lot.name());
    return 0;
  }
}
