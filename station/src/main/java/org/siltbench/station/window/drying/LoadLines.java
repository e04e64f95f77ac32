package org.siltbench.station.window.drying;

import java.util.List;
import java.util.stream.Collectors;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.work.drying.Load;

/** The loads of a day in words, a line each. */
final class LoadLines {

  private LoadLines() {}

  static String of(List<Load> loads, Texts texts, Moments moments) {
    return loads.stream().map(load -> line(load, texts, moments)).collect(Collectors.joining("\n"));
  }

  private static String line(Load load, Texts texts, Moments moments) {
    return texts.get(
        "load",
        load.number(),
        load.filters().size(),
        moments.at(load.out()),
        moments.at(load.cooledUntil()),
        moments.at(load.usefulUntil()));
  }
}
