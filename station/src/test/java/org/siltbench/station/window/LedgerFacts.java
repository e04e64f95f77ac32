package org.siltbench.station.window;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.life.LifeSubjects;

/** Kinds and data of a ledger's entries, so that two labs that did the same job can be compared. */
public final class LedgerFacts {

  private LedgerFacts() {}

  /**
   * The entries of these kinds in order. IDs become their place in order of first sight; the raw
   * lines, whose number depends on the moment, are left out, and so are the digits of the standard
   * uncertainty, which depends on that number.
   */
  public static List<String> of(Path lab, String... kinds) {
    Setting setting =
        new Setting("XX", Clock.systemUTC(), new Random(9), new LifeSubjects(), note -> {});
    try (OpenLab open = LabFolder.open(lab, setting)) {
      return of(open, kinds);
    }
  }

  public static List<String> of(OpenLab lab, String... kinds) {
    List<String> facts = new ArrayList<>();
    Map<String, String> names = new LinkedHashMap<>();
    lab.register()
        .each(
            entry -> {
              Map<String, Object> data = new TreeMap<>(entry.data());
              data.remove("raw");
              data.computeIfPresent("u_g", (name, value) -> "stated");
              if (data.get("filter") instanceof String id) {
                data.put("filter", names.computeIfAbsent(id, i -> "filter " + names.size()));
              }
              if (data.get("cycle") instanceof String id) {
                data.put("cycle", names.computeIfAbsent(id, i -> "cycle"));
              }
              facts.add(entry.kind() + " " + data);
            },
            kinds);
    return facts;
  }
}
